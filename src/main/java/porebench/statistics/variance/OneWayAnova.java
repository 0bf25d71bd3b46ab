package porebench.statistics.variance;

import java.util.List;
import porebench.quantity.Require;
import porebench.statistics.Judged;

/**
 * The analysis of variance of values in groups: do the groups differ by more than their values do?
 *
 * <p>The first value is taken from all of them, and sums are then of deviations from means. Subtracting sums of large
 * squares, as textbooks and some libraries do, leaves no digit right when the spread is small beside the values.
 *
 * <p>Source: NIST Statistical Reference Datasets, analysis of variance, definitions of the certified values; seen.
 * Differences from the source: none.
 *
 * @param between the groups' means about the mean of all
 * @param within the values about the mean of their group
 * @param meanGroupSize n0, the number of values a group that makes the expected mean square between groups equal to
 *     that within plus n0 times the variance of the groups; equal to the size where all groups have the same
 */
public record OneWayAnova(MeanSquare between, MeanSquare within, double meanGroupSize) {
    /**
     * Analyses groups of values.
     *
     * @param groups at least two, each with at least one value, each finite
     * @throws IllegalArgumentException if there are fewer groups, one is empty or a value is not finite
     */
    public static OneWayAnova of(List<double[]> groups) {
        Require.atLeast("count of groups", groups.size(), 2);
        double origin = groups.get(0).length == 0 ? 0 : groups.get(0)[0];
        int count = 0;
        double sum = 0;
        double squaredSizes = 0;
        double within = 0;
        double[] means = new double[groups.size()];
        for (int i = 0; i < means.length; i++) {
            double[] group = groups.get(i);
            Require.atLeast("count of values in group " + i, group.length, 1);
            means[i] = mean(group, origin);
            within += squares(group, origin, means[i]);
            count += group.length;
            sum += group.length * means[i];
            squaredSizes += (double) group.length * group.length;
        }
        double between = 0;
        for (int i = 0; i < means.length; i++) {
            double deviation = means[i] - sum / count;
            between += groups.get(i).length * deviation * deviation;
        }
        int degrees = means.length - 1;
        return new OneWayAnova(
                new MeanSquare(degrees, between),
                new MeanSquare(count - means.length, within),
                (count - squaredSizes / count) / degrees);
    }

    private static double squares(double[] group, double origin, double mean) {
        double squares = 0;
        double left = 0;
        for (double value : group) {
            double deviation = value - origin - mean;
            squares += deviation * deviation;
            left += deviation;
        }
        // The deviations should add up to 0; what is left of the rounded mean is taken out.
        return squares - left * left / group.length;
    }

    private static double mean(double[] group, double origin) {
        double sum = 0;
        for (double value : group) {
            sum += Require.finite("value", value) - origin;
        }
        double mean = sum / group.length;
        double residue = 0;
        for (double value : group) {
            residue += value - origin - mean;
        }
        return mean + residue / group.length;
    }

    /**
     * Tests whether the groups differ.
     *
     * @return F and its probability; withheld as too few where every group has one value, and as without spread where
     *     the values of no group differ
     */
    public Judged<FTest> test() {
        return FTest.of(between, within);
    }
}
