package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Temperature;

/** Air density and buoyancy, by pencil. */
class AirDensityHandTest {
    private static final Pressure SEA = Pressure.of(101.325, PressureUnit.KILOPASCAL);

    /**
     * OIML R 111-1:2004, E.3-1 (recalled), at 20 C, 1013.25 hPa, 50 %.
     *
     * <pre>
     * 0.34848 x 1013.25 = 353.0974
     * 0.009 x 50 x exp(1.22) = 0.45 x 3.387188 = 1.524235
     * (353.0974 - 1.5242) / 293.15 = 1.199294
     * </pre>
     */
    @Test
    void followsTheEquationByPencil() {
        assertThat(AirDensity.at(new Temperature(20), SEA).kilogramsPerCubicMetre())
                .isCloseTo(1.199294, offset(2e-6));
    }

    /**
     * 6.982 kg of water shown at 20 C in that air.
     *
     * <pre>
     * 1 - 1.199294 / 8000 = 0.999850088
     * 1 - 1.199294 / 998.20675 = 1 - 0.001201448 = 0.998798552
     * 6.982 x 0.999850088 / 0.998798552 = 6.982 x 1.001052801 = 6.989351
     * </pre>
     */
    @Test
    void givesBackWhatTheAirCarriedOfTheWater() {
        Mass water = AirDensity.trueMassOfWater(new Mass(6.982), new Density(1.199294), new Density(998.20675));
        assertThat(water.kilograms()).isCloseTo(6.989351, offset(1e-6));
    }

    @Test
    void leavesAMassAsItIsInNoAir() {
        assertThat(AirDensity.trueMassOfWater(new Mass(7), new Density(0), new Density(998)))
                .isEqualTo(new Mass(7));
    }

    @Test
    void refusesAirThatNobodyWeighsIn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.at(new Temperature(41), SEA))
                .withMessage("air must be from 0.0 to 40.0, but is 41.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AirDensity.at(new Temperature(20), new Pressure(0)))
                .withMessage("barometric must be greater than 0, but is 0.0");
    }
}
