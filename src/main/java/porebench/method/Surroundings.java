package porebench.method;

import porebench.quantity.Pressure;
import porebench.quantity.Require;
import porebench.quantity.Temperature;

/**
 * The air and water about a meter while it is calibrated or used.
 *
 * @param barometric absolute pressure of the air, greater than 0
 * @param water temperature of the water and of the air in it, from 0 to 40 C
 */
public record Surroundings(Pressure barometric, Temperature water) {
    private static final double USUAL_CELSIUS = 20;

    public Surroundings {
        Require.positive("barometric", barometric.pascals());
        Require.within("water", water.celsius(), WaterDensity.LOWEST_CELSIUS, WaterDensity.HIGHEST_CELSIUS);
    }

    /**
     * Returns the surroundings at an elevation, with the pressure of the {@link StandardAtmosphere}.
     *
     * @param elevationMetres height above sea level in m, from -500 to 5000
     * @param water temperature of the water, from 0 to 40 C
     */
    public static Surroundings at(double elevationMetres, Temperature water) {
        return new Surroundings(StandardAtmosphere.pressureAt(elevationMetres), water);
    }

    /** Returns the surroundings at an elevation in m with water of 20 C. */
    public static Surroundings at(double elevationMetres) {
        return at(elevationMetres, new Temperature(USUAL_CELSIUS));
    }

    /** Returns the pressure of a water column in these surroundings, in Pa; its height is in m. */
    double columnPascals(double metres) {
        return WaterDensity.at(water).kilogramsPerCubicMetre() * 9.80665 * metres;
    }
}
