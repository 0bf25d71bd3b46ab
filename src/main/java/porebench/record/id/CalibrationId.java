package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows one calibration of a meter; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record CalibrationId(String text) implements Name<CalibrationId> {
    public CalibrationId {
        text = Require.notBlank("CalibrationId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
