package porebench.statistics.variance;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;
import porebench.statistics.summary.PooledDeviation;

/**
 * What the variances of many sets have in common, and how much a single set's own variance is to be trusted beside it.
 *
 * <p>The true variances of the sets are taken to lie about one value s0^2 as d0 s0^2 / chi-square(d0) does. How alike they
 * are is not taken for granted: d0 is estimated from how much the logarithms of the sets' variances differ beyond what their
 * degrees of freedom explain. Few degrees of freedom mean that the sets differ; without a difference that can be seen d0 has
 * no bound, and s0^2 is the mean variance.
 *
 * <p>Source: G. K. Smyth, Statistical Applications in Genetics and Molecular Biology 3 (2004), article 3, section 6.2
 * (recalled), as {@code squeezeVar} of R's package limma computes it, where the mean variance stands for s0^2 when d0 has no
 * bound. Differences from the source: a variance smaller than a floor that the caller names, such as that of a divided scale,
 * counts as the floor, so that equal readings are no proof of a scatter of 0.
 *
 * @param sets how many sets it rests on, at least 2
 * @param setDegrees the degrees of freedom of all of them together
 * @param variance s0^2, in the squared unit of the values, greater than 0
 * @param degreesOfFreedom d0, greater than 0; infinite when the sets do not visibly differ
 */
public record VariancePrior(int sets, int setDegrees, double variance, double degreesOfFreedom) {
    private static final double SMALLEST_TRIGAMMA = 1e-7;

    private static final double LARGEST_TRIGAMMA = 1e7;

    private static final int MOST_STEPS = 50;

    public VariancePrior {
        Require.atLeast("sets", sets, 2);
        Require.atLeast("setDegrees", setDegrees, sets);
        Require.positive("variance", variance);
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degreesOfFreedom must be greater than 0 but is " + degreesOfFreedom);
        }
    }

    /**
     * Estimates what the variances of some sets have in common.
     *
     * @param sets each set's standard deviation and degrees of freedom, any number
     * @param floor the least variance that can be seen, in the squared unit of the values, greater than 0
     * @return the estimate; empty when fewer than two sets are given
     */
    public static Optional<VariancePrior> of(List<PooledDeviation> sets, double floor) {
        return OtherSets.of(sets).prior(floor);
    }

    /**
     * Makes the estimate of what was summed up.
     *
     * @param mean the mean variance of the sets
     * @param logs the mean of the logarithms of their variances, each less what its degrees of freedom make of it
     * @param beyond how those logarithms vary beyond what the degrees of freedom explain
     */
    static VariancePrior of(int sets, int degrees, double mean, double logs, double beyond) {
        if (beyond <= 0) {
            return new VariancePrior(sets, degrees, mean, Double.POSITIVE_INFINITY);
        }
        double half = inverseTrigamma(beyond);
        double variance = Math.exp(logs + Gamma.digamma(half) - Math.log(half));
        return new VariancePrior(sets, degrees, variance, 2 * half);
    }

    /**
     * Returns the variance of a set, drawn towards what the sets have in common: (d0 s0^2 + d s^2) / (d0 + d).
     *
     * @param own the set's own variance, in the squared unit of the values, at least 0
     * @param degrees its degrees of freedom, at least 0; with 0 the own variance counts for nothing
     */
    public Shrunk shrink(double own, int degrees) {
        Require.atLeastZero("own", own);
        Require.atLeast("degrees", degrees, 0);
        double most = (double) setDegrees + degrees;
        if (Double.isInfinite(degreesOfFreedom)) {
            return new Shrunk(variance, most);
        }
        double all = degreesOfFreedom + degrees;
        return new Shrunk((degreesOfFreedom * variance + degrees * own) / all, Math.min(all, most));
    }

    /**
     * A variance drawn towards what many sets have in common.
     *
     * @param variance in the squared unit of the values
     * @param degreesOfFreedom d0 + d, and never more than all sets and this one really have
     */
    public record Shrunk(double variance, double degreesOfFreedom) {
        public Shrunk {
            Require.positive("variance", variance);
            Require.positive("degreesOfFreedom", degreesOfFreedom);
        }
    }

    /** Returns the value whose trigamma function is the given one, by Newton's method on its reciprocal. */
    private static double inverseTrigamma(double value) {
        if (value > LARGEST_TRIGAMMA) {
            return 1 / Math.sqrt(value);
        }
        if (value < SMALLEST_TRIGAMMA) {
            return 1 / value;
        }
        double x = 0.5 + 1 / value;
        for (int i = 0; i < MOST_STEPS; i++) {
            double trigamma = Gamma.trigamma(x);
            double step = trigamma * (1 - trigamma / value) / tetragamma(x);
            x += step;
            if (-step / x < 1e-12) {
                break;
            }
        }
        return x;
    }

    /** Returns the derivative of the trigamma function: recurrence up to 12, then the series in 1 / x. */
    private static double tetragamma(double x) {
        double sum = 0;
        double at = x;
        while (at < 12) {
            sum -= 2 / (at * at * at);
            at++;
        }
        double inverse = 1 / (at * at);
        return sum
                - inverse * (1 + 1 / at + inverse * (0.5 - inverse * (1.0 / 6 - inverse * (1.0 / 6 - inverse * 0.3))));
    }
}
