package porebench.chart.factor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.look.TrialPoint;

/**
 * What the plot of a determination shows: the factor of each trial in the order in which they were made.
 *
 * @param trials all trials, those that do not count among them
 * @param meanPercent the mean of those that count, in % air; empty when none counts
 * @param interval the 95 % interval of the mean; empty for fewer than two
 * @param reportedPercent the factor as reported, in % air; empty when none counts
 */
public record FactorByTrial(
        List<TrialPoint> trials,
        OptionalDouble meanPercent,
        Optional<Interval> interval,
        OptionalDouble reportedPercent) {
    public FactorByTrial {
        trials = List.copyOf(trials);
    }

    /**
     * An interval of the factor.
     *
     * @param lowPercent its lower end, in % air
     * @param highPercent its upper end, in % air
     */
    public record Interval(double lowPercent, double highPercent) {}
}
