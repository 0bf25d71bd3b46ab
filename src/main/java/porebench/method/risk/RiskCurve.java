package porebench.method.risk;

import java.util.List;
import java.util.stream.IntStream;
import porebench.quantity.Require;

/**
 * The shares of loads wrongly passed and wrongly failed over the error of the air they are judged by.
 *
 * @param points in the order of their errors, the middle one without error
 */
public record RiskCurve(List<Point> points) {
    private static final int STEPS_TO_A_SIDE = 20;

    /**
     * One error.
     *
     * @param errorPercent in % air
     * @param risk what it does
     */
    public record Point(double errorPercent, LoadRisk risk) {}

    public RiskCurve {
        points = List.copyOf(points);
        Require.atLeast("count of points", points.size(), 1);
    }

    /**
     * Works out the curve in equal steps.
     *
     * @param limits what loads must keep to
     * @param loads how they are and how they are seen
     * @param farthestPercent the largest error to either side, in % air, greater than 0
     */
    public static RiskCurve of(AirLimits limits, Loads loads, double farthestPercent) {
        Require.positive("farthestPercent", farthestPercent);
        return new RiskCurve(IntStream.rangeClosed(-STEPS_TO_A_SIDE, STEPS_TO_A_SIDE)
                .mapToDouble(step -> farthestPercent * step / STEPS_TO_A_SIDE)
                .mapToObj(error -> new Point(error, LoadRisk.of(limits, loads, error)))
                .toList());
    }

    /** Returns how far a curve should reach to either side to show an error, in % air: half the tolerance, or farther. */
    public static double farthest(AirLimits limits, double errorPercent) {
        return Math.max(limits.tolerancePercent() / 2, Math.abs(errorPercent));
    }
}
