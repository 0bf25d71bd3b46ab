package porebench.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import porebench.method.MeterType;
import porebench.record.Determination;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.summary.Summary;

/**
 * The trials of a determination that count, as columns: all that the laboratory's scatter and its forecast ask of them.
 *
 * @param id the determination
 * @param mixId its mix
 * @param mixVersion the version of the mix that it was made of
 * @param sourceVersions the versions of the sources that it was made of
 * @param types on which type of meter each trial was made, in the order in which they were made
 * @param occasions on which occasion each was made: the same text for the same day, operator and meter
 * @param factors the factor of each, in % air, not rounded
 * @param bowl what stood in the bowl
 */
public record CountedTrials(
        DeterminationId id,
        MixId mixId,
        int mixVersion,
        Map<SourceId, Integer> sourceVersions,
        List<MeterType> types,
        List<String> occasions,
        double[] factors,
        InTheBowl bowl) {
    public CountedTrials {
        sourceVersions = Map.copyOf(sourceVersions);
        types = List.copyOf(types);
        occasions = List.copyOf(occasions);
        factors = factors.clone();
        if (types.size() != factors.length || occasions.size() != factors.length) {
            throw new IllegalArgumentException(
                    "each of " + factors.length + " factors must have a type and an occasion, but " + types.size()
                            + " and " + occasions.size() + " have");
        }
    }

    /** Returns those of a judged determination; what stood in the bowl is left open. */
    public static CountedTrials of(JudgedDetermination judged) {
        return of(judged, judged.determination().value().sourceVersions(), InTheBowl.UNKNOWN);
    }

    /** Returns those of a judged determination, made of sources in some versions. */
    static CountedTrials of(JudgedDetermination judged, Map<SourceId, Integer> sourceVersions, InTheBowl bowl) {
        Determination determination = judged.determination().value();
        List<JudgedTrial> counted =
                judged.trials().stream().filter(JudgedTrial::counts).toList();
        return new CountedTrials(
                determination.id(),
                determination.mixId(),
                determination.mixVersion(),
                sourceVersions,
                counted.stream()
                        .map(trial -> trial.trial().value().readings().meterType())
                        .toList(),
                counted.stream().map(OccasionScatter::occasion).toList(),
                counted.stream()
                        .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                        .toArray(),
                bowl);
    }

    /** Returns the factor of each trial, in % air. */
    @Override
    public double[] factors() {
        return factors.clone();
    }

    /** Returns the type of meter of all of them: Type A as soon as one was made on it. */
    public MeterType meterType() {
        return types.contains(MeterType.A) ? MeterType.A : MeterType.B;
    }

    /** Returns whether there are any, and all on one type of meter. */
    boolean isOfOneType() {
        return types.stream().distinct().count() == 1;
    }

    /** Returns the type of meter of the first trial, which is that of all where they are of one. */
    MeterType type() {
        return types.get(0);
    }

    /** Returns what the factors amount to, of at least one. */
    Summary summary() {
        return Summary.of(factors);
    }

    /** Returns where it stands: within its mix in that version, and that within the sources of its aggregates in theirs. */
    List<String> path() {
        Map<String, Integer> sources = new TreeMap<>();
        sourceVersions.forEach((source, version) -> sources.put(source.text(), version));
        String mix = mixId.text() + " " + mixVersion;
        return List.of(sources.isEmpty() ? mix : sources.toString(), mix, id.text());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CountedTrials that
                && id.equals(that.id)
                && mixId.equals(that.mixId)
                && mixVersion == that.mixVersion
                && sourceVersions.equals(that.sourceVersions)
                && types.equals(that.types)
                && occasions.equals(that.occasions)
                && Arrays.equals(factors, that.factors)
                && bowl.equals(that.bowl);
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + Arrays.hashCode(factors);
    }

    @Override
    public String toString() {
        return id.text() + " " + Arrays.toString(factors);
    }
}
