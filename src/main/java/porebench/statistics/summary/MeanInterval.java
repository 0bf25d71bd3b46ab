package porebench.statistics.summary;

import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.uncertainty.UncertaintySum;

/**
 * A two-sided t interval on the mean of repeat values.
 *
 * <p>The interval is mean +- t s / sqrt(n), with t of n - 1 degrees of freedom. It knows of nothing but the scatter
 * of the values: when all are equal it <em>collapses</em> to the mean, which on a divided scale only says that the
 * scatter is smaller than the division. The uncertainty of the division is then
 * still to be added ({@link UncertaintySum#resolutionUncertainty}).
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2; recalled. Differences from the source: none.
 *
 * @param mean the middle of the interval, in the unit of the values
 * @param halfWidth half its width, in the unit of the values; 0 when collapsed
 * @param confidence the probability the interval was made for, 0.95 being 95 %
 */
public record MeanInterval(double mean, double halfWidth, double confidence) {
    public MeanInterval {
        Require.finite("mean", mean);
        Require.atLeastZero("halfWidth", halfWidth);
        Require.within("confidence", confidence, 0, 1);
    }

    /**
     * Returns the interval on a mean at a confidence.
     *
     * @param confidence greater than 0 and less than 1; 0.95 for 95 %
     * @return the interval; empty for a single value, whose scatter is unknown
     * @throws IllegalArgumentException if the confidence is not between 0 and 1
     */
    public static Optional<MeanInterval> of(Summary summary, double confidence) {
        if (summary.count() < 2) {
            return Optional.empty();
        }
        double factor = new StudentT(summary.count() - 1).coverageFactor(confidence);
        double halfWidth = factor * summary.standardError().orElseThrow();
        return Optional.of(new MeanInterval(summary.mean(), halfWidth, confidence));
    }

    /** Returns the lower end, in the unit of the values. */
    public double low() {
        return mean - halfWidth;
    }

    /** Returns the upper end, in the unit of the values. */
    public double high() {
        return mean + halfWidth;
    }
}
