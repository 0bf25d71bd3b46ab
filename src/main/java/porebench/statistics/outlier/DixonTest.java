package porebench.statistics.outlier;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.util.CombinatoricsUtils;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.distribution.Normal;
import porebench.statistics.summary.Summary;

/**
 * Dixon's test of whether the lowest or the highest of a few values is an outlier.
 *
 * <p>The statistic is the gap between the suspect and its neighbours over the range, from the end where it is larger:
 * for 3 to 7 values r10 = (x(n) - x(n-1)) / (x(n) - x(1)); for 8 to 10 r11, for 11 to 13 r21 and from 14 r22, which leave
 * one or two values of the other end out of the range and one of the suspect's own end out of the gap. The probability
 * is that of the normal distribution, integrated, and not looked up in the tables of 1951, which are simulated and
 * wrong by up to 0.005 in places.
 *
 * <p>{@link #judge} is for readings of a divided scale. It asks for at least four values, as two equal ones of three
 * make every third an outlier; at most seven, above which Grubbs's test finds more; and a gap of more than one division. Of
 * honest normal values rounded to the division it then takes up to 9 % for outliers at 5 %, measured by simulation with
 * standard deviations of 0.3 to 2 divisions; it is a second opinion beside Grubbs's test.
 *
 * <p>Source: W. J. Dixon, Annals of Mathematical Statistics 22 (1951); D. B. Rorabacher, Analytical Chemistry 63 (1991);
 * ASTM E178; recalled. Differences from the source: p is computed; both ends together have at most twice the
 * probability of one, which is exact from a ratio of one half on.
 *
 * @param count how many values, 3 to 30
 * @param ratio which ratio was taken
 * @param statistic the ratio, from 0 to 1
 * @param p the bound, at most 1, on the probability of so large a ratio at either end without an outlier
 * @param index the position, from 0, of the suspect
 * @param gap how far the suspect lies from the value next to it, in the unit of the values
 */
public record DixonTest(int count, Ratio ratio, double statistic, double p, int index, double gap) {
    static final int FEWEST = 3;
    static final int MOST = 30;
    /** With fewer values every third one would be an outlier: {@link #judge} says nothing then. */
    public static final int FEWEST_TO_JUDGE = 4;

    /** With more values Grubbs's test finds more: {@link #judge} says nothing then. */
    public static final int MOST_TO_JUDGE = 7;

    /** Where the normal density has died away, and the steps and points in which it is summed. */
    private static final double FAR = 8;

    private static final double WIDEST = 16;
    private static final double STEP = 1.0 / 4;
    private static final int POINTS = 40;

    /** Which values a ratio compares. */
    public enum Ratio {
        /** For 3 to 7 values: the neighbour, over the whole range. */
        R10(1, 0, 7),
        /** For 8 to 10 values: the neighbour, over the range without the farthest value. */
        R11(1, 1, 10),
        /** For 11 to 13 values: the neighbour but one, over the range without the farthest value. */
        R21(2, 1, 13),
        /** For 14 to 30 values: the neighbour but one, over the range without the two farthest values. */
        R22(2, 2, MOST);

        private final int neighbour;
        private final int leftOut;
        private final int largestCount;

        Ratio(int neighbour, int leftOut, int largestCount) {
            this.neighbour = neighbour;
            this.leftOut = leftOut;
            this.largestCount = largestCount;
        }

        /**
         * Returns the ratio for a number of values.
         *
         * @param count 3 to 30
         * @throws IllegalArgumentException if the count is outside these bounds
         */
        public static Ratio of(int count) {
            Require.within("count", count, FEWEST, MOST);
            return Arrays.stream(values())
                    .filter(ratio -> count <= ratio.largestCount)
                    .findFirst()
                    .orElseThrow();
        }

        private double high(double[] sorted) {
            int last = sorted.length - 1;
            double range = sorted[last] - sorted[leftOut];
            return range == 0 ? 0 : (sorted[last] - sorted[last - neighbour]) / range;
        }
    }

    public DixonTest {
        Require.within("count", count, FEWEST, MOST);
        Require.within("statistic", statistic, 0, 1);
        Require.within("p", p, 0, 1);
        Require.atLeast("index", index, 0);
        Require.atLeastZero("gap", gap);
    }

    /**
     * Tests some values as they are, without asking on what scale they were read.
     *
     * @param values at least one, each finite
     * @return the result; empty for fewer than 3 or more than 30 values and for equal values
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Optional<DixonTest> of(double... values) {
        Summary all = Summary.of(values);
        int n = values.length;
        if (n < FEWEST || n > MOST || all.range() == 0) {
            return Optional.empty();
        }
        Suspect suspect = Suspect.of(values);
        double p = Math.min(1, 2 * oneSided(n, suspect.statistic()));
        double end = suspect.isHigh() ? all.high() : all.low();
        return Optional.of(
                new DixonTest(n, suspect.ratio(), suspect.statistic(), p, indexOf(end, values), suspect.gap()));
    }

    /** The value in question, whose p takes by far the most time and is computed only where it is asked for. */
    private record Suspect(Ratio ratio, double statistic, boolean isHigh, double gap) {
        static Suspect of(double... values) {
            int n = values.length;
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double[] mirrored = new double[n];
            for (int i = 0; i < n; i++) {
                mirrored[i] = -sorted[n - 1 - i];
            }
            Ratio ratio = Ratio.of(n);
            double high = ratio.high(sorted);
            double low = ratio.high(mirrored);
            boolean isHigh = high > Slack.over(low);
            double gap = isHigh ? sorted[n - 1] - sorted[n - 2] : sorted[1] - sorted[0];
            return new Suspect(ratio, isHigh ? high : low, isHigh, gap);
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
    public static Judged<DixonTest> judge(double division, double... values) {
        Require.atLeastZero("division", division);
        if (values.length > 1 && Summary.of(values).range() == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        if (values.length < FEWEST) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        if (values.length > MOST) {
            return Judged.withheld(Judged.Reason.TOO_MANY);
        }
        Suspect suspect = Suspect.of(values);
        if (values.length > MOST_TO_JUDGE) {
            return Judged.withheld(Judged.Reason.TOO_MANY, suspect.statistic());
        }
        if (values.length < FEWEST_TO_JUDGE) {
            return Judged.withheld(Judged.Reason.TOO_FEW, suspect.statistic());
        }
        return suspect.gap() <= Slack.over(division)
                ? Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, suspect.statistic())
                : new Judged.Meaningful<>(of(values).orElseThrow());
    }

    /**
     * Returns the probability that one chosen end has at least the given ratio when all values are normal.
     *
     * <p>Integrated over the suspect a and the far end c, the values between them taken in closed form.
     *
     * @param n how many values, 3 to 30
     * @param statistic the ratio, from 0 to 1
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double oneSided(int n, double statistic) {
        Ratio ratio = Ratio.of(n);
        Require.within("statistic", statistic, 0, 1);
        int between = n - 2 - ratio.leftOut;
        double orders = Math.exp(CombinatoricsUtils.factorialLog(n)
                - CombinatoricsUtils.factorialLog(ratio.leftOut)
                - CombinatoricsUtils.factorialLog(between - 1));
        double integral = new GaussIntegratorFactory()
                .legendre(POINTS, 0, WIDEST)
                .integrate(width -> atWidth(ratio, statistic, between, width));
        return Math.min(1, orders * integral);
    }

    /** Adds up over all places of the far end, the suspect being a width away from it. */
    private static double atWidth(Ratio ratio, double statistic, int between, double width) {
        double sum = 0;
        for (double c = -FAR - width / 2; c < FAR - width / 2; c += STEP) {
            double a = c + width;
            double below = Normal.cumulative(c);
            double inside = Normal.cumulative(a - statistic * width) - below;
            double whole = Normal.cumulative(a) - below;
            sum += Normal.density(a)
                    * Normal.density(c)
                    * Math.pow(below, ratio.leftOut)
                    * sorted(ratio, inside, whole, between);
        }
        return sum * STEP;
    }

    /** Returns the share in which all values between lie within the gap's foot, but the suspect's neighbour as it may. */
    private static double sorted(Ratio ratio, double inside, double whole, int between) {
        return ratio.neighbour == 1
                ? Math.pow(inside, between) / between
                : (between - 1)
                        * (whole * Math.pow(inside, between - 1.0) / (between - 1)
                                - Math.pow(inside, between) / between);
    }

    private static int indexOf(double value, double[] values) {
        int index = 0;
        while (values[index] != value) {
            index++;
        }
        return index;
    }
}
