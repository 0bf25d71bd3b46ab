package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.Answer;
import porebench.method.MoistureState;
import porebench.method.Said;
import porebench.quantity.VolumeUnit;

/** A sample weighed by today's moisture, by pencil and against the same mix designed with that moisture. */
class TodaysMoistureHandTest {
    private static CorrectionSample sample(MixLine... aggregates) {
        return CorrectionSample.of(MixLine.stated("1 m3", "5", aggregates), Verdict.BOWL)
                .value()
                .orElseThrow();
    }

    private static Optional<BigDecimal> percent(String number) {
        return Optional.ofNullable(number).map(BigDecimal::new);
    }

    private static double litres(CorrectionSample sample) {
        return sample.inundation().orElseThrow().in(VolumeUnit.LITRE);
    }

    /**
     * Sand 1020 kg SSD, absorption 2 %, of 2.55; stone 500 kg of 2.5, absorption 0; bowl 7 L of 1 m3.
     *
     * <pre>
     * designed: sand 7.14 kg (oven-dry 7.00), stone 3.5 kg; particles 0.4 + 0.2, water 7 x 0.4 = 2.8 L
     * sand at 5 %: 7.00 x 1.05 = 7.35 kg, 0.21 kg heavier, water 2.59 L
     * sand at 0 %: 7.00 kg, 0.14 kg lighter, water 2.94 L
     * sand at 5 %, stone at 1 %: 3.535 kg, 0.245 kg heavier in all, water 2.555 L
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({"5, , 7.35, 3.5, 2.59", "0, , 7.00, 3.5, 2.94", "5, 1, 7.35, 3.535, 2.555", ", , 7.14, 3.5, 2.8"})
    void weighsTheSameDryStone(String sandToday, String stoneToday, double sand, double stone, double water) {
        CorrectionSample designed = sample(
                MixLine.fine("1020 kg").dense("2.55").absorbing("2"),
                MixLine.coarse("500 kg").dense("2.5").absorbing("0"));
        Answer<CorrectionSample> answer = TodaysMoisture.of(designed, List.of(percent(sandToday), percent(stoneToday)));
        CorrectionSample today = answer.value().orElseThrow();
        assertThat(answer.problems()).isEmpty();
        assertThat(today.fine().kilograms()).isCloseTo(sand, offset(1e-12));
        assertThat(today.coarse().kilograms()).isCloseTo(stone, offset(1e-12));
        assertThat(litres(today)).isCloseTo(water, offset(1e-12));
        assertThat(today.batchVolume()).isEqualTo(designed.batchVolume());
        assertThat(today.bowl()).isEqualTo(designed.bowl());
        assertThat(today.oneThird()).isEqualTo(designed.oneThird());
        assertThat(today.withdrawal()).isEqualTo(designed.withdrawal());
        for (int i = 0; i < 2; i++) {
            CorrectionSample.Component before = designed.components().get(i);
            CorrectionSample.Component after = today.components().get(i);
            assertThat(after.name()).isEqualTo(before.name());
            assertThat(after.source()).isEqualTo(before.source());
            assertThat(after.role()).isEqualTo(before.role());
            assertThat(after.ovenDryKilograms()).isEqualTo(before.ovenDryKilograms());
        }
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    /** The same mix designed with today's moisture gives the same sample. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithAMixDesignedForToday(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        MoistureState state = seed % 2 == 0 ? MoistureState.SSD : MoistureState.OVEN_DRY;
        MixLine sand = MixLine.fine("700 kg").in(state).dense("2.6").absorbing("1.4");
        MixLine stone = MixLine.coarse("1000 kg").in(state).dense("2.7").absorbing("0.7");
        String wetSand = String.format(Locale.ROOT, "%.2f", random.nextDouble(0, 9));
        String wetStone = String.format(Locale.ROOT, "%.2f", random.nextDouble(0, 4));
        CorrectionSample today = TodaysMoisture.of(
                        sample(sand.moist("3"), stone), List.of(percent(wetSand), percent(wetStone)))
                .value()
                .orElseThrow();
        CorrectionSample designed = sample(sand.moist(wetSand), stone.moist(wetStone));
        assertThat(today.fine().kilograms()).isCloseTo(designed.fine().kilograms(), offset(1e-9));
        assertThat(today.coarse().kilograms()).isCloseTo(designed.coarse().kilograms(), offset(1e-9));
        assertThat(litres(today)).isCloseTo(litres(designed), offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, false", "0, true", "60, true", "60.1, false"})
    void takesAMoistureThatAggregateCanHave(String moisture, boolean taken) {
        CorrectionSample designed = sample(MixLine.fine("100 kg").dense("2.5").absorbing("2"));
        Answer<CorrectionSample> answer = TodaysMoisture.of(designed, List.of(percent(moisture)));
        assertThat(answer.value().isPresent()).isEqualTo(taken);
        if (!taken) {
            assertThat(answer.problems().get(0).field()).isEqualTo("moisture.0");
            assertThat(Said.text(Said.one(answer.problems(), "mix.moisture-out-of-range")))
                    .isEqualTo("sand: moisture " + moisture + " % must be from 0 to 60 % of the oven-dry mass. "
                            + "Correct the moisture.");
        }
    }

    @Test
    void needsTheOvenDryMassOfWhatIsWeighedByMoistureAndNamesEveryOne() {
        CorrectionSample designed = sample(
                MixLine.fine("700 kg").dense("2.6"), MixLine.coarse("1000 kg").dense("2.7"));
        Answer<CorrectionSample> answer = TodaysMoisture.of(designed, List.of(percent("5"), percent("1")));
        assertThat(answer.value()).isEmpty();
        assertThat(Said.codes(answer.problems())).containsExactly("mix.absorption-missing", "mix.absorption-missing");
        assertThat(answer.problems().get(1).field()).isEqualTo("moisture.1");
        assertThat(TodaysMoisture.of(designed, List.of(Optional.empty(), Optional.empty()))
                        .value())
                .contains(designed);
    }

    /** Particles 0.8 of the bowl leave 1.4 L; oven-dry 13.861386 kg at 11 % are 1.386 kg heavier than SSD, at 12 % 1.525. */
    @Test
    void saysWhenTheStockIsWetterThanTheBowlHasRoomFor() {
        CorrectionSample designed = sample(MixLine.fine("2000 kg").dense("2.5").absorbing("1"));
        assertThat(TodaysMoisture.of(designed, List.of(percent("11"))).problems())
                .isEmpty();
        Answer<CorrectionSample> wet = TodaysMoisture.of(designed, List.of(percent("12")));
        assertThat(litres(wet.value().orElseThrow())).isZero();
        assertThat(Said.text(Said.one(wet.problems(), "sample.wetter-than-room")))
                .isEqualTo("The aggregate brings 1.525 L of water more than designed, but only 1.4 L were left "
                        + "to add. Let the aggregate drain first.");
    }

    /** Where the design's own water is not known, or there was no room for any, today's is not known either. */
    @Test
    void doesNotKnowTheWaterWhereTheDesignDoesNot() {
        CorrectionSample unknown = sample(MixLine.fine("700 kg").absorbing("1"));
        assertThat(TodaysMoisture.of(unknown, List.of(percent("5")))
                        .value()
                        .orElseThrow()
                        .inundation())
                .isEmpty();
        CorrectionSample tooWet =
                sample(MixLine.fine("2000 kg").dense("2.5").absorbing("1").moist("12"));
        assertThat(TodaysMoisture.of(tooWet, List.of(percent("5")))
                        .value()
                        .orElseThrow()
                        .inundation())
                .isEmpty();
    }

    @Test
    void needsAnEntryForEachComponent() {
        CorrectionSample designed = sample(MixLine.fine("700 kg").absorbing("1"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TodaysMoisture.of(designed, List.of()))
                .withMessage("moisturePercent must have an entry a component, but is [] for 1");
    }
}
