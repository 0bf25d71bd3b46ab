package porebench.chart.factor;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import porebench.chart.look.TrialPoint;

/**
 * What the plot of a mix over time shows: the trials of all its determinations and the factor in force.
 *
 * @param trials all trials of the mix
 * @param steps its factor issues, the earliest first
 * @param begun its determinations, the earliest first
 * @param until the last day shown, to which the factor in force is drawn
 */
public record FactorOverTime(List<TrialPoint> trials, List<Step> steps, List<Begun> begun, LocalDate until) {
    public FactorOverTime {
        trials = List.copyOf(trials);
        steps = List.copyOf(steps);
        begun = List.copyOf(begun);
    }

    /**
     * From when on a factor holds.
     *
     * @param revision the revision of the factor
     * @param from the first day
     * @param factorPercent the factor in % air; empty when the revision withdrew it
     */
    public record Step(int revision, LocalDate from, OptionalDouble factorPercent) {}

    /**
     * The beginning of a determination.
     *
     * @param id its name
     * @param on the day
     */
    public record Begun(String id, LocalDate on) {}
}
