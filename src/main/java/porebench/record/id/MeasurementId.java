package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a measurement of a source; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record MeasurementId(String text) implements Name<MeasurementId> {
    public MeasurementId {
        text = Require.notBlank("MeasurementId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
