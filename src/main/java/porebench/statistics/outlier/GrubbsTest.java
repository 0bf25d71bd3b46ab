package porebench.statistics.outlier;

import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * Grubbs's test of whether the value farthest from the mean, on either side, is a single outlier.
 *
 * <p>The statistic is G = max|x - mean| / s. It cannot exceed (n - 1) / sqrt(n), which it reaches when all other
 * values are equal, whatever the distance; a few readings of a divided scale that differ by one division do that
 * easily. {@link #isOutlier} therefore asks for at least four values and for more than one division between the value
 * and the mean. The test is meant to be made once: repeating it on what is left finds ever more "outliers".
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1; F. E. Grubbs, Annals of Mathematical
 * Statistics 21 (1950); recalled. Differences from the source: p is reported by the same bound that gives the
 * critical value, and the limits of four values and one division are this program's own.
 *
 * @param count how many values were tested, at least 3
 * @param statistic G, a plain number
 * @param p the bound min(1, 2 n P(t > T)) on the probability of so large a G when there is no outlier, T having n - 2
 *     degrees of freedom; 0 when all other values are equal
 * @param index the position, from 0, of the value farthest from the mean; of the first of them when several are as
 *     far
 * @param distance how far that value lies from the mean, in the unit of the values
 */
public record GrubbsTest(int count, double statistic, double p, int index, double distance) {
    private static final int FEWEST = 3;
    /** With fewer values every third one would be an outlier: {@link #judge} says nothing then. */
    public static final int FEWEST_TO_JUDGE = 4;

    public GrubbsTest {
        Require.atLeast("count", count, FEWEST);
        Require.atLeastZero("statistic", statistic);
        Require.within("p", p, 0, 1);
        Require.atLeast("index", index, 0);
        Require.positive("distance", distance);
    }

    /**
     * Tests some values.
     *
     * @param values at least one, each finite
     * @return the result; empty for fewer than three values, of which none is farther out than the other, and for equal
     *     values, where G would be 0 / 0
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Optional<GrubbsTest> of(double... values) {
        Summary all = Summary.of(values);
        if (values.length < FEWEST || all.range() == 0) {
            return Optional.empty();
        }
        int index = farthest(values, all);
        double distance = Math.abs(values[index] - all.mean());
        double statistic = distance / all.standardDeviation().orElseThrow();
        return Optional.of(new GrubbsTest(values.length, statistic, bound(values, index), index, distance));
    }

    /**
     * Tests values read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param values at least one, each finite
     * @return the result, or why its probability would mean nothing: fewer than four values, equal values, or none more
     *     than one division from the mean
     * @throws IllegalArgumentException if there is no value, one is not finite, or the division is negative
     */
    public static Judged<GrubbsTest> judge(double division, double... values) {
        Require.atLeastZero("division", division);
        Optional<GrubbsTest> test = of(values);
        if (values.length > 1 && Summary.of(values).range() == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        if (values.length < FEWEST_TO_JUDGE) {
            return test.map(done -> Judged.<GrubbsTest>withheld(Judged.Reason.TOO_FEW, done.statistic()))
                    .orElseGet(() -> Judged.withheld(Judged.Reason.TOO_FEW));
        }
        GrubbsTest done = test.orElseThrow();
        return done.isBeyond(division)
                ? new Judged.Meaningful<>(done)
                : Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, done.statistic);
    }

    /**
     * Returns whether the value is an outlier worth a question to the operator.
     *
     * @param significance the probability of a false alarm that is accepted, 0.05 for 5 %, both sides together
     * @param division the smallest step of the scale the values were read on, in their unit; 0 for none
     * @return true if there are at least four values, the value lies more than one division from the mean, and p is
     *     below the significance
     * @throws IllegalArgumentException if the significance is not between 0 and 1 or the division is negative
     */
    public boolean isOutlier(double significance, double division) {
        Require.within("significance", significance, 0, 1);
        Require.atLeastZero("division", division);
        return count >= FEWEST_TO_JUDGE && isBeyond(division) && p < significance;
    }

    private boolean isBeyond(double division) {
        return distance > Slack.over(division);
    }

    /**
     * Returns the value that G, taken on one chosen side, exceeds with at most the given probability.
     *
     * <p>For a test of both sides halve the probability.
     *
     * @param n how many values, at least 3
     * @param significance greater than 0 and less than 1
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double oneSidedCritical(int n, double significance) {
        Require.atLeast("n", n, FEWEST);
        StudentT.requireProbability("significance", significance);
        double t = new StudentT(n - 2).upperPoint(significance / n);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    private static int farthest(double[] values, Summary all) {
        double most = Math.max(all.high() - all.mean(), all.mean() - all.low());
        int index = 0;
        while (Math.abs(values[index] - all.mean()) < Slack.under(most)) {
            index++;
        }
        return index;
    }

    /**
     * Bounds p through the value's distance from the mean of the others in units of their spread.
     *
     * <p>That quotient is algebraically the T of the source, sqrt(n (n - 2) G^2 / ((n - 1)^2 - n G^2)), without its
     * difference of nearly equal numbers; equal others give an infinite T and p = 0.
     */
    private static double bound(double[] values, int index) {
        int n = values.length;
        double[] others = new double[n - 1];
        System.arraycopy(values, 0, others, 0, index);
        System.arraycopy(values, index + 1, others, index, n - 1 - index);
        Summary rest = Summary.of(others);
        double spread = rest.standardDeviation().orElseThrow();
        double t = Math.abs(values[index] - rest.mean()) / spread * Math.sqrt((n - 1.0) / n);
        return Math.min(1, 2 * n * new StudentT(n - 2).upperTail(t));
    }
}
