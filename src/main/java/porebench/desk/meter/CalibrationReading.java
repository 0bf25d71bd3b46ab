package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.method.meter.ImpliedChamber;
import porebench.record.MeterCalibration;

/**
 * What a draft says when it is read: the calibration, unless a problem forbids one, what it tells, and every problem.
 *
 * @param calibration the calibration; empty exactly when one of the problems is an error
 * @param results what can be told from what is typed so far
 * @param drift how the implied chamber changed since the dial check before; empty without one
 * @param problems everything wrong or doubtful, under the form's fields
 */
record CalibrationReading(
        Optional<MeterCalibration> calibration,
        CalibrationResults results,
        Optional<ImpliedChamber.Drift> drift,
        List<Problem> problems) {
    CalibrationReading {
        problems = List.copyOf(problems);
    }
}
