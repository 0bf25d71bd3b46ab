package porebench.statistics.variance;

import porebench.quantity.Require;

/**
 * A variance as estimated from mean squares.
 *
 * @param raw as it comes out, in the square of the unit of the values; a difference of mean squares may be below 0
 * @param interval where the variance lies
 */
public record VarianceEstimate(double raw, VarianceInterval interval) {
    public VarianceEstimate {
        Require.finite("raw", raw);
    }

    /** Returns the estimate to be used: 0 where it came out below. */
    public double variance() {
        return Math.max(0, raw);
    }

    /** Returns whether the estimate came out below 0, which tells that the data show nothing of this variance. */
    public boolean isAtZero() {
        return raw < 0;
    }
}
