package porebench.method;

import porebench.quantity.Pressure;
import porebench.quantity.Require;

/**
 * The barometric pressure to expect at an elevation, where nobody read a barometer.
 *
 * <p>p = 101 325 (1 - 0.0065 H / 288.15)^5.255 880 in Pa, with H = r h / (r + h) the geopotential altitude in m of the
 * elevation h in m, r = 6 356 766 m. The exponent is gn / (0.0065 R) with gn = 9.806 65 m/s2 and R = 287.052 87 J/(kg K).
 * Weather moves the true pressure by some 3 % about it.
 *
 * <p>Source: ISO 2533:1975, clause 2 and tables 1 and 4 (constants seen as quoted by a reference implementation of the
 * standard, formula recalled). Differences from the source: only its lowest layer, and of it only where people test
 * concrete.
 */
public final class StandardAtmosphere {
    /** The lowest elevation taken, in m: below every shore. */
    public static final double LOWEST_METRES = -500;

    /** The highest elevation taken, in m. */
    public static final double HIGHEST_METRES = 5000;

    private static final double SEA_LEVEL_PASCALS = 101_325;
    private static final double SEA_LEVEL_KELVIN = 288.15;
    private static final double KELVIN_PER_METRE = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double GAS_CONSTANT_OF_AIR = 287.05287;
    private static final double EARTH_RADIUS_METRES = 6_356_766;
    private static final double EXPONENT = GRAVITY / (KELVIN_PER_METRE * GAS_CONSTANT_OF_AIR);

    private StandardAtmosphere() {}

    /**
     * Returns the absolute pressure of the air at an elevation.
     *
     * @param elevationMetres height above sea level in m, from -500 to 5000
     * @throws IllegalArgumentException if the elevation is outside that range
     */
    public static Pressure pressureAt(double elevationMetres) {
        Require.within("elevationMetres", elevationMetres, LOWEST_METRES, HIGHEST_METRES);
        return atGeopotential(EARTH_RADIUS_METRES * elevationMetres / (EARTH_RADIUS_METRES + elevationMetres));
    }

    /** Returns the absolute pressure at a geopotential altitude in m, the height by which the standard's tables go. */
    static Pressure atGeopotential(double metres) {
        return new Pressure(SEA_LEVEL_PASCALS * Math.pow(1 - KELVIN_PER_METRE * metres / SEA_LEVEL_KELVIN, EXPONENT));
    }

    /** Returns whether an elevation in m can be taken. */
    public static boolean covers(double elevationMetres) {
        return elevationMetres >= LOWEST_METRES && elevationMetres <= HIGHEST_METRES;
    }
}
