package porebench.method.trial;

import java.util.Optional;
import porebench.quantity.Volume;

/**
 * What the calibrations of the meter say about the readings of one trial; what they do not say is empty, and the readings
 * are then used as typed.
 *
 * @param bowl the bowl volume in force on the day of the trial
 * @param gauge the reading of a Type B dial brought to the true air
 */
public record Corrections(Optional<Volume> bowl, Optional<Gauge> gauge) {
    /** Nothing is known: the readings are used as typed. */
    public static final Corrections NONE = new Corrections(Optional.empty(), Optional.empty());

    /**
     * A reading of a Type B dial brought to the true air along the curve of its calibration.
     *
     * @param truePercent the corrected reading, in % air; may be slightly below 0
     * @param standardUncertaintyPercent of the correction, in % air, the reading itself not included
     * @param isExtrapolated whether the reading lies beyond the points of the calibration
     */
    public record Gauge(double truePercent, double standardUncertaintyPercent, boolean isExtrapolated) {}
}
