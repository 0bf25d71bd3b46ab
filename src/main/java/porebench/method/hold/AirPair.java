package porebench.method.hold;

import porebench.quantity.Density;
import porebench.quantity.Require;

/**
 * Air of one batch found in two ways.
 *
 * @param name what the pair is called, such as the id of its reading
 * @param pressurePercent air by the pressure meter with the factor subtracted, in % air
 * @param gravimetricPercent air from the density, in % air
 */
public record AirPair(String name, double pressurePercent, double gravimetricPercent) {
    /** Air from density below this, in % air, tells of a wrong density, not of concrete. Source: common practice, no source. */
    public static final double LEAST_GRAVIMETRIC = -2;

    public AirPair {
        Require.notBlank("name", name);
        Require.finite("pressurePercent", pressurePercent);
        Require.finite("gravimetricPercent", gravimetricPercent);
    }

    /**
     * Pairs corrected air with air = 100 (T - D) / T from the density.
     *
     * <p>Source: ASTM C138/C138M, air content by the gravimetric method; recalled. Differences from the source: none.
     *
     * @param airFree T, the density of the mix without air, above 0
     * @param measured D, the density of the fresh concrete, above 0
     * @throws IllegalArgumentException if a density is not above 0
     */
    public static AirPair of(String name, double pressurePercent, Density airFree, Density measured) {
        double free = Require.positive("airFree", airFree.kilogramsPerCubicMetre());
        double dense = Require.positive("measured", measured.kilogramsPerCubicMetre());
        return new AirPair(name, pressurePercent, 100 * (free - dense) / free);
    }

    /** Returns air by the meter less air by density, in % air. */
    public double difference() {
        return pressurePercent - gravimetricPercent;
    }

    /** Returns whether the density cannot be right, so that the pair is not charted. */
    public boolean isDoubted() {
        return gravimetricPercent < LEAST_GRAVIMETRIC;
    }
}
