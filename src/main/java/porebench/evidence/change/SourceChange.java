package porebench.evidence.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterScale;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.trial.Scatter;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ReadingSets;
import porebench.statistics.summary.Summary;

/**
 * What the trials of a mix say of the newest change of its sources: those of the determinations made of the stone as it was last, against
 * those made of it as it is now.
 *
 * <p>Only trials that count, on meters that both sides used, of one type: a meter that measured one side alone could be the difference.
 *
 * @param sources the sources that changed
 * @param before the determinations made before the change, the oldest first
 * @param after those made after it
 * @param comparison what they say
 */
public record SourceChange(
        List<SourceId> sources, List<DeterminationId> before, List<DeterminationId> after, Comparison comparison) {
    public SourceChange {
        sources = List.copyOf(sources);
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * Compares the trials of a mix by half the reporting step of its profile.
     *
     * @param evidence everything known about the mix
     * @param laboratory how trials and determinations scatter in the laboratory
     * @return refused where no source changed, one side has not two trials, or no meter made both
     */
    public static Answer<SourceChange> of(Evidence evidence, LaboratoryScatter laboratory) {
        return of(
                evidence, laboratory, Comparison.usualMargin(evidence.profile()).doubleValue());
    }

    /**
     * Compares the trials of a mix.
     *
     * @param marginPercent how far the factor may move before it matters, in % air, greater than 0
     */
    public static Answer<SourceChange> of(Evidence evidence, LaboratoryScatter laboratory, double marginPercent) {
        Answer<ChangeSides> sides = ChangeSides.of(evidence);
        return sides.value()
                .map(both -> compared(evidence, laboratory, marginPercent, both.sources(), both.before(), both.after()))
                .orElseGet(() -> Answer.refused(sides.problems()));
    }

    /** Returns whether a source of a mix changed since one of its determinations, its own proportions being the same. */
    public static boolean happened(Evidence evidence) {
        return ChangeSides.happened(evidence);
    }

    private static Answer<SourceChange> refused(Problem problem) {
        return Answer.refused(List.of(problem));
    }

    private static Answer<SourceChange> compared(
            Evidence evidence,
            LaboratoryScatter laboratory,
            double marginPercent,
            List<SourceId> changed,
            List<JudgedDetermination> before,
            List<JudgedDetermination> after) {
        String mix = evidence.mix().value().id().text();
        Set<MeterId> first = meters(before);
        Set<MeterId> second = meters(after);
        Set<MeterId> both = new TreeSet<>(first);
        both.retainAll(second);
        if (both.isEmpty()) {
            return refused(Problem.error("meter", "change.different-meters", names(first), names(second)));
        }
        MeterType type = typeOfNewest(after, both);
        Map<DeterminationId, double[]> old = factors(before, both, type);
        Map<DeterminationId, double[]> now = factors(after, both, type);
        if (count(old) < 2 || count(now) < 2) {
            return refused(Problem.error(
                    "trials", count(old) < 2 ? "change.one-trial-before" : "change.one-trial-after", mix));
        }
        List<Problem> doubts = new ArrayList<>();
        int left = before.stream().mapToInt(JudgedDetermination::counted).sum()
                + after.stream().mapToInt(JudgedDetermination::counted).sum()
                - count(old)
                - count(now);
        if (left > 0) {
            doubts.add(Problem.warning("meter", "change.other-meters", mix, names(both), left));
        }
        double division = both.stream()
                .flatMap(id -> Optional.ofNullable(evidence.meters().get(id)).stream())
                .map(Version::value)
                .mapToDouble(meter -> meter.divisionPercent().doubleValue())
                .max()
                .orElse(MeterScale.USUAL_DIVISION_PERCENT);
        Comparison comparison = new Comparison(
                BeforeAndAfter.of(
                        ReadingSets.of(List.copyOf(old.values())),
                        ReadingSets.of(List.copyOf(now.values())),
                        division,
                        type == MeterType.A,
                        laboratory.betweenDeterminations(type)),
                marginPercent,
                division,
                usual(evidence, laboratory, after.get(after.size() - 1), now, type, division));
        doubts.addAll(comparison.doubts());
        return Answer.of(
                new SourceChange(changed, List.copyOf(old.keySet()), List.copyOf(now.keySet()), comparison), doubts);
    }

    /** Returns the scatter that the stop rule plans with, of the mix and the laboratory together. */
    private static OptionalDouble usual(
            Evidence evidence,
            LaboratoryScatter laboratory,
            JudgedDetermination newest,
            Map<DeterminationId, double[]> now,
            MeterType type,
            double division) {
        Optional<double[]> factors =
                Optional.ofNullable(now.get(newest.determination().value().id()));
        Optional<Scatter> scatter = factors.flatMap(
                values -> Scatter.of(Summary.of(values), type, division, evidence.elsewhere(newest, type, laboratory)));
        return scatter.isPresent()
                ? OptionalDouble.of(scatter.get().standardDeviationPercent())
                : OptionalDouble.empty();
    }

    private static Set<MeterId> meters(List<JudgedDetermination> determinations) {
        return determinations.stream()
                .flatMap(one -> one.trials().stream())
                .filter(JudgedTrial::counts)
                .map(trial -> trial.trial().value().meterId())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static MeterType typeOfNewest(List<JudgedDetermination> after, Set<MeterId> meters) {
        return after.stream()
                .flatMap(one -> one.trials().stream())
                .filter(JudgedTrial::counts)
                .map(trial -> trial.trial().value())
                .filter(trial -> meters.contains(trial.meterId()))
                .reduce((earlier, later) -> later)
                .orElseThrow()
                .readings()
                .meterType();
    }

    private static Map<DeterminationId, double[]> factors(
            List<JudgedDetermination> determinations, Set<MeterId> meters, MeterType type) {
        Map<DeterminationId, double[]> factors = new LinkedHashMap<>();
        for (JudgedDetermination one : determinations) {
            double[] counted = one.trials().stream()
                    .filter(JudgedTrial::counts)
                    .filter(trial -> meters.contains(trial.trial().value().meterId()))
                    .filter(trial -> trial.trial().value().readings().meterType() == type)
                    .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                    .toArray();
            if (counted.length > 0) {
                factors.put(one.determination().value().id(), counted);
            }
        }
        return factors;
    }

    private static int count(Map<DeterminationId, double[]> factors) {
        return factors.values().stream().mapToInt(values -> values.length).sum();
    }

    private static String names(Set<MeterId> meters) {
        return names(List.copyOf(meters), MeterId::text);
    }

    private static <T> String names(List<T> ids, Function<T, String> text) {
        return ids.stream().map(text).collect(Collectors.joining(", "));
    }
}
