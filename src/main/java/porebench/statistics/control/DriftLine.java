package porebench.statistics.control;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * A straight line over time through the means of determinations, one slope for all kinds and a level for each.
 *
 * <p>By least squares: with x and y each taken from the mean of their own kind, slope = sum(x y) / sum(x x), of n points and k
 * kinds with n - k - 1 degrees of freedom. The standard deviation about the line is never taken to be less than what rounding
 * to a division gives. A drift of no more than one division over the whole time is none: readings that lie at a boundary take
 * either of two.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1 (recalled). Differences from the source: the least
 * standard deviation, and the least drift.
 *
 * @param slope the change, in the unit of the values a day
 * @param halfWidth how far its interval reaches to either side
 * @param degreesOfFreedom those of the standard deviation about the line
 */
public record DriftLine(double slope, double halfWidth, int degreesOfFreedom) {
    /** What the line says. */
    public enum Judgement {
        NONE,
        WITHIN_ONE_DIVISION,
        RISES,
        FALLS
    }

    /**
     * A determination.
     *
     * @param kind what it is of, such as its mix
     * @param days when it was made, in days from any day
     * @param mean the mean of its trials
     */
    public record Point(String kind, double days, double mean) {}

    public DriftLine {
        Require.finite("slope", slope);
        Require.atLeastZero("halfWidth", halfWidth);
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 1);
    }

    /**
     * Lays a line.
     *
     * @param points the determinations
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param confidence of the interval, between 0 and 1
     * @return the line; empty where too few points are left beside the levels, or no kind has points of several days
     */
    public static Optional<DriftLine> through(List<Point> points, double division, double confidence) {
        Map<String, double[]> sums = new HashMap<>();
        for (Point point : points) {
            double[] sum = sums.computeIfAbsent(point.kind(), any -> new double[3]);
            sum[0]++;
            sum[1] += point.days();
            sum[2] += point.mean();
        }
        int degrees = points.size() - sums.size() - 1;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Point point : points) {
            double[] sum = sums.getOrDefault(point.kind(), new double[3]);
            double x = point.days() - sum[1] / sum[0];
            double y = point.mean() - sum[2] / sum[0];
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        if (degrees < 1 || xx <= 0) {
            return Optional.empty();
        }
        double slope = xy / xx;
        double deviation = Math.sqrt(Math.max(0, yy - slope * xy) / degrees);
        double least = Math.max(deviation, BaseEstimate.ofDivision(division));
        return Optional.of(new DriftLine(
                slope, new StudentT(degrees).coverageFactor(confidence) * least / Math.sqrt(xx), degrees));
    }

    /**
     * Judges the line.
     *
     * @param days how long a time it covers
     * @param division the smallest step of the scale, in the unit of the values
     */
    public Judgement judged(double days, double division) {
        if (Math.abs(slope) <= halfWidth) {
            return Judgement.NONE;
        }
        if (Math.abs(slope) * days <= division) {
            return Judgement.WITHIN_ONE_DIVISION;
        }
        return slope > 0 ? Judgement.RISES : Judgement.FALLS;
    }
}
