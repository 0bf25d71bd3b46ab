package porebench.method.meter;

import java.math.BigDecimal;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;

/**
 * Everything read when a Type A meter is calibrated, as typed.
 *
 * @param vesselWater w, mass of water that fills the calibration vessel
 * @param bowlWater W, mass of water that fills the bowl at the same temperature
 * @param expansionPercent D, by how much the meter itself gives under pressure, in % air
 * @param workingPressure P, the pressure above that of the air under which the meter reads K
 * @param elevationMetres height of the place above sea level, in m
 */
public record ColumnCheck(
        Typed<Mass> vesselWater,
        Typed<Mass> bowlWater,
        BigDecimal expansionPercent,
        Typed<Pressure> workingPressure,
        BigDecimal elevationMetres) {}
