package porebench.statistics.outlier;

import java.util.Arrays;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

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
        Suspects suspects = Suspects.of(all, values);
        double p = Math.min(1, 2 * PairDistribution.of(n).oneSided(suspects.statistic()));
        return Optional.of(new GrubbsPairTest(n, suspects.statistic(), p, suspects.isHigh(), suspects.gap()));
    }

    /** The pair in question, whose p takes by far the most time and is computed only where it is asked for. */
    private record Suspects(double statistic, boolean isHigh, double gap) {
        static Suspects of(Summary all, double... values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int n = values.length;
            double low = share(sorted, all, 2);
            double high = share(sorted, all, 0);
            boolean isHigh = high < Slack.under(low);
            double gap = isHigh ? sorted[n - 2] - sorted[n - 3] : sorted[2] - sorted[1];
            return new Suspects(Math.min(low, high), isHigh, gap);
        }
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
        if (values.length < FEWEST) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        Suspects suspects = Suspects.of(Summary.of(values), values);
        if (values.length < FEWEST_TO_JUDGE) {
            return Judged.withheld(Judged.Reason.TOO_FEW, suspects.statistic());
        }
        return suspects.gap() <= Slack.over(division)
                ? Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, suspects.statistic())
                : new Judged.Meaningful<>(of(values).orElseThrow());
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
