package porebench.evidence.paper;

import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.Meter;

/**
 * A blank form for a calibration of a meter, to be written on at the bench: what it says.
 *
 * @param laboratory whose form it is; empty when the lab book does not say
 * @param meter the meter it is for; empty when not chosen yet
 * @param meterType the type of meter it is for
 * @param massUnit the unit in which masses will be written
 * @param profile whose limits and intervals hold
 */
public record CalibrationForm(
        Optional<Laboratory> laboratory, Optional<Meter> meter, MeterType meterType, MassUnit massUnit, Profile profile)
        implements Printed {
    /** Returns the blank form for a meter. */
    public static CalibrationForm of(Optional<Laboratory> laboratory, Meter meter, MassUnit massUnit, Profile profile) {
        return new CalibrationForm(laboratory, Optional.of(meter), meter.type(), massUnit, profile);
    }
}
