package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import porebench.method.MoistureState;

/** The air-free volumes of a wet-sieved concrete by pencil; the formulas are those of ASTM C231 (recalled). */
class SievedVolumesHandTest {
    private static final MixLine CEMENT = MixLine.cement("315 kg").dense("3.15");
    private static final MixLine WATER = MixLine.water("170 kg");
    private static final MixLine SAND = MixLine.fine("750 kg").dense("2.5");
    private static final MixLine STONE = MixLine.coarse("1064 kg").dense("2.8").retained("25");

    private static Batch sieved(MixLine... lines) {
        return MixLine.stated("1 m3", "5", lines).withWetSieved(true);
    }

    /** 0.1 cement + 0.17 water + 0.3 sand + 0.38 stone = 0.95 m3; a quarter of the stone, 0.095, is held. */
    @Test
    void addsTheVolumesUp() {
        SievedVolumes volumes =
                SievedVolumes.of(sieved(CEMENT, WATER, SAND, STONE)).orElseThrow();
        assertThat(volumes.total().cubicMetres()).isCloseTo(0.95, offset(1e-12));
        assertThat(volumes.held().cubicMetres()).isCloseTo(0.095, offset(1e-12));
        assertThat(volumes.passing().cubicMetres()).isCloseTo(0.855, offset(1e-12));
        assertThat(volumes.mortar().cubicMetres()).isCloseTo(0.57, offset(1e-12));
    }

    /** Stone stocked with 2 % more water than it takes up, 1085.28 kg for 1064 SSD: 0.02128 m3 of free water, which is mortar. */
    @Test
    void countsTheFreeWaterOfStoneToTheMortar() {
        MixLine wet = MixLine.coarse("1085.28 kg")
                .dense("2.8")
                .retained("25")
                .absorbing("0")
                .moist("2")
                .in(MoistureState.STOCK);
        SievedVolumes volumes =
                SievedVolumes.of(sieved(CEMENT, WATER, SAND, wet)).orElseThrow();
        assertThat(volumes.held().cubicMetres()).isCloseTo(0.095, offset(1e-12));
        assertThat(volumes.mortar().cubicMetres()).isCloseTo(0.57 + 0.02128, offset(1e-12));
        assertThat(volumes.total().cubicMetres()).isCloseTo(0.95 + 0.02128, offset(1e-12));
    }

    @Test
    void saysNothingWhereTheDesignDoesNotGiveThem() {
        assertThat(SievedVolumes.of(MixLine.stated("1 m3", "5", CEMENT, WATER, SAND, STONE)))
                .as("not wet-sieved")
                .isEmpty();
        assertThat(SievedVolumes.of(sieved(WATER, SAND, STONE))).as("no cement").isEmpty();
        assertThat(SievedVolumes.of(sieved(CEMENT, SAND, STONE))).as("no water").isEmpty();
        assertThat(SievedVolumes.of(sieved(CEMENT, WATER, MixLine.fine("750 kg"), STONE)))
                .as("a relative density is not known")
                .isEmpty();
        assertThat(SievedVolumes.of(sieved(
                        CEMENT,
                        WATER,
                        SAND,
                        STONE,
                        MixLine.coarse("9 kg").dense("2.7").in(MoistureState.OVEN_DRY))))
                .as("oven-dry stone needs no absorption: its own volume counts")
                .isPresent();
    }
}
