package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.method.sample.Verdict.BOWL;
import static porebench.method.sample.Verdict.CEMENT;
import static porebench.method.sample.Verdict.SAND;
import static porebench.method.sample.Verdict.STONE;
import static porebench.method.sample.Verdict.WATER;
import static porebench.method.sample.Verdict.accepts;
import static porebench.method.sample.Verdict.doubts;
import static porebench.method.sample.Verdict.problems;
import static porebench.method.sample.Verdict.refuses;
import static porebench.method.sample.Verdict.stated;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.method.Role;
import porebench.method.Said;

/** Volumes that do not fit, densities that cannot be, and what is held on the sieve. */
class BatchVolumeCheckTest {
    @Test
    void refusesAVolumeThatIsNotGreaterThanZero() {
        refuses(
                MixLine.stated("0 yd3", "5", SAND, STONE),
                "batchVolume",
                "mix.volume-not-positive",
                "Batch volume 0 yd3 must be greater than 0. Leave it empty");
    }

    @ParameterizedTest
    @CsvSource({"999.9, false", "1000, true", "4500, true", "4500.1, false"})
    void takesADensityThatConcreteCanHave(String density, boolean taken) {
        Batch batch = MixLine.measured(density + " kg/m3", "5", MixLine.fine("750 kg"), MixLine.coarse("1064 kg"));
        assertThat(Said.codes(problems(batch)).contains("mix.density-out-of-range"))
                .isEqualTo(!taken);
        if (!taken) {
            refuses(batch, "density", "mix.density-out-of-range", density + " kg/m3 must be from 1000 to 4500 kg/m3");
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, false", "0, true", "100, true", "100.1, false"})
    void takesAShareHeldThatCanBe(String retained, boolean taken) {
        Batch batch = stated(CEMENT, WATER, SAND, STONE.retained(retained)).withWetSieved(true);
        assertThat(Said.codes(problems(batch)).contains("mix.retained-out-of-range"))
                .isEqualTo(!taken);
        if (!taken) {
            refuses(
                    batch,
                    "constituents.3.retained",
                    "mix.retained-out-of-range",
                    "stone: " + retained + " % held on 37.5 mm must be from 0 to 100 %. Correct the percentage.");
        }
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "COARSE", mode = EnumSource.Mode.EXCLUDE)
    void usesAShareHeldOfCoarseAggregateOnly(Role role) {
        MixLine line = MixLine.of(role, "it", "10 kg").dense("2.5").absorbing("1");
        Batch with = stated(CEMENT, WATER, SAND, STONE.retained("50"), line.retained("50"))
                .withWetSieved(true);
        Batch without = stated(CEMENT, WATER, SAND, STONE.retained("50"), line).withWetSieved(true);
        doubts(with, "constituents.4.retained", "mix.retained-not-coarse", "it is not coarse aggregate: its 50 %");
        assertThat(CorrectionSample.of(with, BOWL).value())
                .isEqualTo(CorrectionSample.of(without, BOWL).value());
    }

    @Test
    void doubtsWetSievingWithNothingToSieveAndStoneThatNobodySieves() {
        doubts(
                stated(CEMENT, WATER, SAND, STONE).withWetSieved(true),
                "wetSieved",
                "mix.nothing-to-sieve",
                "no constituent has a share held");
        doubts(
                stated(CEMENT, WATER, SAND, STONE.retained("1")),
                "wetSieved",
                "mix.consider-wet-sieving",
                "held on 37.5 mm");
        accepts(stated(CEMENT, WATER, SAND, STONE.retained("1")).withWetSieved(true));
    }

    @Test
    void refusesASieveThatNothingPasses() {
        refuses(
                stated(CEMENT, WATER, STONE.retained("100")).withWetSieved(true),
                "constituents",
                "mix.no-aggregate-passes",
                "none is left in the sieved concrete");
        assertThat(Said.codes(problems(stated(CEMENT, WATER, STONE.retained("100")))))
                .doesNotContain("mix.no-aggregate-passes");
    }

    /**
     * The constituents take 0.95 m3 without air: less cannot be true, and more or less by over 2 % with the air is a doubt. At 5 %
     * air they make 1 m3.
     */
    @ParameterizedTest
    @CsvSource({
        "0.9499, mix.volumes-do-not-fit",
        "0.95, mix.volume-far-from-constituents",
        "0.979, mix.volume-far-from-constituents",
        "0.98,",
        "1,",
        "1.02,",
        "1.021, mix.volume-far-from-constituents"
    })
    void comparesAStatedVolumeWithTheConstituents(String volume, String code) {
        Batch batch = MixLine.stated(volume + " m3", "5", CEMENT, WATER, SAND, STONE);
        if (code == null) {
            accepts(batch);
        } else if (code.equals("mix.volumes-do-not-fit")) {
            refuses(
                    batch,
                    "batchVolume",
                    code,
                    "take 0.95 m3 but the batch is stated as " + volume + " m3. The largest is stone. Check");
        } else {
            doubts(batch, "batchVolume", code, "stated as " + volume + " m3 but its constituents and air make 1 m3");
        }
    }

    /** The same mix by half: 0.5 m3, of which 2 % is 0.01 m3 and not 0.02. */
    @Test
    void comparesAShareOfTheVolumeWhateverTheSizeOfTheBatch() {
        MixLine[] half = {
            MixLine.cement("157.5 kg").dense("3.15"),
            MixLine.water("85 kg"),
            MixLine.fine("375 kg").dense("2.5").absorbing("1"),
            MixLine.coarse("532 kg").dense("2.8").absorbing("1")
        };
        accepts(MixLine.stated("0.509 m3", "5", half));
        doubts(
                MixLine.stated("0.511 m3", "5", half),
                "batchVolume",
                "mix.volume-far-from-constituents",
                "The batch is stated as 0.511 m3 but its constituents and air make 0.5 m3: 2.2 % apart. Check "
                        + "the masses and the batch volume.");
    }

    /** 2299 kg in 0.95 m3 without air are 2420 kg/m3: concrete cannot be denser, and at 5 % air it has 2299. */
    @Test
    void comparesAMeasuredDensityWithTheConstituents() {
        accepts(MixLine.measured("2299 kg/m3", "5", CEMENT, WATER, SAND, STONE));
        doubts(
                MixLine.measured("2420 kg/m3", "5", CEMENT, WATER, SAND, STONE),
                "batchVolume",
                "mix.volume-far-from-constituents",
                "stated as 0.95 m3");
        refuses(
                MixLine.measured("2421 kg/m3", "5", CEMENT, WATER, SAND, STONE),
                "density",
                "mix.density-above-air-free",
                "of 2421 kg/m3 is above the 2420 kg/m3 of the constituents without air. The largest is stone. Check");
    }

    /** A quarter of the stone, 0.095 m3, is sieved out; 0.855 / 0.95 = 0.9 passes; 0.995 m3 in all. */
    @ParameterizedTest
    @CsvSource({"0.995, true", "1.014, true", "1.016, false", "0.976, true", "0.974, false"})
    void comparesAStatedVolumeOfAWetSievedMixWithAirInWhatPasses(String volume, boolean close) {
        Batch batch = MixLine.stated(volume + " m3", "5", CEMENT, WATER, SAND, STONE.retained("25"))
                .withWetSieved(true);
        if (close) {
            accepts(batch);
        } else {
            doubts(batch, "batchVolume", "mix.volume-far-from-constituents", "make 0.995 m3");
        }
    }

    /** Without the cement's relative density 0.85 m3 are known, and these must fit. */
    @Test
    void findsThatVolumesDoNotFitEvenWhenOneIsNotKnown() {
        MixLine unknown = MixLine.cement("315 kg");
        refuses(
                MixLine.stated("0.84 m3", "5", unknown, WATER, SAND, STONE),
                "batchVolume",
                "mix.volumes-do-not-fit",
                "take 0.85 m3 but the batch is stated as 0.84 m3. The largest is stone. Check");
        doubts(
                MixLine.stated("0.86 m3", "5", unknown, WATER, SAND, STONE),
                "constituents.0.relativeDensity",
                "mix.relative-density-missing-unchecked",
                "cement");
    }

    /** Three constituents that fill 0.3 m3 on paper: in binary their sum is a little more, and still fits without air. */
    @Test
    void takesAVolumeThatIsFullToTheLastDrop() {
        Batch batch = MixLine.stated(
                "0.3 m3",
                "0",
                MixLine.water("100 kg"),
                MixLine.water("100 kg"),
                MixLine.fine("250 kg").dense("2.5").absorbing("1"));
        assertThat(0.1 + 0.1 + 0.1).isGreaterThan(0.3);
        accepts(batch);
    }
}
