package porebench.statistics.variance;

import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * Where a variance, or a share of one, lies with a confidence.
 *
 * @param low at least 0
 * @param high at least the low end; infinite where the data set no bound
 * @param confidence greater than 0 and less than 1
 */
public record VarianceInterval(double low, double high, double confidence) {
    public VarianceInterval {
        Require.atLeastZero("low", low);
        if (!(high >= low)) {
            throw new IllegalArgumentException("high must be at least " + low + ", but is " + high);
        }
        StudentT.requireProbability("confidence", confidence);
    }

    /** Returns the interval of the square roots. */
    public VarianceInterval ofRoots() {
        return new VarianceInterval(Math.sqrt(low), Math.sqrt(high), confidence);
    }
}
