package porebench.evidence;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.StopRule;
import porebench.method.trial.Variability;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.statistics.Judged;
import porebench.statistics.comparison.EqualScatterTest;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.OtherSets;

/**
 * How trials scatter in a laboratory: the standard deviation within its determinations, on each type of meter.
 *
 * <p>Every determination counts that has at least two trials which count, all on one type of meter. It is made once for a
 * state of the lab book; asking it reads nothing.
 */
public final class LaboratoryScatter {
    /** The scatter of a laboratory that has no determination. */
    public static final LaboratoryScatter NONE = ofDeterminations(List.of());

    private final List<Entry> sets;
    private final Map<MeterType, Mixes> mixes = new EnumMap<>(MeterType.class);
    private final OccasionScatter occasions;
    private final LaboratoryMeans means;

    private LaboratoryScatter(List<Entry> sets, Collection<CountedTrials> determinations) {
        this.sets = sets;
        this.occasions = new OccasionScatter(determinations);
        this.means = new LaboratoryMeans(determinations);
        sets.stream()
                .collect(Collectors.groupingBy(Entry::type))
                .forEach((type, ofType) -> mixes.put(type, Mixes.of(ofType)));
    }

    /** The determinations on one type of meter by their mix, in the order of the mixes' places among them all. */
    private record Mixes(Map<MixId, List<Entry>> sets, Map<MixId, Integer> places, OtherSets all) {
        static Mixes of(List<Entry> ofType) {
            Map<MixId, List<Entry>> byMix = ofType.stream()
                    .collect(Collectors.groupingBy(Entry::mixId, LinkedHashMap::new, Collectors.toList()));
            Map<MixId, Integer> places = new HashMap<>();
            byMix.keySet().forEach(mix -> places.put(mix, places.size()));
            return new Mixes(
                    byMix,
                    places,
                    OtherSets.of(byMix.values().stream()
                            .flatMap(own -> pooled(own, any -> true).stream())
                            .toList()));
        }

        ScatterElsewhere without(MixId mix, DeterminationId id) {
            Integer place = places.get(mix);
            return place == null
                    ? new ScatterElsewhere(Optional.empty(), all)
                    : new ScatterElsewhere(
                            pooled(
                                    sets.getOrDefault(mix, List.of()),
                                    entry -> !entry.id().equals(id)),
                            all.without(place));
        }

        private static Optional<PooledDeviation> pooled(List<Entry> own, Predicate<Entry> counts) {
            return PooledDeviation.of(
                    own.stream().filter(counts).map(Entry::summary).toList());
        }
    }

    /** Returns the determinations that count, each summed up. */
    public List<Entry> sets() {
        return sets;
    }

    /** Returns how trials of one determination differ between days, operators and meters. */
    public OccasionScatter occasions() {
        return occasions;
    }

    /**
     * One determination.
     *
     * @param id the determination
     * @param mixId its mix
     * @param type the type of meter of all its trials that count
     * @param summary what they amount to, at least two
     */
    public record Entry(DeterminationId id, MixId mixId, MeterType type, Summary summary) {}

    /** Returns the scatter in a laboratory, of which everything known about its mixes is given. */
    public static LaboratoryScatter of(Collection<Evidence> mixes) {
        return ofDeterminations(mixes.stream()
                .flatMap(evidence -> evidence.determinations().stream())
                .toList());
    }

    /** Returns the scatter within some determinations. */
    public static LaboratoryScatter ofDeterminations(Collection<JudgedDetermination> determinations) {
        return ofCounted(determinations.stream().map(CountedTrials::of).toList());
    }

    /** Returns the scatter of the trials that count, of some determinations. */
    public static LaboratoryScatter ofCounted(Collection<CountedTrials> determinations) {
        return new LaboratoryScatter(
                determinations.stream()
                        .filter(CountedTrials::isOfOneType)
                        .map(one -> new Entry(one.id(), one.mixId(), one.type(), one.summary()))
                        .filter(entry -> entry.summary().count() > 1)
                        .toList(),
                determinations);
    }

    /**
     * Returns the scatter of all determinations but one, on a type of meter, by their mix.
     *
     * @param judged the determination that is to be compared with the others
     * @param type the type of meter
     */
    public ScatterElsewhere without(JudgedDetermination judged, MeterType type) {
        return Optional.ofNullable(mixes.get(type))
                .map(known -> known.without(mixOf(judged), idOf(judged)))
                .orElse(ScatterElsewhere.NONE);
    }

    /** Returns how each determination but one scatters by itself, on a type of meter. */
    public List<PooledDeviation> apart(DeterminationId except, MeterType type) {
        return sets.stream()
                .filter(entry -> entry.type() == type && !entry.id().equals(except))
                .flatMap(entry -> PooledDeviation.of(List.of(entry.summary())).stream())
                .toList();
    }

    /**
     * Judges how the trials of a determination vary, beside the laboratory's other determinations.
     *
     * @param judged the determination
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     * @param profile whose rounding and limits hold
     * @return what is to be said, or empty when no trial counts
     */
    public Optional<Variability> judge(JudgedDetermination judged, double divisionPercent, Profile profile) {
        return Variability.of(
                factors(judged), judged.meterType(), divisionPercent, profile, without(judged, judged.meterType()));
    }

    /**
     * Says whether the trials of a determination are enough.
     *
     * @param judged the determination
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     * @param profile whose half-width, least number of trials and rounding hold
     * @return what to do, or empty when no trial counts
     */
    public Optional<StopRule> stop(JudgedDetermination judged, double divisionPercent, Profile profile) {
        return StopRule.of(
                factors(judged), judged.meterType(), divisionPercent, profile, without(judged, judged.meterType()));
    }

    /**
     * Returns where the next determination of a mix is to be expected, made of the same; empty where too few were made.
     *
     * @param judged a determination of the mix
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     */
    public Optional<NextDetermination> next(JudgedDetermination judged, double divisionPercent) {
        return means.next(judged, divisionPercent);
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
        return means.known(judged, divisionPercent, profile);
    }

    /**
     * Tests whether the mixes scatter alike on a type of meter.
     *
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     */
    public Judged<EqualScatterTest> equalScatter(MeterType type, double divisionPercent) {
        return means.equalScatter(type, divisionPercent);
    }

    private static MixId mixOf(JudgedDetermination judged) {
        return judged.determination().value().mixId();
    }

    private static DeterminationId idOf(JudgedDetermination judged) {
        return judged.determination().value().id();
    }

    private static double[] factors(JudgedDetermination judged) {
        return judged.trials().stream()
                .filter(JudgedTrial::counts)
                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                .toArray();
    }
}
