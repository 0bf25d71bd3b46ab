package porebench.statistics.distribution;

import org.apache.commons.math3.special.Erf;

/**
 * The standard normal distribution, each tail from its own side so that a small one keeps its digits.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 7.1 and 26.2.12 (the series far out);
 * recalled. Differences from the source: none.
 */
public final class Normal {
    private static final StudentT DISTRIBUTION = new StudentT(Double.POSITIVE_INFINITY);

    /** From here the tail is near the smallest double, and the series about it is exact to rounding. */
    private static final double FAR_OUT = -30;

    private Normal() {}

    public static double density(double x) {
        return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }

    /** Returns the probability of a value above x. */
    public static double upperTail(double x) {
        return Erf.erfc(x / Math.sqrt(2)) / 2;
    }

    /** Returns the probability of a value below x. */
    public static double cumulative(double x) {
        return upperTail(-x);
    }

    /** Returns the natural logarithm of the probability of a value below x, which is never that of 0. */
    public static double logCumulative(double x) {
        if (x > 0) {
            return Math.log1p(-upperTail(x));
        }
        if (x > FAR_OUT) {
            return Math.log(cumulative(x));
        }
        double inverse = 1 / (x * x);
        double series = -inverse + 3 * inverse * inverse - 15 * inverse * inverse * inverse;
        return -x * x / 2 - Math.log(-x) - Math.log(2 * Math.PI) / 2 + Math.log1p(series);
    }

    /** Returns the value that lies above the given share of all. */
    public static double quantile(double probability) {
        return DISTRIBUTION.quantile(probability);
    }
}
