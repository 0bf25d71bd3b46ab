package porebench.statistics.summary;

import java.util.OptionalDouble;
import porebench.quantity.Require;

/**
 * What a set of repeat values amounts to: how many, where and how far spread.
 *
 * <p>Mean and standard deviation come from the corrected two-pass algorithm. The one-pass formula, sum of squares
 * less n times the squared mean, loses every digit when the spread is small beside the mean and is not used.
 *
 * <p>Source: NIST Statistical Reference Datasets, univariate summary statistics: definitions of the sample mean, of
 * the sample standard deviation with n - 1, and of the lag-1 autocorrelation coefficient r1 = sum((x(i) - m)(x(i+1) -
 * m)) / sum((x(i) - m)^2); seen. Differences from the source: none.
 *
 * @param count how many values, at least 1
 * @param mean the arithmetic mean, in the unit of the values
 * @param standardDeviation the sample standard deviation with n - 1, in the unit of the values; empty for one value,
 *     which has no spread to estimate
 * @param low the lowest value
 * @param high the highest value
 * @param lag1Autocorrelation the correlation of each value with the next in the order given; empty when there is one
 *     value or all are equal
 */
public record Summary(
        int count,
        double mean,
        OptionalDouble standardDeviation,
        double low,
        double high,
        OptionalDouble lag1Autocorrelation) {

    public Summary {
        Require.atLeast("count", count, 1);
        Require.finite("low", low);
        Require.within("mean", mean, low, high);
        Require.finite("high", high);
        standardDeviation.ifPresent(value -> Require.atLeastZero("standardDeviation", value));
        lag1Autocorrelation.ifPresent(value -> Require.within("lag1Autocorrelation", value, -1, 1));
    }

    /**
     * Summarises some values in the order they were read.
     *
     * <p>Equal values give a mean equal to them and a standard deviation of exactly 0: the reading stood still, which
     * says more about the division of the scale than about repeatability.
     *
     * @param values at least one value, each finite
     * @throws IllegalArgumentException if there is no value, if one is not finite, or if they lie so far apart that
     *     their range is not finite
     */
    public static Summary of(double... values) {
        Require.atLeast("count of values", values.length, 1);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            double value = Require.finite("values[" + i + "]", values[i]);
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        Require.finite("range of values", high - low);
        if (low == high) {
            OptionalDouble spread = values.length == 1 ? OptionalDouble.empty() : OptionalDouble.of(0);
            return new Summary(values.length, low, spread, low, high, OptionalDouble.empty());
        }
        return ofSpread(values, low, high);
    }

    private static Summary ofSpread(double[] values, double low, double high) {
        // Scaling by a power of two is exact; it keeps the squares of very large and very small values in range.
        int exponent = Math.getExponent(Math.max(Math.abs(low), Math.abs(high)));
        double[] scaled = new double[values.length];
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            scaled[i] = Math.scalb(values[i], -exponent);
            sum += scaled[i];
        }
        double mean = sum / values.length;
        double residue = 0;
        for (double value : scaled) {
            residue += value - mean;
        }
        mean += residue / values.length;

        double squares = 0;
        double left = 0;
        double products = 0;
        double previous = 0;
        for (double value : scaled) {
            double deviation = value - mean;
            squares += deviation * deviation;
            left += deviation;
            products += previous * deviation;
            previous = deviation;
        }
        // The deviations should add up to 0; what is left of the rounded mean is taken out.
        squares -= left * left / values.length;
        // Values that differ in their last bits only leave nothing but the rounding of their mean.
        squares = Math.max(0, squares);
        double standardDeviation = Math.scalb(Math.sqrt(squares / (values.length - 1)), exponent);
        double centre = Math.min(high, Math.max(low, Math.scalb(mean, exponent)));
        return new Summary(
                values.length,
                centre,
                OptionalDouble.of(standardDeviation),
                low,
                high,
                squares == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(-1, Math.min(1, products / squares))));
    }

    /** Returns the highest value less the lowest, in the unit of the values. */
    public double range() {
        return high - low;
    }

    /** Returns the standard uncertainty of the mean, s / sqrt(n), in the unit of the values; empty for one value. */
    public OptionalDouble standardError() {
        return standardDeviation.isPresent()
                ? OptionalDouble.of(standardDeviation.getAsDouble() / Math.sqrt(count))
                : OptionalDouble.empty();
    }
}
