package porebench.method.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.statistics.DixonTest;
import porebench.statistics.GrubbsPairTest;
import porebench.statistics.GrubbsTest;
import porebench.statistics.Judged;
import porebench.statistics.Summary;

/**
 * Whether one trial, or two on one side, lie farther out than chance explains.
 *
 * <p>Three tests look at the same trials, each from its own side. One alarm is made of them: the smallest p, multiplied by
 * the number of tests that could be made, must be below 5 %. So the false alarms of all three together stay below 5 %, and the
 * tests remain to be looked at with their own p.
 *
 * <p>Source: the Bonferroni inequality, as in S. Holm, Scandinavian Journal of Statistics 6 (1979); recalled. Differences from
 * the source: none; only the first step of Holm's is needed for one alarm.
 *
 * @param one Grubbs's test of a single trial, or why it means nothing
 * @param pair Grubbs's test of two trials on one side, or why it means nothing
 * @param dixon Dixon's test, or why it means nothing
 * @param combinedP the smallest p times the number of tests made, at most 1; empty when none could be made
 * @param suspects the trials that stand out, if any do
 */
public record Outliers(
        Judged<GrubbsTest> one,
        Judged<GrubbsPairTest> pair,
        Judged<DixonTest> dixon,
        OptionalDouble combinedP,
        Optional<Suspects> suspects) {
    /** The false alarms that are accepted: one in twenty. Common practice, no source. */
    public static final double SIGNIFICANCE = 0.05;

    private static final double BINARY_SLACK = 1e-9;

    /** A test that may name trials. */
    public enum Test {
        /** Grubbs's test of a single trial. */
        ONE,
        /** Grubbs's test of two trials on one side. */
        PAIR,
        /** Dixon's test of a single trial. */
        DIXON
    }

    /**
     * Trials that stand out.
     *
     * @param test the test with the smallest p
     * @param indices the positions of the trials, from 0; several when they lie equally far out
     */
    public record Suspects(Test test, List<Integer> indices) {
        public Suspects {
            indices = List.copyOf(indices);
        }
    }

    private record Candidate(Test test, double p, List<Integer> indices) {}

    /**
     * Tests some trials.
     *
     * @param divisionPercent a division of the meter's scale, in % air
     * @param factors the factors of the trials that count, in % air, at least one
     */
    static Outliers of(double divisionPercent, double... factors) {
        Judged<GrubbsTest> one = GrubbsTest.judge(divisionPercent, factors);
        Judged<GrubbsPairTest> pair = GrubbsPairTest.judge(divisionPercent, factors);
        Judged<DixonTest> dixon = DixonTest.judge(divisionPercent, factors);
        List<Candidate> made = new ArrayList<>();
        one.meaningful().ifPresent(test -> made.add(new Candidate(Test.ONE, test.p(), asFar(test, factors))));
        pair.meaningful().ifPresent(test -> made.add(new Candidate(Test.PAIR, test.p(), pair(test, factors))));
        dixon.meaningful().ifPresent(test -> made.add(new Candidate(Test.DIXON, test.p(), List.of(test.index()))));
        Optional<Candidate> best = made.stream().reduce((first, other) -> other.p() < first.p() ? other : first);
        OptionalDouble combined = best.stream()
                .mapToDouble(smallest -> Math.min(1, smallest.p() * made.size()))
                .findFirst();
        Optional<Suspects> suspects = best.filter(smallest -> combined.orElse(1) < SIGNIFICANCE)
                .map(smallest -> new Suspects(smallest.test(), smallest.indices()));
        return new Outliers(one, pair, dixon, combined, suspects);
    }

    /** Returns the trials that lie as far from the mean as the one the test looked at, on either side. */
    private static List<Integer> asFar(GrubbsTest test, double[] factors) {
        double mean = Summary.of(factors).mean();
        return IntStream.range(0, factors.length)
                .filter(i -> Math.abs(factors[i] - mean) >= test.distance() * (1 - BINARY_SLACK))
                .boxed()
                .toList();
    }

    /** Returns the two trials of the pair, and any that lies level with the inner one. */
    private static List<Integer> pair(GrubbsPairTest test, double[] factors) {
        double[] sorted = factors.clone();
        Arrays.sort(sorted);
        double inner = test.isHigh() ? sorted[sorted.length - 2] : sorted[1];
        return IntStream.range(0, factors.length)
                .filter(i -> test.isHigh() ? factors[i] >= inner : factors[i] <= inner)
                .boxed()
                .toList();
    }

    /** Returns how many tests could be made; 0 when nothing can be said. */
    public int made() {
        return (one.meaningful().isPresent() ? 1 : 0)
                + (pair.meaningful().isPresent() ? 1 : 0)
                + (dixon.meaningful().isPresent() ? 1 : 0);
    }
}
