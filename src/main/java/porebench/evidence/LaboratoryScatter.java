package porebench.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.method.trial.ScatterElsewhere;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.statistics.Judged;
import porebench.statistics.comparison.BetweenSets;
import porebench.statistics.comparison.EqualScatterTest;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.OtherSets;

/**
 * How trials scatter in a laboratory: the standard deviation within its determinations, on each type of meter.
 *
 * <p>Every determination counts that has at least two trials which count, all on one type of meter. It is made once for a
 * state of the lab book. How each mix scatters is known from the beginning; what asks for every trial of the laboratory, as the
 * occasions and the means of determinations do, looks them up when it is first asked.
 */
public final class LaboratoryScatter {
    /** The scatter of a laboratory that has no determination. */
    public static final LaboratoryScatter NONE = ofDeterminations(List.of());

    private final Supplier<Collection<CountedTrials>> everything;
    private final Map<MeterType, Mixes> mixes = new EnumMap<>(MeterType.class);
    private Optional<List<Entry>> sets = Optional.empty();
    private Optional<OccasionScatter> occasions = Optional.empty();
    private Optional<LaboratoryMeans> means = Optional.empty();

    private LaboratoryScatter(Map<MixId, MixScatter> mixes, Supplier<Collection<CountedTrials>> everything) {
        this.everything = everything;
        for (MeterType type : MeterType.values()) {
            this.mixes.put(type, Mixes.of(mixes, type));
        }
    }

    /** How each mix scatters on one type of meter, and the place of each mix among them. */
    private record Mixes(Map<MixId, Integer> places, OtherSets all) {
        static Mixes of(Map<MixId, MixScatter> mixes, MeterType type) {
            Map<MixId, Integer> places = new HashMap<>();
            List<PooledDeviation> pooled = new ArrayList<>();
            mixes.forEach((mix, scatter) -> scatter.on(type).ifPresent(on -> {
                places.put(mix, pooled.size());
                pooled.add(on);
            }));
            return new Mixes(places, OtherSets.of(pooled));
        }

        OtherSets without(MixId mix) {
            return Optional.ofNullable(places.get(mix)).map(all::without).orElse(all);
        }
    }

    /** Returns the determinations that count, each summed up. */
    public synchronized List<Entry> sets() {
        List<Entry> known = sets.orElseGet(() -> Entry.ofAll(everything.get()));
        sets = Optional.of(known);
        return known;
    }

    /** Returns how trials of one determination differ between days, operators and meters. */
    public synchronized OccasionScatter occasions() {
        OccasionScatter known = occasions.orElseGet(() -> new OccasionScatter(everything.get()));
        occasions = Optional.of(known);
        return known;
    }

    private synchronized LaboratoryMeans means() {
        LaboratoryMeans known = means.orElseGet(() -> new LaboratoryMeans(everything.get()));
        means = Optional.of(known);
        return known;
    }

    /**
     * One determination.
     *
     * @param id the determination
     * @param mixId its mix
     * @param type the type of meter of all its trials that count
     * @param summary what they amount to, at least two
     */
    public record Entry(DeterminationId id, MixId mixId, MeterType type, Summary summary) {
        static List<Entry> ofAll(Collection<CountedTrials> determinations) {
            return determinations.stream()
                    .filter(CountedTrials::isOfOneType)
                    .map(one -> new Entry(one.id(), one.mixId(), one.type(), one.summary()))
                    .filter(entry -> entry.summary().count() > 1)
                    .toList();
        }
    }

    /** Returns the scatter within some determinations. */
    public static LaboratoryScatter ofDeterminations(Collection<JudgedDetermination> determinations) {
        return ofCounted(determinations.stream().map(CountedTrials::of).toList());
    }

    /** Returns the scatter of the trials that count, of some determinations. */
    public static LaboratoryScatter ofCounted(Collection<CountedTrials> determinations) {
        Map<MixId, List<CountedTrials>> byMix = determinations.stream()
                .collect(Collectors.groupingBy(CountedTrials::mixId, LinkedHashMap::new, Collectors.toList()));
        Map<MixId, MixScatter> mixes = new LinkedHashMap<>();
        byMix.forEach((mix, own) -> mixes.put(mix, MixScatter.of(own)));
        return new LaboratoryScatter(mixes, () -> determinations);
    }

    /**
     * Returns the scatter in a laboratory of which is known how each mix scatters; what else is asked is looked up then.
     *
     * @param mixes how each mix scatters, in the order of the mixes
     * @param everything gives the trials that count of all mixes, in their order
     */
    public static LaboratoryScatter ofMixes(
            Map<MixId, MixScatter> mixes, Supplier<Collection<CountedTrials>> everything) {
        return new LaboratoryScatter(mixes, everything);
    }

    /**
     * Returns the scatter of all determinations but one, on a type of meter, by their mix.
     *
     * @param ofMix the trials that count of its mix, by determination
     * @param determination the determination that is to be compared with the others
     * @param type the type of meter
     */
    public ScatterElsewhere without(List<CountedTrials> ofMix, CountedTrials determination, MeterType type) {
        return new ScatterElsewhere(
                MixScatter.pooled(ofMix, type, determination.id()),
                Objects.requireNonNull(mixes.get(type)).without(determination.mixId()));
    }

    /** Returns how each determination but one scatters by itself, on a type of meter. */
    public List<PooledDeviation> apart(DeterminationId except, MeterType type) {
        return sets().stream()
                .filter(entry -> entry.type() == type && !entry.id().equals(except))
                .flatMap(entry -> PooledDeviation.of(List.of(entry.summary())).stream())
                .toList();
    }

    /**
     * Returns where the next determination of a mix is to be expected, made of the same; empty where too few were made.
     *
     * @param judged a determination of the mix
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     */
    public Optional<NextDetermination> next(JudgedDetermination judged, double divisionPercent) {
        return means().next(judged, divisionPercent);
    }

    /**
     * Returns a determination's factor as it would be with what the laboratory knows of its other determinations.
     *
     * @param judged the determination
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     * @param profile whose rounding holds
     * @return empty when too few others are known, or nothing tells how determinations differ
     */
    public Optional<KnownFactor> known(JudgedDetermination judged, double divisionPercent, Profile profile) {
        return means().known(judged, divisionPercent, profile);
    }

    /**
     * Returns what two determinations of the same differ by on a type of meter, beyond the scatter of their trials: as repeated
     * determinations of a mix show it, else as days, operators and meters within determinations do, but no less than what few repeated
     * determinations show; empty where the lab book cannot tell.
     *
     * @param type the type of meter
     */
    public Optional<BetweenSets> betweenDeterminations(MeterType type) {
        return means().determinations(type)
                .or(() -> occasions()
                        .ofOne(type)
                        .map(one -> new BetweenSets(
                                Math.max(
                                        one.standardUncertaintyPercent(),
                                        means().determinationsSeen(type).orElse(0)),
                                one.degreesOfFreedom())));
    }

    /**
     * Tests whether the mixes scatter alike on a type of meter.
     *
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     */
    public Judged<EqualScatterTest> equalScatter(MeterType type, double divisionPercent) {
        return means().equalScatter(type, divisionPercent);
    }
}
