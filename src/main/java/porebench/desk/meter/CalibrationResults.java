package porebench.desk.meter;

import java.util.Optional;
import porebench.evidence.JudgedCalibration;
import porebench.method.Answer;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;

/**
 * What the measurements of a calibration tell, each part only where it could be worked out.
 *
 * @param bowl the bowl
 * @param dial the dial of a Type B meter
 * @param column the column of a Type A meter
 */
record CalibrationResults(
        Optional<BowlCalibration> bowl, Optional<DialCalibration> dial, Optional<ColumnCalibration> column) {
    static CalibrationResults of(JudgedCalibration judged) {
        return new CalibrationResults(
                judged.bowl().flatMap(Answer::value),
                judged.dial().flatMap(Answer::value),
                judged.column().flatMap(Answer::value));
    }
}
