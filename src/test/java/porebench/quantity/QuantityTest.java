package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

class QuantityTest {
    @Test
    void addsSubtractsAndMultipliesMasses() {
        Mass mass = Mass.of(500, MassUnit.GRAM);
        assertThat(mass.plus(new Mass(0.25)).kilograms()).isEqualTo(0.75);
        assertThat(mass.minus(new Mass(0.75)).kilograms()).isEqualTo(-0.25);
        assertThat(mass.times(3).kilograms()).isEqualTo(1.5);
        assertThat(mass.in(MassUnit.GRAM)).isEqualTo(500);
    }

    @Test
    void addsSubtractsAndMultipliesVolumes() {
        Volume volume = new Volume(0.5);
        assertThat(volume.plus(new Volume(0.25)).cubicMetres()).isEqualTo(0.75);
        assertThat(volume.minus(new Volume(0.75)).cubicMetres()).isEqualTo(-0.25);
        assertThat(volume.times(3).cubicMetres()).isEqualTo(1.5);
    }

    /** 7.00 L of water at 998 kg/m3 weigh 6.986 kg. */
    @Test
    void turnsVolumeToMassAndBackByTheDensity() {
        Density water = DensityUnit.KILOGRAM_PER_CUBIC_METRE.of(998);
        Mass mass = Volume.of(7, VolumeUnit.LITRE).at(water);
        assertThat(mass.kilograms()).isCloseTo(6.986, offset(1e-12));
        assertThat(mass.at(water).in(VolumeUnit.LITRE)).isCloseTo(7, offset(1e-12));
    }

    @Test
    void refusesTheVolumeOfAMassWithoutDensity() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Mass(1).at(new Density(0)))
                .withMessage("density must be greater than 0, but is 0.0");
    }

    @Test
    void namesTheComponentThatIsNotFinite() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Mass(Double.NaN))
                .withMessage("kilograms must be a finite number, but is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Volume(Double.POSITIVE_INFINITY))
                .withMessage("cubicMetres must be a finite number, but is Infinity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Density(Double.NaN))
                .withMessage("kilogramsPerCubicMetre must be a finite number, but is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Temperature(Double.NaN))
                .withMessage("celsius must be a finite number, but is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pressure(Double.NEGATIVE_INFINITY))
                .withMessage("pascals must be a finite number, but is -Infinity");
        assertThatIllegalArgumentException().isThrownBy(() -> new Mass(Double.MAX_VALUE).times(2));
    }

    @Test
    void ordersQuantitiesByTheirValue() {
        assertThat(new Mass(1)).isLessThan(new Mass(2));
        assertThat(new Volume(1)).isLessThan(new Volume(2));
        assertThat(new Density(1)).isLessThan(new Density(2));
        assertThat(new Temperature(-1)).isLessThan(new Temperature(2));
        assertThat(new Pressure(1)).isLessThan(new Pressure(2));
        assertThat(DensityUnit.KILOGRAM_PER_CUBIC_METRE.in(DensityUnit.GRAM_PER_CUBIC_CENTIMETRE.of(1)))
                .isEqualTo(1000);
        assertThat(Pressure.of(1, PressureUnit.KILOPASCAL).in(PressureUnit.PASCAL))
                .isEqualTo(1000);
    }
}
