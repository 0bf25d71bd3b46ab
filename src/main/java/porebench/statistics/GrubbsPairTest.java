package porebench.statistics;

import java.util.Arrays;
import java.util.Optional;
import porebench.quantity.Require;

/**
 * Grubbs's test of whether the two lowest or the two highest values are outliers together.
 *
 * <p>The statistic G2 is the sum of squares that is left without the pair, over that of all values; a small one speaks
 * for outliers. Two outliers on one side hide each other from the test of a single one. The probability is that of the
 * normal distribution, integrated ({@link PairDistribution}), and not looked up in a simulated table.
 *
 * <p>{@link #judge} is for readings of a divided scale. It asks for at least five values, so that the pair is the
 * smaller part, and for more than one division between the pair and the rest.
 *
 * <p>Source: F. E. Grubbs and G. Beck, Technometrics 14 (1972); ISO 5725-2, 7.3.4, whose 5 % is 2.5 % at each end;
 * recalled. Differences from the source: p is computed, both ends together having at most twice the probability of one.
 *
 * @param count how many values, 4 to 100
 * @param statistic G2, from 0 to 1
 * @param p the bound, at most 1, on the probability of so small a G2 at either end without an outlier
 * @param isHigh whether the pair is the two highest values, rather than the two lowest
 * @param gap how far the pair lies from the value next to it, in the unit of the values
 */
public record GrubbsPairTest(int count, double statistic, double p, boolean isHigh, double gap) {
    static final int FEWEST = PairDistribution.FEWEST;
    /** The most values the test is made for. */
    public static final int MOST = PairDistribution.MOST;

    /** With fewer values the pair would not be the smaller part: {@link #judge} says nothing then. */
    public static final int FEWEST_TO_JUDGE = 5;

    private static final double BINARY_SLACK = 1e-9;

    public GrubbsPairTest {
        Require.within("count", count, FEWEST, MOST);
        Require.within("statistic", statistic, 0, 1);
        Require.within("p", p, 0, 1);
        Require.atLeastZero("gap", gap);
    }

    /**
     * Tests some values as they are, without asking on what scale they were read.
     *
     * @param values at least one, each finite
     * @return the result; empty for fewer than 4 or more than 100 values and for equal values
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Optional<GrubbsPairTest> of(double... values) {
        Summary all = Summary.of(values);
        int n = values.length;
        if (n < FEWEST || n > MOST || all.range() == 0) {
            return Optional.empty();
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double low = share(sorted, all, 2);
        double high = share(sorted, all, 0);
        boolean isHigh = high < low * (1 - BINARY_SLACK);
        double statistic = Math.min(low, high);
        double gap = isHigh ? sorted[n - 2] - sorted[n - 3] : sorted[2] - sorted[1];
        double p = Math.min(1, 2 * PairDistribution.of(n).oneSided(statistic));
        return Optional.of(new GrubbsPairTest(n, statistic, p, isHigh, gap));
    }

    /**
     * Tests values read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param values at least one, each finite
     * @return the result, or why it would mean nothing
     * @throws IllegalArgumentException if there is no value, one is not finite, or the division is negative
     */
    public static Judged<GrubbsPairTest> judge(double division, double... values) {
        Require.atLeastZero("division", division);
        if (values.length > 1 && Summary.of(values).range() == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        if (values.length > MOST) {
            return Judged.withheld(Judged.Reason.TOO_MANY);
        }
        Optional<GrubbsPairTest> test = of(values);
        if (values.length < FEWEST_TO_JUDGE) {
            return test.map(done -> Judged.<GrubbsPairTest>withheld(Judged.Reason.TOO_FEW, done.statistic()))
                    .orElseGet(() -> Judged.withheld(Judged.Reason.TOO_FEW));
        }
        GrubbsPairTest done = test.orElseThrow();
        return done.gap <= division * (1 + BINARY_SLACK)
                ? Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, done.statistic)
                : new Judged.Meaningful<>(done);
    }

    /**
     * Returns the value below which G2 at one chosen end falls with the given probability.
     *
     * @param n how many values, 4 to 100
     * @param significance greater than 0 and less than 1; for both ends together take half
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double oneSidedCritical(int n, double significance) {
        return PairDistribution.of(n).lowerPoint(significance);
    }

    private static double share(double[] sorted, Summary all, int from) {
        double rest = squares(Summary.of(Arrays.copyOfRange(sorted, from, from + sorted.length - 2)));
        return Math.min(1, rest / squares(all));
    }

    private static double squares(Summary values) {
        double s = values.standardDeviation().orElseThrow();
        return s * s * (values.count() - 1);
    }
}
