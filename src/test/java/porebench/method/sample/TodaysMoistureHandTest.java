package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/**
 * Weighs a designed sample by today's moisture, worked with a pencil.
 *
 * <p>The design: sand 4.000 kg oven-dry, weighed 4.040 kg at SSD (absorption 1 %); stone 7.000 kg oven-dry, weighed
 * 7.070 kg at SSD (absorption 1 %); 2.500 L of water to inundate.
 */
class TodaysMoistureHandTest {
    private static final CorrectionSample DESIGNED = designed(2.5e-3, OptionalDouble.of(4.0));

    private static CorrectionSample designed(double inundationCubicMetres, OptionalDouble drySand) {
        return new CorrectionSample(
                List.of(
                        new CorrectionSample.Component("Sand", "S-1", Role.FINE, new Mass(4.04), drySand),
                        new CorrectionSample.Component(
                                "Stone", "S-2", Role.COARSE, new Mass(7.07), OptionalDouble.of(7.0))),
                new Volume(1),
                new Volume(0.007),
                new Volume(0.007 / 3),
                Optional.of(new Volume(inundationCubicMetres)),
                new Volume(0.00035));
    }

    private static Optional<BigDecimal> percent(String digits) {
        return Optional.of(new BigDecimal(digits));
    }

    @Test
    void weighsTheSameDryMatterWithTodaysWater() {
        // Sand at 5 %: 4.000 x 1.05 = 4.200 kg, 0.160 kg heavier than designed, so 2.500 - 0.160 = 2.340 L are poured.
        CorrectionSample today = TodaysMoisture.of(DESIGNED, List.of(percent("5"), Optional.empty()))
                .value()
                .orElseThrow();
        assertThat(today.fine().kilograms()).isCloseTo(4.200, within(1e-12));
        assertThat(today.coarse().kilograms()).isEqualTo(7.07);
        assertThat(today.components().get(0).ovenDryKilograms()).hasValue(4.0);
        assertThat(today.inundation().orElseThrow().cubicMetres()).isCloseTo(2.340e-3, within(1e-12));
        assertThat(today.batchVolume()).isEqualTo(DESIGNED.batchVolume());
        assertThat(today.withdrawal()).isEqualTo(DESIGNED.withdrawal());
    }

    @Test
    void ovenDryMaterialLeavesMoreWaterToPour() {
        // Stone at 0 %: 7.000 kg, 0.070 kg lighter, so 2.570 L are poured.
        CorrectionSample today = TodaysMoisture.of(DESIGNED, List.of(Optional.empty(), percent("0")))
                .value()
                .orElseThrow();
        assertThat(today.coarse().kilograms()).isEqualTo(7.0);
        assertThat(today.inundation().orElseThrow().cubicMetres()).isCloseTo(2.570e-3, within(1e-12));
    }

    @Test
    void noMoistureLeavesTheSampleAsDesigned() {
        assertThat(TodaysMoisture.of(DESIGNED, List.of(Optional.empty(), Optional.empty()))
                        .value())
                .contains(DESIGNED);
    }

    @Test
    void waterNeverFallsBelowNothing() {
        // Sand at 60 %: 6.400 kg, 2.360 kg heavier, but only 2.000 L were to be poured.
        CorrectionSample wet = TodaysMoisture.of(
                        designed(2.0e-3, OptionalDouble.of(4.0)), List.of(percent("60"), Optional.empty()))
                .value()
                .orElseThrow();
        assertThat(wet.inundation()).contains(new Volume(0));
    }

    @Test
    void waterIsNotKnownWhenTheDesignWasTooWetAlready() {
        CorrectionSample today = TodaysMoisture.of(
                        designed(0, OptionalDouble.of(4.0)), List.of(percent("0"), Optional.empty()))
                .value()
                .orElseThrow();
        assertThat(today.inundation()).isEmpty();
    }

    @Test
    void refusesImpossibleMoistureAndUnknownDryMass() {
        for (String impossible : List.of("-0.1", "60.1")) {
            Answer<CorrectionSample> answer =
                    TodaysMoisture.of(DESIGNED, List.of(Optional.empty(), percent(impossible)));
            assertThat(answer.value()).isEmpty();
            assertThat(answer.problems())
                    .extracting(Problem::field, Problem::code)
                    .containsExactly(tuple("moisture.1", "mix.moisture-out-of-range"));
        }
        Answer<CorrectionSample> unknown =
                TodaysMoisture.of(designed(2.5e-3, OptionalDouble.empty()), List.of(percent("5"), Optional.empty()));
        assertThat(unknown.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("moisture.0", "mix.absorption-missing"));
    }

    @Test
    void asksForOneMoistureAComponent() {
        assertThatThrownBy(() -> TodaysMoisture.of(DESIGNED, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("moisturePercent must have an entry a component");
    }
}
