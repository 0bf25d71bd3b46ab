package porebench.statistics.variance;

import porebench.quantity.Require;

/**
 * Three variances that add up: between outer groups, between the groups in one of them, and between the values in a group.
 *
 * @param outer at least 0; 0 too where it is not told from that of groups, which then holds it
 * @param group at least 0
 * @param value at least 0; 0 too where values never differ within a group
 */
public record PooledVariances(double outer, double group, double value) {
    public PooledVariances {
        Require.atLeastZero("outer", outer);
        Require.atLeastZero("group", group);
        Require.atLeastZero("value", value);
    }

    /** Returns the variance of the mean of some values of one group of an outer group of its own. */
    double ofMean(int values) {
        return outer + group + value / values;
    }

    /**
     * Returns these with a variance of values of no less than is known of their scale; where there are no repeats it stands in the
     * variance of groups.
     */
    PooledVariances atLeast(double ofValue, boolean hasRepeats) {
        return hasRepeats
                ? new PooledVariances(outer, group, Math.max(value, ofValue))
                : new PooledVariances(outer, Math.max(group, ofValue), value);
    }
}
