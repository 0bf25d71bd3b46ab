package porebench.method.risk;

import porebench.quantity.Require;
import porebench.statistics.distribution.Normal;

/**
 * How the air of loads is, and how it is seen.
 *
 * @param meanPercent the mean of the true air, in % air
 * @param spreadPercent its standard deviation from load to load, in % air, at least 0
 * @param readingSpreadPercent the standard deviation by which one load is read differently, in % air, at least 0
 */
public record Loads(double meanPercent, double spreadPercent, double readingSpreadPercent) {
    public Loads {
        Require.finite("meanPercent", meanPercent);
        Require.atLeastZero("spreadPercent", spreadPercent);
        Require.atLeastZero("readingSpreadPercent", readingSpreadPercent);
    }

    /** Returns the share of loads whose true air lies between two values, of loads that differ. */
    double between(double fromPercent, double toPercent) {
        double from = (fromPercent - meanPercent) / spreadPercent;
        double to = (toPercent - meanPercent) / spreadPercent;
        if (to <= from) {
            return 0;
        }
        return from > 0
                ? Normal.upperTail(from) - Normal.upperTail(to)
                : Normal.cumulative(to) - Normal.cumulative(from);
    }
}
