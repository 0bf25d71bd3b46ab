package porebench.statistics.summary;

import java.util.Arrays;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.Normal;

/**
 * The Anderson-Darling test of whether values may come from a normal distribution, its mean and spread unknown.
 *
 * <p>With z the values in order, less their mean and divided by s, A2 = -n - (1/n) sum (2 i - 1) (ln F(z(i)) + ln(1 -
 * F(z(n + 1 - i)))), and A2* = A2 (1 + 0.75 / n + 2.25 / n^2). Large values speak against the normal distribution.
 *
 * <p>Readings of a divided scale are never normal: they are tied. {@link #judge} withholds the probability when the
 * spread is only a few divisions, and below ten values, from which next to nothing can be told.
 *
 * <p>Source: M. A. Stephens in R. B. D'Agostino and M. A. Stephens, Goodness-of-Fit Techniques (1986), tables 4.7 and
 * 4.9; recalled. Differences from the source: from A2* = 10 on, beyond the source's formula, p is reported as 3.7e-24.
 *
 * @param count how many values, at least 8
 * @param unadjusted A2, a plain number
 * @param statistic A2*, a plain number
 * @param p the probability of so large a statistic with normal values
 */
public record AndersonDarlingTest(int count, double unadjusted, double statistic, double p) {
    /** With fewer values next to nothing can be told: {@link #judge} says nothing then. */
    public static final int FEWEST_TO_JUDGE = Normality.FEWEST;

    /** The source's formula for p is not good for fewer. */
    static final int FEWEST = 8;

    private static final double LAST_OF_FORMULA = 10;
    private static final double LEAST_P = 3.7e-24;

    public AndersonDarlingTest {
        Require.atLeast("count", count, FEWEST);
        Require.finite("unadjusted", unadjusted);
        Require.finite("statistic", statistic);
        Require.within("p", p, 0, 1);
    }

    /**
     * Tests some values as they are, without asking on what scale they were read.
     *
     * @param values at least one, each finite
     * @return the result; empty for fewer than eight values and for equal values
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Optional<AndersonDarlingTest> of(double... values) {
        Summary all = Summary.of(values);
        if (values.length < FEWEST || all.range() == 0) {
            return Optional.empty();
        }
        double unadjusted = unadjusted(values, all);
        double statistic = adjusted(unadjusted, values.length);
        return Optional.of(new AndersonDarlingTest(values.length, unadjusted, statistic, probability(statistic)));
    }

    /**
     * Tests values read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param values at least one, each finite
     * @return the result, or why it would mean nothing
     * @throws IllegalArgumentException if there is no value, one is not finite, or the division is negative
     */
    public static Judged<AndersonDarlingTest> judge(double division, double... values) {
        Summary all = Summary.of(values);
        double statistic = all.range() == 0 ? Double.NaN : adjusted(unadjusted(values, all), values.length);
        Optional<Judged.Reason> reason = Normality.reason(all, division);
        if (reason.isPresent()) {
            return Double.isNaN(statistic) ? Judged.withheld(reason.get()) : Judged.withheld(reason.get(), statistic);
        }
        return new Judged.Meaningful<>(of(values).orElseThrow());
    }

    static double unadjusted(double[] values, Summary all) {
        int n = values.length;
        double s = all.standardDeviation().orElseThrow();
        double[] z = Arrays.stream(values)
                .map(value -> (value - all.mean()) / s)
                .sorted()
                .toArray();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += (2 * i + 1) * (Normal.logCumulative(z[i]) + Normal.logCumulative(-z[n - 1 - i]));
        }
        return -n - sum / n;
    }

    static double adjusted(double unadjusted, int n) {
        return unadjusted * (1 + 0.75 / n + 2.25 / ((double) n * n));
    }

    private static double probability(double a) {
        if (a >= LAST_OF_FORMULA) {
            return LEAST_P;
        }
        if (a >= 0.6) {
            return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
        }
        if (a >= 0.34) {
            return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
        }
        double below = a >= 0.2
                ? Math.exp(-8.318 + 42.796 * a - 59.938 * a * a)
                : Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
        return 1 - below;
    }
}
