package porebench.method;

import porebench.quantity.Pressure;
import porebench.quantity.Require;
import porebench.quantity.Temperature;
import porebench.quantity.Volume;

/**
 * What a Type B meter does when its chamber is released into the bowl, by the law of Boyle and Mariotte.
 *
 * <p>Chamber Vk at the absolute pressure P1 = Pa + p1, air Va in the bowl under a water column pw: P1 Vk = P2 Vk +
 * Va P2 (P2 - Pa) / (P2 + pw), the last term being the room that the bowl's air gives up. Without a column that is
 * P2 (Vk + Va) = P1 Vk + Pa Va, and in gauge pressures p2 = p1 Vk / (Vk + Va): the surrounding pressure cancels, which is
 * why elevation hardly matters. Where chamber and bowl differ in temperature, the bowl's air counts as Va Tk / Tw.
 *
 * <p>Source: Boyle and Mariotte with Gay-Lussac (derived here). Differences from the source: each space keeps its
 * temperature, the air is dry, nothing dissolves and no wall gives.
 *
 * @param chamber the volume of the air chamber, greater than 0
 * @param initialGauge the pressure pumped into it, above that of the surrounding air, greater than 0
 * @param bowl the volume of the bowl, greater than 0
 * @param surroundings the air about it and the water in it
 * @param chamberAir temperature of the air in the chamber
 * @param columnMetres height of water above the bowl's air, in m; 0 for air just under the cover
 */
public record BoyleTypeB(
        Volume chamber,
        Pressure initialGauge,
        Volume bowl,
        Surroundings surroundings,
        Temperature chamberAir,
        double columnMetres) {
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

    public BoyleTypeB {
        Require.positive("chamber", chamber.cubicMetres());
        Require.positive("initialGauge", initialGauge.pascals());
        Require.positive("bowl", bowl.cubicMetres());
        Require.positive("chamberAir", chamberAir.celsius() + KELVIN_AT_ZERO_CELSIUS);
        Require.atLeastZero("columnMetres", columnMetres);
    }

    /** Returns the meter that a dial was graduated for, at the temperature of its surroundings and with no column. */
    public static BoyleTypeB of(DialScale scale, Surroundings surroundings) {
        return new BoyleTypeB(
                scale.chamber(), scale.initialGauge(), scale.bowl(), surroundings, surroundings.water(), 0);
    }

    /** Returns this meter with another chamber. */
    public BoyleTypeB withChamber(Volume other) {
        return new BoyleTypeB(other, initialGauge, bowl, surroundings, chamberAir, columnMetres);
    }

    /** Returns this meter pumped to another gauge pressure. */
    public BoyleTypeB withInitialGauge(Pressure other) {
        return new BoyleTypeB(chamber, other, bowl, surroundings, chamberAir, columnMetres);
    }

    /**
     * Returns the gauge pressure after the release.
     *
     * @param airPercent air in the bowl at its own pressure before the release, in % of the bowl, from 0 to 100
     */
    public Pressure finalGauge(double airPercent) {
        Require.within("airPercent", airPercent, 0, 100);
        double kelvinRatio = (chamberAir.celsius() + KELVIN_AT_ZERO_CELSIUS)
                / (surroundings.water().celsius() + KELVIN_AT_ZERO_CELSIUS);
        double vk = chamber.cubicMetres();
        double va = bowl.cubicMetres() * airPercent / 100 * kelvinRatio;
        double pa = surroundings.barometric().pascals();
        double p1 = pa + initialGauge.pascals();
        double column = surroundings.columnPascals(columnMetres);
        // (Vk + Va) P2^2 - (P1 Vk + Pa Va - pw Vk) P2 - P1 Vk pw = 0, of which one root is above 0.
        double half = (p1 * vk + pa * va - column * vk) / 2;
        double root = Math.sqrt(half * half + (vk + va) * p1 * vk * column);
        return new Pressure((half + root) / (vk + va) - pa);
    }

    /**
     * Returns what a dial shows after the release, in % air.
     *
     * @param airPercent air in the bowl, in % of the bowl, from 0 to 100
     * @param scale what the dial is graduated for
     */
    public double reading(double airPercent, DialScale scale) {
        return scale.readingAt(finalGauge(airPercent));
    }
}
