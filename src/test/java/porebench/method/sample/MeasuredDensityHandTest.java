package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import porebench.method.Role;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Batches whose volume comes from the measured density of the fresh concrete, by pencil. */
class MeasuredDensityHandTest {
    /** 18.6 lb empty, 54.1 lb full: 35.5 lb of concrete at 142.0 lb/ft3 are the 35.5 / 142.0 = 0.250 ft3 of the measure. */
    @Test
    void takesTheBatchVolumeFromADensityInPounds() {
        CorrectionSample sample = CorrectionSample.of(
                        MixLine.measured("142.0 lb/ft3", "5", MixLine.fine("10 lb"), MixLine.coarse("25.5 lb")),
                        Volume.of(0.250, VolumeUnit.CUBIC_FOOT))
                .value()
                .orElseThrow();
        assertThat(sample.batchVolume().in(VolumeUnit.CUBIC_FOOT)).isCloseTo(0.250, offset(1e-9));
    }

    /**
     * Both binders count in the batch, only sand and stone go into the bowl: 170 + 270 + 70 + 750 + 1140 = 2400 kg, at 2400
     * kg/m3 one cubic metre; in 7 L sand 750 x 0.007 = 5.25 kg, stone 1140 x 0.007 = 7.98 kg.
     */
    @Test
    void takesAMixWithTwoBinders() {
        CorrectionSample sample = CorrectionSample.of(
                        MixLine.measured(
                                "2400 kg/m3",
                                "4.5",
                                MixLine.water("170 kg"),
                                MixLine.cement("270 kg"),
                                MixLine.of(Role.SCM, "fly ash", "70 kg"),
                                MixLine.fine("750 kg"),
                                MixLine.coarse("1140 kg")),
                        Volume.of(7, VolumeUnit.LITRE))
                .value()
                .orElseThrow();
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(1, offset(1e-12));
        assertThat(sample.components()).hasSize(2);
        assertThat(sample.fine().kilograms()).isCloseTo(5.25, offset(1e-9));
        assertThat(sample.coarse().kilograms()).isCloseTo(7.98, offset(1e-9));
    }
}
