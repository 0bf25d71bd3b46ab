package porebench.record;

import java.time.LocalDate;
import java.util.Optional;
import porebench.method.Problem;

/** The day on which a meter or a piece of equipment was calibrated: never one that is still to come. */
public final class CalibrationDay {
    private CalibrationDay() {}

    /**
     * Returns the problem that a calibration is of a day to come.
     *
     * @param field where the day was typed
     * @param day of the calibration
     * @param today the day on which it is to be kept
     */
    public static Optional<Problem> check(String field, LocalDate day, LocalDate today) {
        return day.isAfter(today)
                ? Optional.of(Problem.error(field, "meter.date-to-come", day, today))
                : Optional.empty();
    }
}
