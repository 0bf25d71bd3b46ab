package porebench.method.risk;

import java.util.stream.DoubleStream;
import porebench.quantity.Require;
import porebench.statistics.distribution.Normal;
import porebench.statistics.distribution.NormalMean;

/**
 * The shares of all loads that are wrongly passed and wrongly failed when the air they are judged by is wrong.
 *
 * <p>The true air of loads is normal with a mean and a spread. It is seen as true air + error + a reading's own scatter, normal with mean
 * 0, and passes from target - tolerance to target + tolerance. A factor that is too small by e makes every air too high by e: error = true
 * factor less the one in use.
 *
 * <p>Source: JCGM 106:2012, 9.5 (global consumer's and producer's risk), recalled; the integrals by {@link NormalMean}, to an absolute
 * error below 1e-11. Differences from the source: the error, which there is 0.
 *
 * @param wronglyPassed the share of all loads that pass and should not, from 0 to 1
 * @param wronglyFailed the share of all loads that fail and should not, from 0 to 1
 */
public record LoadRisk(double wronglyPassed, double wronglyFailed) {
    /** Where the chance that a load is seen within the limits bends, in standard deviations of a reading. */
    private static final double[] BENDS = {-9, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, 9};

    public LoadRisk {
        Require.within("wronglyPassed", wronglyPassed, 0, 1);
        Require.within("wronglyFailed", wronglyFailed, 0, 1);
    }

    /**
     * Works out the shares for one error.
     *
     * @param limits what loads must keep to
     * @param loads how they are and how they are seen
     * @param errorPercent what every air is seen too high by, in % air; negative where it is too low
     */
    public static LoadRisk of(AirLimits limits, Loads loads, double errorPercent) {
        Require.finite("errorPercent", errorPercent);
        if (loads.spreadPercent() == 0) {
            return ofOneAir(limits, loads, errorPercent);
        }
        if (loads.readingSpreadPercent() == 0) {
            return ofExactReadings(limits, loads, errorPercent);
        }
        NormalMean all = new NormalMean(loads.meanPercent(), loads.spreadPercent());
        double reading = loads.readingSpreadPercent();
        double low = limits.lowPercent();
        double high = limits.highPercent();
        double[] bends = DoubleStream.of(low - errorPercent, high - errorPercent)
                .flatMap(edge -> DoubleStream.of(BENDS).map(bend -> edge + bend * reading))
                .toArray();
        double passed = all.of(
                        air -> seenWithin(limits, air + errorPercent, reading), Double.NEGATIVE_INFINITY, low, bends)
                + all.of(air -> seenWithin(limits, air + errorPercent, reading), high, Double.POSITIVE_INFINITY, bends);
        double failed = all.of(air -> seenOutside(limits, air + errorPercent, reading), low, high, bends);
        return new LoadRisk(share(passed), share(failed));
    }

    private static double share(double sum) {
        return Math.max(0, Math.min(1, sum));
    }

    private static double seenWithin(AirLimits limits, double seen, double spread) {
        return between((limits.lowPercent() - seen) / spread, (limits.highPercent() - seen) / spread);
    }

    private static double seenOutside(AirLimits limits, double seen, double spread) {
        return Normal.cumulative((limits.lowPercent() - seen) / spread)
                + Normal.upperTail((limits.highPercent() - seen) / spread);
    }

    /** Returns the share of a standard normal distribution between two values, from the side on which it keeps its digits. */
    private static double between(double from, double to) {
        if (to <= from) {
            return 0;
        }
        return from > 0
                ? Normal.upperTail(from) - Normal.upperTail(to)
                : Normal.cumulative(to) - Normal.cumulative(from);
    }

    /** All loads are the same: what is wrong is wrong of those that scatter over a limit. */
    private static LoadRisk ofOneAir(AirLimits limits, Loads loads, double error) {
        double seen = loads.meanPercent() + error;
        double within = loads.readingSpreadPercent() == 0
                ? limits.hold(seen) ? 1 : 0
                : seenWithin(limits, seen, loads.readingSpreadPercent());
        return limits.hold(loads.meanPercent()) ? new LoadRisk(0, share(1 - within)) : new LoadRisk(share(within), 0);
    }

    /** What is seen is the air moved by the error: loads between a limit and that limit less the error are judged wrongly. */
    private static LoadRisk ofExactReadings(AirLimits limits, Loads loads, double error) {
        double low = limits.lowPercent();
        double high = limits.highPercent();
        return error >= 0
                ? new LoadRisk(
                        loads.between(low - error, Math.min(low, high - error)),
                        loads.between(Math.max(low, high - error), high))
                : new LoadRisk(
                        loads.between(Math.max(high, low - error), high - error),
                        loads.between(low, Math.min(high, low - error)));
    }
}
