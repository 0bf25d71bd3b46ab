package porebench.method.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.outlier.DixonTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.summary.Summary;

/**
 * Whether one trial, or two on one side, lie farther out than chance explains.
 *
 * <p>Three tests look at the same trials, each from its own side. One finding is made of them: the smallest p, multiplied by
 * the number of tests that could be made. Below 1 % the trials are suspects, and an alarm is raised. Below 5 % they are
 * stragglers: worth a second look, and named, but one honest determination in twenty has them. The tests remain to be looked
 * at, each with its own p. Others that stand still on the dial count with the scatter of the dial, not with none.
 *
 * <p>Source: the Bonferroni inequality, as in S. Holm, Scandinavian Journal of Statistics 6 (1979), of which one alarm needs
 * the first step only; stragglers at 5 % and outliers at 1 %: ISO 5725-2:1994, 7.3.2; recalled. Differences from the source:
 * the tests are taken together, and none of the trials is ever discarded.
 *
 * @param one Grubbs's test of a single trial, or why it means nothing
 * @param pair Grubbs's test of two trials on one side, or why it means nothing
 * @param dixon Dixon's test, or why it means nothing
 * @param combinedP the smallest p times the number of tests made, at most 1; empty when none could be made
 * @param farthest the trials that the test with the smallest p looked at; empty when none could be made
 */
public record Outliers(
        Judged<GrubbsTest> one,
        Judged<GrubbsPairTest> pair,
        Judged<DixonTest> dixon,
        OptionalDouble combinedP,
        Optional<Farthest> farthest) {
    /** Below this combined p a trial is a straggler. */
    public static final double STRAGGLER = 0.05;

    /** Below this combined p an alarm is raised. */
    public static final double SUSPECT = 0.01;

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
     * Trials that lie farther out than the others.
     *
     * @param test the test with the smallest p
     * @param indices the positions of the trials, from 0; several when they lie equally far out
     */
    public record Farthest(Test test, List<Integer> indices) {
        public Farthest {
            indices = List.copyOf(indices);
        }
    }

    private record Candidate(Test test, double p, List<Integer> indices) {}

    /**
     * Tests some trials.
     *
     * @param divisionPercent a division of the meter's scale, in % air
     * @param leastPercent the standard deviation that reading the scale makes by itself, in % air
     * @param factors the factors of the trials that count, in % air, at least one
     */
    public static Outliers of(double divisionPercent, double leastPercent, double... factors) {
        Judged<GrubbsTest> one = GrubbsTest.judge(divisionPercent, factors);
        Judged<GrubbsPairTest> pair = GrubbsPairTest.judge(divisionPercent, factors);
        Judged<DixonTest> dixon = DixonTest.judge(divisionPercent, factors);
        List<Candidate> made = new ArrayList<>();
        one.meaningful().ifPresent(test -> made.add(new Candidate(Test.ONE, test.p(), asFar(test, factors))));
        pair.meaningful().ifPresent(test -> made.add(new Candidate(Test.PAIR, test.p(), pair(test, factors))));
        dixon.meaningful().ifPresent(test -> made.add(new Candidate(Test.DIXON, test.p(), List.of(test.index()))));
        Optional<Candidate> best = made.stream().reduce((first, other) -> other.p() < first.p() ? other : first);
        OptionalDouble combined = best.stream()
                .mapToDouble(smallest -> Math.max(
                        Math.min(1, smallest.p() * made.size()), besideTheDial(smallest, leastPercent, factors)))
                .findFirst();
        return new Outliers(
                one, pair, dixon, combined, best.map(smallest -> new Farthest(smallest.test(), smallest.indices())));
    }

    /** Returns the trials that stand out so far that an alarm is raised. */
    public Optional<Farthest> suspects() {
        return farthest.filter(any -> combinedP.orElse(1) < SUSPECT);
    }

    /** Returns the trials worth a second look, though chance may well have made them; empty when they are suspects. */
    public Optional<Farthest> stragglers() {
        return farthest.filter(
                any -> combinedP.orElse(1) < STRAGGLER && suspects().isEmpty());
    }

    /**
     * Returns Grubbs's bound on p with the scatter of the other trials taken as that of the dial; 0 when they show more, and
     * 1 when the others are no more than the suspects, of which none can then be singled out.
     *
     * <p>Others that all gave the same factor do not make a trial two divisions away certain to be wrong: their scatter is
     * not nothing, it is only less than the dial can show.
     */
    private static double besideTheDial(Candidate candidate, double least, double[] factors) {
        if (2 * candidate.indices().size() >= factors.length) {
            return 1;
        }
        double[] others = IntStream.range(0, factors.length)
                .filter(i -> !candidate.indices().contains(i))
                .mapToDouble(i -> factors[i])
                .toArray();
        Summary rest = Summary.of(others);
        if (rest.standardDeviation().orElseThrow() >= least) {
            return 0;
        }
        double nearest = candidate.indices().stream()
                .mapToDouble(i -> Math.abs(factors[i] - rest.mean()))
                .min()
                .orElseThrow();
        int n = factors.length;
        double t = nearest / least * Math.sqrt((n - 1.0) / n);
        return Math.min(1, 2 * n * new StudentT(rest.count() - 1).upperTail(t));
    }

    /** Returns the trials that lie as far from the mean as the one the test looked at, on either side. */
    private static List<Integer> asFar(GrubbsTest test, double[] factors) {
        double mean = Summary.of(factors).mean();
        return IntStream.range(0, factors.length)
                .filter(i -> Math.abs(factors[i] - mean) >= Slack.under(test.distance()))
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
