package porebench.evidence.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.RegisterRow;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.forecast.LaboratoryForecast;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.forecast.Forecast;
import porebench.method.risk.AirLimits;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.Loads;
import porebench.quantity.Volume;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.BetweenSets;

/**
 * Works out which loads are at risk, of mixes whose loads are known; no others are read, but for a forecast those that have one of the
 * changed sources.
 *
 * <p>A forecast here rests on the mixes that have a source which changed, and of a mix whose own aggregates changed on those that share
 * any source with it; one that lies outside what their trials cover is not used. Where there is none, the error is taken to be what two
 * determinations of the same differ by.
 */
final class RiskOfMixes {
    private static final Volume ANY_BOWL = new Volume(0.007);

    private final Records book;
    private final LaboratoryStanding standing;
    private final WeekPlan.Wish wish;
    private final double loadSpreadPercent;
    private final List<Known> known = new ArrayList<>();
    private final Set<SourceId> changed = new TreeSet<>();
    private final Map<Asked, Double> shares = new HashMap<>();
    private final Map<MeterType, OptionalDouble> spreads = new HashMap<>();

    /** What is known of a mix. */
    private record Known(
            MixDesign mix,
            double loadsAWeek,
            AirLimits limits,
            double readingSpread,
            double factorPercent,
            MeterType type,
            boolean hasChanged) {}

    /** One error of mixes that are held to the same limits. */
    private record Asked(AirLimits limits, double readingSpread, double errorPercent) {}

    private RiskOfMixes(Records book, LaboratoryStanding standing, WeekPlan.Wish wish, double loadSpreadPercent) {
        this.book = book;
        this.standing = standing;
        this.wish = wish;
        this.loadSpreadPercent = loadSpreadPercent;
    }

    /**
     * Returns the loads at risk of some mixes; one of which no loads are known is missing.
     *
     * @param rows how the mixes stand
     * @param loads their loads a week, as far as known
     */
    static Map<MixId, LoadsAtRisk> of(
            Records book,
            LaboratoryStanding standing,
            WeekPlan.Wish wish,
            Collection<RegisterRow> rows,
            Map<MixId, Double> loads) {
        Map<MixId, LoadsAtRisk> risks = new HashMap<>();
        List<MixId> toRead = new ArrayList<>();
        for (RegisterRow row : rows) {
            Optional.ofNullable(loads.get(row.mixId())).ifPresent(count -> {
                if (row.state() == FactorState.NO_FACTOR || row.state() == FactorState.WITHDRAWN) {
                    risks.put(row.mixId(), without(count, LoadsAtRisk.Cause.NO_FACTOR));
                } else if (wish.loadSpreadPercent().isEmpty()) {
                    risks.put(row.mixId(), without(count, LoadsAtRisk.Cause.NO_LOAD_SPREAD));
                } else {
                    toRead.add(row.mixId());
                }
            });
        }
        if (!toRead.isEmpty()) {
            RiskOfMixes asked = new RiskOfMixes(
                    book, standing, wish, wish.loadSpreadPercent().getAsDouble());
            standing.each(
                    toRead,
                    evidence -> asked.read(
                            evidence,
                            Objects.requireNonNull(
                                    loads.get(evidence.mix().value().id()))));
            asked.workOut(risks);
        }
        return risks;
    }

    private static LoadsAtRisk without(double loads, LoadsAtRisk.Cause cause) {
        return new LoadsAtRisk(OptionalDouble.of(loads), cause, OptionalDouble.empty(), 0, OptionalDouble.empty());
    }

    private void read(Evidence evidence, double loadsAWeek) {
        Optional<FactorIssue> inForce = evidence.inForceOn(wish.until());
        MixDesign mix = evidence.mix().value();
        inForce.ifPresent(issue -> {
            List<Evidence.AggregateChange> changes = evidence.changesSince(issue, wish.until());
            changes.forEach(
                    change -> change.source().ifPresentOrElse(changed::add, () -> changed.addAll(mix.sources())));
            known.add(new Known(
                    mix,
                    loadsAWeek,
                    new AirLimits(
                            mix.batch().targetAirPercent().doubleValue(),
                            mix.airTolerancePercent()
                                    .map(Number::doubleValue)
                                    .orElseGet(() -> evidence.profile().number(FigureName.AIR_TOLERANCE))),
                    evidence.profile().number(FigureName.FIELD_SCATTER),
                    issue.factorPercent().doubleValue(),
                    evidence.determination(issue.determinationId())
                            .map(JudgedDetermination::meterType)
                            .orElse(MeterType.B),
                    !changes.isEmpty()));
        });
    }

    private void workOut(Map<MixId, LoadsAtRisk> risks) {
        Optional<LaboratoryForecast> forecast = forecast();
        known.forEach(one -> risks.put(one.mix().id(), risk(one, forecast)));
    }

    private Optional<LaboratoryForecast> forecast() {
        if (changed.isEmpty()) {
            return Optional.empty();
        }
        List<MixId> mixes =
                book
                        .latestOf(
                                Belonging.MIXES_OF_SOURCE,
                                changed.stream().map(SourceId::text).toList())
                        .stream()
                        .map(version -> version.value().id())
                        .toList();
        return ForecastTrials.of(book, mixes, Progress.UNHEARD).value();
    }

    private LoadsAtRisk risk(Known one, Optional<LaboratoryForecast> laboratory) {
        Optional<Forecast> forecast = laboratory
                .filter(any -> one.hasChanged())
                .flatMap(said ->
                        said.of(one.mix(), ANY_BOWL, WeekPlan.FORECAST_TRIALS).value())
                .filter(said -> !said.extrapolates());
        if (forecast.isPresent()) {
            return risk(
                    one,
                    LoadsAtRisk.Cause.FORECAST,
                    forecast.get().percent() - one.factorPercent(),
                    laboratory.get().mixes());
        }
        OptionalDouble spread = spreads.computeIfAbsent(one.type(), this::spread);
        return spread.isPresent()
                ? risk(one, LoadsAtRisk.Cause.SPREAD, spread.getAsDouble(), 0)
                : without(one.loadsAWeek(), LoadsAtRisk.Cause.NO_ERROR);
    }

    private OptionalDouble spread(MeterType type) {
        return standing.scatter()
                .betweenDeterminations(type)
                .map(BetweenSets::standardDeviation)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private LoadsAtRisk risk(Known one, LoadsAtRisk.Cause cause, double error, int mixes) {
        double wrong = share(new Asked(one.limits(), one.readingSpread(), error));
        double right = share(new Asked(one.limits(), one.readingSpread(), 0));
        return new LoadsAtRisk(
                OptionalDouble.of(one.loadsAWeek()),
                cause,
                OptionalDouble.of(error),
                mixes,
                OptionalDouble.of(Math.max(0, wrong - right)));
    }

    private double share(Asked asked) {
        return shares.computeIfAbsent(asked, one -> {
            LoadRisk risk = LoadRisk.of(
                    one.limits(),
                    new Loads(one.limits().targetPercent(), loadSpreadPercent, one.readingSpread()),
                    one.errorPercent());
            return risk.wronglyPassed() + risk.wronglyFailed();
        });
    }
}
