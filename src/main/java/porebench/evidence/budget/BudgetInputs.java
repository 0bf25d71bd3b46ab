package porebench.evidence.budget;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.budget.Between;
import porebench.method.budget.Bowl;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.budget.Sample;
import porebench.method.budget.TrialScatter;
import porebench.method.budget.Water;
import porebench.method.meter.BowlCalibration;
import porebench.method.trial.Corrections;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.id.MeterId;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * What the records say for an uncertainty budget: means of the trials that count, and what calibrations found of their meters.
 *
 * <p>Where trials differ, in meter, digits or calibration, the largest uncertainty stands for all of them. A mean reading
 * and a mean of water are taken, so that the budget's own formula gives the mean of the factors.
 */
public final class BudgetInputs {
    private static final double MILLILITRES_PER_LITRE_PERCENT = 10;

    private final List<JudgedTrial> trials;
    private final Map<MeterId, MeterStory> stories;
    private final Profile profile;
    private final MeasureLimits limits;
    private final Set<Omission> noted = EnumSet.noneOf(Omission.class);

    private BudgetInputs(
            List<JudgedTrial> trials,
            Map<MeterId, MeterStory> stories,
            Profile profile,
            LaboratoryEquipment equipment) {
        this.trials = trials;
        this.stories = stories;
        this.profile = profile;
        this.limits = new MeasureLimits(profile, equipment);
    }

    /**
     * Returns what the evidence of a mix says for the budget of one of its determinations; empty when no trial counts.
     *
     * @param laboratory how trials scatter in the laboratory
     */
    public static Optional<FactorInputs> of(
            Evidence evidence, JudgedDetermination determination, LaboratoryScatter laboratory) {
        return of(
                determination,
                evidence.stories(),
                evidence.divisionPercent(determination),
                evidence.profile(),
                evidence.equipment(),
                laboratory);
    }

    /**
     * Returns what some records say for the budget of a determination; empty when no trial counts.
     *
     * @param determination its trials, judged with the meters as they were on their days
     * @param stories what is known of the meters, by id; a meter that is not there was never calibrated
     * @param divisionPercent a division of the scale, in % air, greater than 0
     * @param profile whose limits hold, and whose repeatability stands in for the scatter of a single trial
     * @param equipment the balances, cylinders and vessels, whose limits hold before those of the profile
     * @param laboratory how trials scatter in the laboratory
     */
    public static Optional<FactorInputs> of(
            JudgedDetermination determination,
            Map<MeterId, MeterStory> stories,
            double divisionPercent,
            Profile profile,
            LaboratoryEquipment equipment,
            LaboratoryScatter laboratory) {
        List<JudgedTrial> counted =
                determination.trials().stream().filter(JudgedTrial::counts).toList();
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        List<PooledDeviation> others =
                laboratory.apart(determination.determination().value().id(), determination.meterType());
        return Optional.of(new BudgetInputs(counted, stories, profile, equipment)
                .inputs(
                        determination.meterType(),
                        divisionPercent,
                        others,
                        laboratory.occasions().of(counted, determination.meterType())));
    }

    private FactorInputs inputs(
            MeterType type, double division, List<PooledDeviation> others, Optional<Between> between) {
        if (between.isEmpty()) {
            noted.add(Omission.OCCASIONS);
        }
        Summary factors = Summary.of(trials.stream()
                .mapToDouble(one -> one.factorPercent().orElseThrow())
                .toArray());
        boolean isTypeA = type == MeterType.A;
        double released = isTypeA ? released() : 0;
        if (trials.stream().map(one -> one.trial().value().meterId()).distinct().count() > 1) {
            noted.add(Omission.SEVERAL_METERS);
        }
        Bowl bowl = bowl(isTypeA);
        return new FactorInputs(
                type,
                factors,
                division,
                isTypeA ? factors.mean() + released : mean(this::gauge),
                released,
                isTypeA ? Optional.empty() : dial(bowl),
                bowl,
                isTypeA ? Optional.empty() : Optional.of(water(bowl)),
                sample(),
                TrialScatter.of(factors, type, division, profile.number(FigureName.REPEATABILITY), others),
                between,
                noted);
    }

    private double mean(ToDoubleFunction<JudgedTrial> number) {
        return trials.stream().mapToDouble(number).average().orElseThrow();
    }

    private double released() {
        return trials.stream()
                .flatMap(one -> one.trial().value().readings().h2Percent().stream())
                .mapToDouble(Number::doubleValue)
                .average()
                .orElse(0);
    }

    private double gauge(JudgedTrial trial) {
        return trial.trial().value().readings().gaugePercent().orElseThrow().doubleValue();
    }

    private Optional<MeterStory> story(JudgedTrial trial) {
        return Optional.ofNullable(stories.get(trial.trial().value().meterId()));
    }

    private static LocalDate day(JudgedTrial trial) {
        return trial.trial().value().testedAt().toLocalDate();
    }

    private static double litres(JudgedTrial trial) {
        return trial.figures()
                .corrections()
                .bowl()
                .orElseGet(() -> trial.trial().value().readings().bowl().value())
                .in(VolumeUnit.LITRE);
    }

    private Bowl bowl(boolean isTypeA) {
        List<Bowl> bowls = trials.stream().map(one -> bowl(one, isTypeA)).toList();
        Bowl worst = bowls.get(0);
        for (Bowl bowl : bowls) {
            worst = bowl.standardUncertaintyLitres() > worst.standardUncertaintyLitres() ? bowl : worst;
        }
        return new Bowl(
                mean(BudgetInputs::litres),
                worst.standardUncertaintyLitres(),
                worst.degreesOfFreedom(),
                bowls.stream().allMatch(Bowl::isWeighed));
    }

    private Bowl bowl(JudgedTrial trial, boolean isTypeA) {
        Optional<BowlCalibration> weighed = story(trial).flatMap(story -> story.bowlCalibrationOn(day(trial)));
        if (weighed.isEmpty()) {
            Typed<?> stated = trial.trial().value().readings().bowl();
            return Bowl.stated(litres(trial), litres(trial) * relativeStep(stated));
        }
        BowlCalibration found = weighed.get();
        if (!isTypeA && found.fills().size() == 1) {
            noted.add(Omission.BOWL_ONE_FILL);
        }
        if (!isTypeA && !found.buoyancyCorrected()) {
            noted.add(Omission.BOWL_BUOYANCY);
        }
        double scatter = found.litres().standardError().orElse(0);
        return new Bowl(
                litres(trial),
                found.standardUncertaintyLitres(),
                CalibrationDegrees.of(
                        found.standardUncertaintyLitres(),
                        scatter,
                        found.litres().count() - 1.0),
                true);
    }

    private static double relativeStep(Typed<?> typed) {
        return typed.number().ulp().doubleValue() / typed.number().doubleValue();
    }

    private Optional<DialCorrection> dial(Bowl bowl) {
        List<JudgedTrial> corrected = trials.stream()
                .filter(one -> one.figures().corrections().gauge().isPresent())
                .toList();
        if (corrected.size() < trials.size()) {
            noted.add(Omission.DIAL_NEVER_CHECKED);
        }
        if (corrected.isEmpty()) {
            return Optional.empty();
        }
        double correction = 0;
        double uncertainty = 0;
        double degrees = Double.POSITIVE_INFINITY;
        boolean restsOnBowl = corrected.size() == trials.size();
        Optional<DialCorrection.Measure> measure = Optional.empty();
        for (JudgedTrial one : corrected) {
            Corrections.Gauge gauge = one.figures().corrections().gauge().orElseThrow();
            correction += (gauge.truePercent() - gauge(one)) / trials.size();
            uncertainty = Math.max(uncertainty, gauge.standardUncertaintyPercent());
            if (gauge.isExtrapolated()) {
                noted.add(Omission.DIAL_BEYOND_POINTS);
            }
            Optional<MeterStory> story = story(one);
            degrees = Math.min(
                    degrees,
                    story.flatMap(known ->
                                    known.dialCurveOn(day(one)).map(curve -> CalibrationDegrees.ofDial(curve, known)))
                            .orElse(Double.POSITIVE_INFINITY));
            measure = worse(
                    measure, story.flatMap(known -> new DialMeasure(limits).of(known, day(one), gauge(one), uses())));
            restsOnBowl = restsOnBowl
                    && story.filter(known -> CalibrationDegrees.restsOn(bowl, known, day(one)))
                            .isPresent();
        }
        return Optional.of(new DialCorrection(correction, uncertainty, degrees, restsOnBowl, measure));
    }

    private DialMeasure.Uses uses() {
        return new DialMeasure.Uses(
                trials.stream()
                        .flatMap(one -> one.trial().value().readings().withdrawal().stream())
                        .map(Withdrawal::unit)
                        .collect(Collectors.toSet()),
                trials.stream().map(BudgetInputs::day).toList());
    }

    private LaboratoryEquipment.Limit limit(Withdrawal.Unit unit, JudgedTrial trial) {
        LaboratoryEquipment.Limit limit = limits.of(unit, day(trial));
        if (limit.isWanting()) {
            noted.add(MeasureLimits.wanting(unit));
        }
        return limit;
    }

    /**
     * Of two measures the one that may be further wrong stands for both; what is to be said of either is said, and only what
     * both share is shared.
     */
    private static Optional<DialCorrection.Measure> worse(
            Optional<DialCorrection.Measure> one, Optional<DialCorrection.Measure> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        DialCorrection.Measure larger =
                one.get().limitPercent() >= other.get().limitPercent() ? one.get() : other.get();
        Set<Omission> wanting = EnumSet.noneOf(Omission.class);
        wanting.addAll(one.get().wanting());
        wanting.addAll(other.get().wanting());
        return Optional.of(new DialCorrection.Measure(
                larger.limitPercent(),
                larger.origin(),
                one.get().isOfTheTrials() && other.get().isOfTheTrials(),
                wanting));
    }

    private Water water(Bowl bowl) {
        double volumePercent = 0;
        double stepMillilitres = 0;
        double limitMillilitres = 0;
        double sharePercent = 0;
        double stepPercent = 0;
        double limitPercent = 0;
        Origin origin = Origin.EQUIPMENT;
        for (JudgedTrial one : trials) {
            Withdrawal withdrawal = one.trial().value().readings().withdrawal().orElseThrow();
            double percent = one.figures().withdrawnPercent().orElseThrow() / trials.size();
            double step = withdrawal.number().ulp().doubleValue();
            LaboratoryEquipment.Limit limit = limit(withdrawal.unit(), one);
            origin = MeasureLimits.least(origin, limit.origin());
            switch (withdrawal.unit()) {
                case PERCENT -> {
                    sharePercent += percent;
                    stepPercent = Math.max(stepPercent, step);
                    limitPercent = Math.max(limitPercent, limit.number());
                }
                // A gram of water is a millilitre, as far as steps and limits go.
                case MILLILITRE, GRAM -> {
                    volumePercent += percent;
                    stepMillilitres = Math.max(stepMillilitres, step);
                    limitMillilitres = Math.max(limitMillilitres, limit.number());
                }
            }
        }
        return new Water(
                volumePercent * MILLILITRES_PER_LITRE_PERCENT * bowl.litres(),
                stepMillilitres,
                limitMillilitres,
                sharePercent,
                stepPercent,
                sharePercent == 0 ? 0 : limitPercent,
                origin);
    }

    /** All masses of a trial are weighed on one balance: its error is the same in each and adds up, the digits' do not. */
    private Optional<Sample> sample() {
        if (trials.stream().anyMatch(one -> kilograms(one) <= 0)) {
            return Optional.empty();
        }
        double kilograms = 0;
        double variance = 0;
        Origin origin = Origin.EQUIPMENT;
        for (JudgedTrial one : trials) {
            List<Typed<Mass>> masses = masses(one);
            kilograms += kilograms(one) / trials.size();
            double steps = masses.stream()
                    .mapToDouble(mass ->
                            mass.unit().of(mass.number().ulp().doubleValue()).kilograms())
                    .map(step -> step * step / 12)
                    .sum();
            LaboratoryEquipment.Limit balance = limit(Withdrawal.Unit.GRAM, one);
            origin = MeasureLimits.least(origin, balance.origin());
            double limit = masses.size() * MassUnit.GRAM.of(balance.number()).kilograms();
            variance = Math.max(variance, steps + limit * limit / 3);
        }
        return Optional.of(new Sample(kilograms, Math.sqrt(variance), origin));
    }

    private static List<Typed<Mass>> masses(JudgedTrial trial) {
        Readings readings = trial.trial().value().readings();
        return Stream.of(readings.fine(), readings.coarse())
                .flatMap(Optional::stream)
                .toList();
    }

    private static double kilograms(JudgedTrial trial) {
        return masses(trial).stream()
                .mapToDouble(mass -> mass.value().kilograms())
                .sum();
    }
}
