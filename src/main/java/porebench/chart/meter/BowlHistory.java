package porebench.chart.meter;

import java.time.LocalDate;
import java.util.List;

/**
 * What the plot of a bowl over time shows: the volume as each calibration found it, and the volume in force.
 *
 * @param found what calibrations found, the earliest first
 * @param steps from when on which volume counts, the earliest first
 * @param until the last day shown, to which the volume in force is drawn
 * @param unit the unit of all volumes, by its symbol
 */
public record BowlHistory(List<Found> found, List<Step> steps, LocalDate until, String unit) {
    public BowlHistory {
        found = List.copyOf(found);
        steps = List.copyOf(steps);
    }

    /**
     * A volume that a calibration found.
     *
     * @param id the calibration
     * @param on its day
     * @param volume the mean of its fills
     * @param expandedUncertainty half of the bar, at least 0
     * @param fills how many fills there were
     * @param passes whether the bowl's size and shape pass
     */
    public record Found(
            String id, LocalDate on, double volume, double expandedUncertainty, int fills, boolean passes) {}

    /**
     * From when on a volume counts for trials.
     *
     * @param from the first day
     * @param volume the volume
     */
    public record Step(LocalDate from, double volume) {}
}
