package porebench.method.meter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.quantity.Volume;

/**
 * Everything read when the dial of a Type B meter is checked against known amounts of air, as typed.
 *
 * @param vesselWater mass of water that fills the calibration vessel; needed where a point is given in vessels
 * @param waterCelsius temperature of the water, in C; needed where a point is given in vessels or by mass
 * @param points the points in the order of rising air; a repeated amount is a repeat reading
 * @param initialLine where the initial pressure line stood on the dial, in % air, 0 being the zero of the scale and below
 *     it negative; empty when not noted
 * @param leakMarks how far the hand moved in 90 s with the chamber at the initial line, in marks of the dial there; empty
 *     when not watched
 * @param chamber the maker's volume of the air chamber; empty when not known
 * @param initialPressure the maker's initial pressure, above that of the air; empty when not known
 */
public record DialCheck(
        Optional<Typed<Mass>> vesselWater,
        Optional<BigDecimal> waterCelsius,
        List<CheckPoint> points,
        Optional<BigDecimal> initialLine,
        Optional<BigDecimal> leakMarks,
        Optional<Typed<Volume>> chamber,
        Optional<Typed<Pressure>> initialPressure) {
    public DialCheck {
        points = List.copyOf(points);
    }
}
