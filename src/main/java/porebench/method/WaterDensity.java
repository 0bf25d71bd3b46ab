package porebench.method;

import porebench.quantity.Density;
import porebench.quantity.Require;
import porebench.quantity.Temperature;

/**
 * The density of air-free water at normal pressure.
 *
 * <p>rho = a5 (1 - (t + a1)^2 (t + a2) / (a3 (t + a4))), t in C from 0 to 40, rho in kg/m3.
 *
 * <p>Source: M. Tanaka et al., Metrologia 38 (2001) 301-309, equation 1 (recalled). Differences from the source: none.
 */
public final class WaterDensity {
    /** The lowest temperature of the equation, in C. */
    public static final double LOWEST_CELSIUS = 0;

    /** The highest temperature of the equation, in C. */
    public static final double HIGHEST_CELSIUS = 40;

    private WaterDensity() {}

    /**
     * Returns the density of water.
     *
     * @param temperature the water's temperature, from 0 to 40 C
     * @return the density in kg/m3
     * @throws IllegalArgumentException if the temperature is outside the equation's range
     */
    public static Density at(Temperature temperature) {
        double t = Require.within("temperature", temperature.celsius(), LOWEST_CELSIUS, HIGHEST_CELSIUS);
        double fall = square(t - 3.983035) * (t + 301.797) / (522528.9 * (t + 69.34881));
        return new Density(999.974950 * (1 - fall));
    }

    /** Returns whether a temperature lies in the equation's range of 0 to 40 C. */
    public static boolean covers(Temperature temperature) {
        return temperature.celsius() >= LOWEST_CELSIUS && temperature.celsius() <= HIGHEST_CELSIUS;
    }

    private static double square(double x) {
        return x * x;
    }
}
