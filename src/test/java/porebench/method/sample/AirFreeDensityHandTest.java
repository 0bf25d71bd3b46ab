package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.Answer;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.quantity.Density;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

class AirFreeDensityHandTest {
    private static final Constituent CEMENT = of(Role.CEMENT, "315", MoistureState.SSD, "", "", "3.15", "0");
    private static final Constituent WATER = of(Role.WATER, "160", MoistureState.SSD, "", "", "", "0");
    private static final Constituent SAND = of(Role.FINE, "780", MoistureState.SSD, "", "", "2.6", "0");
    private static final Constituent STONE = of(Role.COARSE, "1080", MoistureState.SSD, "", "", "2.7", "50");

    private static Constituent of(
            Role role,
            String mass,
            MoistureState state,
            String absorption,
            String moisture,
            String density,
            String held) {
        return new Constituent(
                role.symbol(),
                role,
                Optional.empty(),
                Typed.of(mass, MassUnit.KILOGRAM),
                state,
                some(absorption),
                some(moisture),
                some(density),
                new BigDecimal(held));
    }

    private static Optional<BigDecimal> some(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text));
    }

    private static Batch batch(boolean wetSieved, Constituent... all) {
        // The stated volume has no part in it.
        return new Batch(
                List.of(all),
                new BatchVolume.Stated(Typed.of("1.00", VolumeUnit.CUBIC_METRE)),
                new BigDecimal("6"),
                wetSieved);
    }

    private static double known(Batch batch) {
        return AirFreeDensity.of(batch).value().orElseThrow().kilogramsPerCubicMetre();
    }

    private static List<String> codes(Batch batch) {
        Answer<Density> answer = AirFreeDensity.of(batch);
        assertThat(answer.value()).isEmpty();
        return answer.problems().stream().map(Problem::code).toList();
    }

    /** Masses 315 + 160 + 780 + 1080 = 2335 kg; volumes 0.1 + 0.16 + 0.3 + 0.4 = 0.96 m3. */
    @Test
    void massOverAbsoluteVolumes() {
        assertThat(known(batch(false, CEMENT, WATER, SAND, STONE))).isCloseTo(2335 / 0.96, within(1e-9));
    }

    /** Half the stone stays on the sieve: 2335 - 540 = 1795 kg in 0.96 - 0.2 = 0.76 m3. */
    @Test
    void ofWetSievedConcreteWhatPasses() {
        assertThat(known(batch(true, CEMENT, WATER, SAND, STONE))).isCloseTo(1795 / 0.76, within(1e-9));
    }

    /**
     * Oven-dry 1000 kg with 2 % absorption are 1020 kg at SSD; their relative density, 2.5, is oven-dry: 0.4 m3.
     * With cement, water and sand: 315 + 160 + 780 + 1020 = 2275 kg in 0.1 + 0.16 + 0.3 + 0.4 m3.
     */
    @Test
    void ovenDryStoneTakesUpItsPoreWater() {
        Constituent dry = of(Role.COARSE, "1000", MoistureState.OVEN_DRY, "2", "", "2.5", "0");
        assertThat(known(batch(false, CEMENT, WATER, SAND, dry))).isCloseTo(2275 / 0.96, within(1e-9));
    }

    /**
     * Stock 1050 kg at 5 % moisture are 1000 kg dry and, with 2 % absorption, 1020 kg at SSD and 30 kg of free water. At 2.55
     * they are 0.4 m3, the water 0.03: 315 + 160 + 780 + 1050 = 2305 kg in 0.99 m3. Sieved with half held: 2305 - 510 in 0.79.
     */
    @Test
    void stockedStoneBringsItsFreeWater() {
        Constituent stock = of(Role.COARSE, "1050", MoistureState.STOCK, "2", "5", "2.55", "50");
        assertThat(known(batch(false, CEMENT, WATER, SAND, stock))).isCloseTo(2305 / 0.99, within(1e-9));
        assertThat(known(batch(true, CEMENT, WATER, SAND, stock))).isCloseTo(1795 / 0.79, within(1e-9));
    }

    @Test
    void whatIsMissingIsNamed() {
        Constituent noDensity = of(Role.FINE, "780", MoistureState.SSD, "", "", "", "0");
        assertThat(codes(batch(false, CEMENT, WATER, noDensity, STONE)))
                .containsExactly("mix.relative-density-missing");
        Constituent noAbsorption = of(Role.FINE, "780", MoistureState.OVEN_DRY, "", "3", "2.6", "0");
        assertThat(codes(batch(false, CEMENT, WATER, noAbsorption, STONE)))
                .containsExactly("mix.absorption-missing-for-volume");
        assertThat(codes(batch(false, WATER, SAND, STONE))).containsExactly("hold.not-whole");
        assertThat(codes(batch(false, CEMENT, SAND, STONE))).containsExactly("hold.not-whole");
        Constituent none = of(Role.WATER, "0", MoistureState.SSD, "", "", "", "0");
        assertThat(codes(batch(false, CEMENT, none, SAND, STONE))).containsExactly("hold.not-whole");
    }
}
