package porebench.method;

import porebench.quantity.Pressure;
import porebench.quantity.Require;
import porebench.quantity.Temperature;

/**
 * What a Type A meter does when its water column is put under pressure, by the law of Boyle and Mariotte.
 *
 * <p>Air Va at the absolute pressure Pd loses, for an added pressure P, the volume Va P / (Pd + P), which the falling
 * level shows. Pd = Pa + rho g h - pv: the surrounding air, the water above the sample, less the water vapour in the
 * air, which condenses instead of being compressed. The scale is right where the meter was calibrated; elsewhere the
 * reading moves by the ratio of the two losses.
 *
 * <p>Source: Boyle and Mariotte (derived here); vapour pressure 611.2 exp(17.62 t / (243.12 + t)) Pa, Sonntag 1990 as in
 * the WMO guide to instruments (recalled). Differences from the source: nothing dissolves; the expansion of the meter is
 * the calibration's D and not part of the model.
 *
 * @param working the pressure added, greater than 0
 * @param columnMetres height of water above the middle of the bowl's air, in m, at least 0
 */
public record BoyleTypeA(Pressure working, double columnMetres) {
    /** Height of water above the middle of the bowl, in m, where it was not measured: common practice, no source. */
    public static final double USUAL_COLUMN_METRES = 0.4;

    public BoyleTypeA {
        Require.positive("working", working.pascals());
        Require.atLeastZero("columnMetres", columnMetres);
    }

    /** Returns the model with the usual column of 0.4 m. */
    public static BoyleTypeA of(Pressure working) {
        return new BoyleTypeA(working, USUAL_COLUMN_METRES);
    }

    /** Returns the share of its volume that air loses under the working pressure, P / (Pd + P). */
    public double lossRatio(Surroundings where) {
        return working.pascals() / (dryPascals(where) + working.pascals());
    }

    /** Returns a reading taken in one place divided by the reading of the same air where the meter was calibrated. */
    public double readingRatio(Surroundings calibrated, Surroundings used) {
        return lossRatio(used) / lossRatio(calibrated);
    }

    /**
     * Returns the half-range pressure P1, under which the meter reads half of what it reads under P: P1 = P Pd / (P + 2 Pd).
     *
     * <p>Source: ASTM C231, annex on calibration, alternative working pressure (recalled): it is found by trial; here it
     * is predicted (derived).
     */
    public Pressure halfRange(Surroundings where) {
        double dry = dryPascals(where);
        return new Pressure(working.pascals() * dry / (working.pascals() + 2 * dry));
    }

    private double dryPascals(Surroundings where) {
        return where.barometric().pascals() + where.columnPascals(columnMetres) - vapourPascals(where.water());
    }

    /** Returns the pressure of water vapour over water, in Pa. */
    static double vapourPascals(Temperature water) {
        double t = water.celsius();
        return 611.2 * Math.exp(17.62 * t / (243.12 + t));
    }
}
