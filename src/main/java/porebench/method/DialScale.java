package porebench.method;

import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Require;
import porebench.quantity.Volume;

/**
 * What the dial of a Type B meter is graduated for: it shows % air, but feels the pressure left after the release.
 *
 * <p>A dial that is right for a chamber Vk, a bowl S and an initial gauge pressure p1 shows, at a gauge pressure p,
 * A = 100 (Vk / S) (p1 / p - 1) in % air: at p1 itself it stands on 0.
 *
 * <p>Source: the law of Boyle and Mariotte, p1 Vk = p (Vk + A S / 100) in gauge pressures (derived). Differences from the
 * source: none.
 *
 * @param chamber the volume of the air chamber, greater than 0
 * @param initialGauge the initial pressure above that of the surrounding air, greater than 0
 * @param bowl the volume of the bowl, greater than 0
 */
public record DialScale(Volume chamber, Pressure initialGauge, Volume bowl) {
    /** Chamber in % of the bowl where the maker's figure is not known: common practice, no source. */
    public static final double USUAL_CHAMBER_PERCENT = 5;

    /** Initial gauge pressure in kPa where the maker's figure is not known: common practice, no source. */
    public static final double USUAL_INITIAL_KILOPASCALS = 100;

    public DialScale {
        Require.positive("chamber", chamber.cubicMetres());
        Require.positive("initialGauge", initialGauge.pascals());
        Require.positive("bowl", bowl.cubicMetres());
    }

    /** Returns the scale of a meter whose maker's figures are not known: a chamber of 5 % of the bowl, 100 kPa. */
    public static DialScale usual(Volume bowl) {
        return new DialScale(
                bowl.times(USUAL_CHAMBER_PERCENT / 100),
                Pressure.of(USUAL_INITIAL_KILOPASCALS, PressureUnit.KILOPASCAL),
                bowl);
    }

    /** Returns the chamber in % of the bowl. */
    public double chamberPercent() {
        return 100 * chamber.cubicMetres() / bowl.cubicMetres();
    }

    /**
     * Returns what the dial shows at a gauge pressure, in % air; below 0 when the pressure is above the initial one.
     *
     * @throws IllegalArgumentException if the pressure is not greater than 0
     */
    public double readingAt(Pressure gauge) {
        Require.positive("gauge", gauge.pascals());
        return chamberPercent() * (initialGauge.pascals() / gauge.pascals() - 1);
    }
}
