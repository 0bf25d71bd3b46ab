package porebench.chart.meter;

import java.util.List;

/**
 * What the plot of a dial check shows: the error of the dial, reading less true air, against the true air.
 *
 * @param calibration the calibration in which it was checked
 * @param points the amounts of air checked, in rising order
 * @param model the error that the meter's model predicts, in rising order of the air; empty when there is no model
 * @param tolerancePercent how far a reading may lie from the true air, in % air, greater than 0
 */
public record DialErrors(String calibration, List<Point> points, List<Predicted> model, double tolerancePercent) {
    public DialErrors {
        points = List.copyOf(points);
        model = List.copyOf(model);
    }

    /**
     * One amount of air.
     *
     * @param truePercent the true air, in % air
     * @param errorPercent the mean reading less the true air, in % air
     * @param expandedUncertaintyPercent half of the bar, in % air, at least 0
     * @param count how many readings it is the mean of
     * @param passes whether the error lies within the tolerance
     */
    public record Point(
            double truePercent, double errorPercent, double expandedUncertaintyPercent, int count, boolean passes) {}

    /**
     * The error that the model predicts at one amount of air.
     *
     * @param truePercent the true air, in % air
     * @param errorPercent the predicted reading less the true air, in % air
     */
    public record Predicted(double truePercent, double errorPercent) {}
}
