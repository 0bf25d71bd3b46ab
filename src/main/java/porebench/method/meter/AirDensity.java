package porebench.method.meter;

import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Require;
import porebench.quantity.Temperature;

/**
 * The density of the air about a balance, and what its buoyancy hides of the mass of water.
 *
 * <p>rho = (0.348 48 p - 0.009 h exp(0.061 t)) / (273.15 + t) in kg/m3, with p in hPa, relative humidity h in % and t in C;
 * h is taken as 50 %, which at 20 C is within 0.0006 % of the mass of water.
 *
 * <p>Source: OIML R 111-1:2004, equation E.3-1 (recalled). Differences from the source: the humidity is not measured, and
 * the equation is used from 0 to 40 C where the source vouches for 10 to 30 C.
 */
public final class AirDensity {
    /** Density in kg/m3 of the weights by which balances are adjusted. Source: OIML D 28 (recalled). */
    private static final double WEIGHTS = 8000;

    private static final double HUMIDITY_PERCENT = 50;

    private AirDensity() {}

    /**
     * Returns the density of the air.
     *
     * @param air its temperature, from 0 to 40 C
     * @param barometric its absolute pressure, greater than 0
     * @throws IllegalArgumentException if either is outside its range
     */
    public static Density at(Temperature air, Pressure barometric) {
        double t = Require.within("air", air.celsius(), 0, 40);
        double p = Require.positive("barometric", barometric.in(PressureUnit.MILLIBAR));
        return new Density((0.34848 * p - 0.009 * HUMIDITY_PERCENT * Math.exp(0.061 * t)) / (273.15 + t));
    }

    /**
     * Returns the true mass of water that a balance shows too light: m (1 - rho air / 8000) / (1 - rho air / rho water).
     *
     * @param apparent what the balance shows of the water
     * @param air the density of the air
     * @param water the density of the water
     */
    public static Mass trueMassOfWater(Mass apparent, Density air, Density water) {
        double rhoAir = air.kilogramsPerCubicMetre();
        return apparent.times((1 - rhoAir / WEIGHTS) / (1 - rhoAir / water.kilogramsPerCubicMetre()));
    }
}
