package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.method.sample.Verdict.BOWL;
import static porebench.method.sample.Verdict.CEMENT;
import static porebench.method.sample.Verdict.SAND;
import static porebench.method.sample.Verdict.STONE;
import static porebench.method.sample.Verdict.WATER;
import static porebench.method.sample.Verdict.accepts;
import static porebench.method.sample.Verdict.computed;
import static porebench.method.sample.Verdict.doubts;
import static porebench.method.sample.Verdict.problems;
import static porebench.method.sample.Verdict.refuses;
import static porebench.method.sample.Verdict.stated;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.Said;

/** What is impossible or doubtful about a batch is said under its field and names its constituent. */
class BatchCheckTest {
    @Test
    void hasNothingToSayAboutASoundMix() {
        accepts(stated(CEMENT, WATER, SAND, STONE));
        accepts(computed(CEMENT, WATER, SAND, STONE));
        accepts(MixLine.measured("2299 kg/m3", "5", CEMENT, WATER, SAND, STONE));
    }

    @Test
    void saysEverythingAtOnce() {
        Batch batch = MixLine.stated(
                "-1 m3",
                "31",
                MixLine.cement("-1 kg").dense("9"),
                MixLine.fine("0 kg").absorbing("41").moist("61"),
                STONE.in(MoistureState.STOCK).retained("101"));
        assertThat(Said.codes(problems(batch)))
                .containsExactly(
                        "mix.target-air-out-of-range",
                        "mix.volume-not-positive",
                        "mix.mass-negative",
                        "mix.relative-density-out-of-range",
                        "mix.mass-zero",
                        "mix.relative-density-missing-unchecked",
                        "mix.moisture-out-of-range",
                        "mix.absorption-out-of-range",
                        "mix.retained-out-of-range",
                        "mix.stock-moisture-missing");
    }

    @ParameterizedTest
    @CsvSource({"0, true", "30, true", "-0.1, false", "30.1, false"})
    void takesATargetAirFromZeroToThirty(String air, boolean taken) {
        Batch batch = MixLine.fromConstituents(air, CEMENT, WATER, SAND, STONE);
        if (taken) {
            accepts(batch);
        } else {
            refuses(
                    batch,
                    "targetAir",
                    "mix.target-air-out-of-range",
                    "Target air " + air + " % must be from 0 to 30 %");
        }
    }

    @Test
    void refusesAMixWithoutAggregate() {
        refuses(stated(CEMENT, WATER), "constituents", "mix.no-aggregate", "Add a fine or coarse aggregate");
        refuses(
                computed(MixLine.fine("0 kg").dense("2.6")),
                "constituents",
                "mix.no-aggregate",
                "Add a fine or coarse aggregate");
        accepts(stated(SAND.named("only sand"), CEMENT, MixLine.water("550 kg")));
    }

    @Test
    void namesTheConstituentWhoseMassIsNegativeAndDoubtsAMassOfZero() {
        refuses(
                stated(
                        CEMENT,
                        MixLine.fine("-750 lb").named("river sand").dense("2.5").absorbing("1"),
                        STONE),
                "constituents.1.mass",
                "mix.mass-negative",
                "river sand: mass -750 lb must not be negative. Correct the mass.");
        doubts(
                stated(
                        CEMENT,
                        WATER,
                        SAND,
                        STONE,
                        MixLine.fine("0 kg").named("dust").dense("2.5").absorbing("1")),
                "constituents.4.mass",
                "mix.mass-zero",
                "dust: its mass is 0.");
    }

    @Test
    void needsARelativeDensityOnlyWhereTheVolumeIsComputedFromIt() {
        MixLine ash = MixLine.of(Role.SCM, "fly ash", "60 kg");
        refuses(
                computed(CEMENT, ash, WATER, SAND, STONE),
                "constituents.1.relativeDensity",
                "mix.relative-density-missing",
                "fly ash: its relative density is missing");
        refuses(
                stated(CEMENT, ash, WATER, SAND, STONE.retained("10")).withWetSieved(true),
                "constituents.1.relativeDensity",
                "mix.relative-density-missing",
                "fly ash");
        doubts(
                stated(CEMENT, ash, WATER, SAND, STONE),
                "constituents.1.relativeDensity",
                "mix.relative-density-missing-unchecked",
                "fly ash");
        doubts(
                MixLine.measured("2300 kg/m3", "5", CEMENT, ash, WATER, SAND, STONE),
                "constituents.1.relativeDensity",
                "mix.relative-density-missing-unchecked",
                "fly ash");
    }

    @ParameterizedTest
    @CsvSource({"0.49, false", "0.5, true", "8, true", "8.01, false"})
    void takesARelativeDensityThatAConstituentCanHave(String density, boolean taken) {
        Batch batch = computed(
                CEMENT,
                WATER,
                SAND,
                STONE,
                MixLine.of(Role.ADMIXTURE, "agent", "1 kg").dense(density));
        if (taken) {
            accepts(batch);
        } else {
            refuses(
                    batch,
                    "constituents.4.relativeDensity",
                    "mix.relative-density-out-of-range",
                    "agent: relative density " + density + " must be from 0.5 to 8.");
        }
    }

    /** EN 206 (recalled): normal-weight aggregate has a particle density above 2000 kg/m3. */
    @Test
    void pointsToTheVolumetricMethodForLightAndForPorousAggregate() {
        doubts(
                computed(CEMENT, WATER, SAND, STONE.named("expanded clay").dense("1.99")),
                "constituents.3.relativeDensity",
                "mix.light-aggregate",
                "expanded clay: relative density 1.99 is below 2.0.");
        accepts(computed(CEMENT, WATER, SAND, STONE.dense("2.0")));
        accepts(computed(CEMENT.dense("1.9"), WATER, SAND, STONE));
        doubts(
                computed(CEMENT, WATER, SAND, STONE.absorbing("5.1")),
                "constituents.3.absorption",
                "mix.porous-aggregate",
                "stone: absorption 5.1 % is above 5 %.");
        accepts(computed(CEMENT, WATER, SAND, STONE.absorbing("5")));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, false", "0, true", "40, true", "40.1, false"})
    void takesAnAbsorptionThatAggregateCanHave(String absorption, boolean taken) {
        Batch batch = computed(CEMENT, WATER, SAND, STONE.dense("2.0").absorbing(absorption));
        assertThat(Said.codes(problems(batch)).contains("mix.absorption-out-of-range"))
                .isEqualTo(!taken);
        if (!taken) {
            refuses(
                    batch,
                    "constituents.3.absorption",
                    "mix.absorption-out-of-range",
                    "stone: absorption " + absorption + " % must be from 0 to 40 %. Correct the absorption.");
        }
    }

    /**
     * The pores cannot be larger than the particle. At 40 % absorption a particle of oven-dry relative density 2.5 would hold
     * 0.4 x 2.5 = 1.00 of its volume in water; of SSD 3.5 it is 3.5 / 1.4 = 2.5 oven-dry, the same.
     */
    @ParameterizedTest
    @CsvSource({"OVEN_DRY, 2.49, true", "OVEN_DRY, 2.5, false", "SSD, 3.49, true", "SSD, 3.5, false"})
    void refusesPoresLargerThanTheParticle(MoistureState state, String density, boolean possible) {
        Batch batch =
                computed(CEMENT, WATER, SAND, STONE.in(state).dense(density).absorbing("40"));
        assertThat(Said.codes(problems(batch)).contains("mix.pores-exceed-particle"))
                .isEqualTo(!possible);
        if (!possible) {
            refuses(
                    batch,
                    "constituents.3.absorption",
                    "mix.pores-exceed-particle",
                    "stone: with absorption 40 % and relative density " + density);
        }
    }

    @ParameterizedTest
    @CsvSource({"-0.1, false", "0, true", "60, true", "60.1, false"})
    void takesAMoistureThatAggregateCanHave(String moisture, boolean taken) {
        Batch batch = computed(CEMENT, WATER, SAND.moist(moisture), STONE);
        assertThat(Said.codes(problems(batch)).contains("mix.moisture-out-of-range"))
                .isEqualTo(!taken);
        if (!taken) {
            refuses(
                    batch,
                    "constituents.2.moisture",
                    "mix.moisture-out-of-range",
                    "sand: moisture " + moisture + " % must be from 0 to 60 %");
        }
    }

    @Test
    void needsTheMoistureOfAStockMassAndThenSpeaksOfNothingElse() {
        refuses(
                computed(CEMENT, WATER, SAND.in(MoistureState.STOCK), STONE),
                "constituents.2.moisture",
                "mix.stock-moisture-missing",
                "sand: a mass given as stocked");
        MixLine bare = MixLine.fine("750 kg").dense("2.5").in(MoistureState.STOCK);
        assertThat(Said.codes(problems(stated(CEMENT, WATER, bare, STONE))))
                .containsExactly("mix.stock-moisture-missing", "mix.absorption-missing-no-free-water");
    }

    /**
     * Where the absorption is needed: to bring an SSD mass to another moisture or an oven-dry one to SSD (mass); to tell free
     * water from that in the pores where the volume is computed from a stock mass, and to know what oven-dry aggregate weighs in
     * the concrete where the volume comes from its density (volume). Else only the oven-dry mass or the free water is unknown.
     */
    @ParameterizedTest
    @CsvSource({
        "SSD,      5, stated,   mix.absorption-missing, true",
        "SSD,       , stated,   mix.absorption-missing-no-oven-dry, false",
        "SSD,       , computed, mix.absorption-missing-no-oven-dry, false",
        "SSD,       , measured, mix.absorption-missing-no-oven-dry, false",
        "OVEN_DRY,  , stated,   mix.absorption-missing, true",
        "OVEN_DRY, 5, stated,   mix.absorption-missing-no-free-water, false",
        "OVEN_DRY, 5, computed, mix.absorption-missing-no-free-water, false",
        "OVEN_DRY, 5, measured, mix.absorption-missing-for-volume, true",
        "STOCK,    5, stated,   mix.absorption-missing-no-free-water, false",
        "STOCK,    5, measured, mix.absorption-missing-no-free-water, false",
        "STOCK,    5, computed, mix.absorption-missing-for-volume, true"
    })
    void needsTheAbsorptionOnlyWhereItIsUsed(
            MoistureState state, String moisture, String volume, String code, boolean refused) {
        MixLine bare = MixLine.fine("750 kg").dense("2.5").in(state);
        MixLine sand = moisture == null ? bare : bare.moist(moisture);
        Batch batch = switch (volume) {
            case "stated" -> stated(CEMENT, WATER, sand, STONE);
            case "computed" -> computed(CEMENT, WATER, sand, STONE);
            default -> MixLine.measured("2300 kg/m3", "5", CEMENT, WATER, sand, STONE);
        };
        if (refused) {
            refuses(batch, "constituents.2.absorption", code, "sand: its absorption is missing");
        } else {
            doubts(batch, "constituents.2.absorption", code, "sand: its absorption is missing");
            assertThat(CorrectionSample.of(batch, BOWL)
                            .value()
                            .orElseThrow()
                            .inundation()
                            .isPresent())
                    .isEqualTo(state == MoistureState.SSD);
        }
    }

    @Test
    void asksForNoAbsorptionOfWhatIsNoAggregateAndDoesNotUseItsState() {
        doubts(
                computed(CEMENT.in(MoistureState.OVEN_DRY), WATER, SAND, STONE),
                "constituents.0.massState",
                "mix.state-not-aggregate",
                "cement is not aggregate");
        accepts(computed(CEMENT.in(MoistureState.STOCK), WATER, SAND, STONE));
    }
}
