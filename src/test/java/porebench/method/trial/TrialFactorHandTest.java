package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** Factors of trials by pencil: G = h1 - h2 on Type A, G = A1 - 100 Vw / S on Type B (ASTM C231, recalled). */
class TrialFactorHandTest {
    private static TrialFactor factor(Readings readings) {
        return TrialFactor.of(readings, Expected.UNKNOWN, Profiles.standard());
    }

    private static void refuses(Readings readings, String field, String code, String words) {
        TrialFactor trial = factor(readings);
        Problem problem = Said.one(trial.problems(), code);
        assertThat(problem.isError()).isTrue();
        assertThat(problem.field()).isEqualTo(field);
        assertThat(Said.text(problem)).isEqualTo(words);
        assertThat(trial.counts()).isFalse();
    }

    /** 0.55 - 0.15 = 0.40; 0.3 - 0 = 0.3. A Type A meter withdraws no water. */
    @ParameterizedTest
    @CsvSource({"0.55, 0.15, 0.40", "0.3, 0, 0.3", "0.2, 0.2, 0"})
    void takesTheDifferenceOfTheTwoReadingsOnTypeA(String h1, String h2, double expected) {
        TrialFactor trial = factor(TrialReadings.typeA(h1, h2));
        assertThat(trial.factorPercent().orElseThrow()).isEqualTo(expected);
        assertThat(trial.withdrawnPercent()).isEmpty();
        assertThat(trial.problems()).isEmpty();
        assertThat(trial.counts()).isTrue();
    }

    /**
     * Type B, bowl 7 L, gauge 5.4.
     *
     * <pre>
     * 350 mL: 100 x 350 / 7000 = 5 %, G = 0.4
     * 5 %: G = 0.4
     * 350 g at 20 C: 350 / 0.99820675 = 350.62877 mL, 5.0089824 %, G = 0.3910176
     * 350 g at 4 C: 350 / 0.99997495 = 350.00877 mL, 5.0001253 %, G = 0.3998747
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({
        "350, MILLILITRE,    , 5,         0.4",
        "350, MILLILITRE, 35 , 5,         0.4",
        "5,   PERCENT,       , 5,         0.4",
        "350, GRAM,       20 , 5.0089824, 0.3910176",
        "350, GRAM,       4  , 5.0001253, 0.3998747",
        "0,   MILLILITRE,    , 0,         5.4"
    })
    void takesTheWaterWithdrawnFromTheGaugeOnTypeB(
            String number, Withdrawal.Unit unit, String celsius, double withdrawn, double expected) {
        Readings readings = TrialReadings.typeB(number, unit, "5.4");
        TrialFactor trial = factor(celsius == null ? readings : TrialReadings.withWater(readings, celsius));
        assertThat(trial.withdrawnPercent().orElseThrow()).isCloseTo(withdrawn, offset(5e-7));
        assertThat(trial.factorPercent().orElseThrow()).isCloseTo(expected, offset(5e-7));
        assertThat(trial.counts()).isTrue();
    }

    @Test
    void neverKnowsAFactorWithoutItsReadings() {
        Readings bare = TrialReadings.blank(MeterType.B);
        String end = " is missing: the factor of this trial cannot be computed." + " Type it, or mark the trial void.";
        assertThat(Said.codes(factor(bare).problems()))
                .containsExactly("trial.reading-missing", "trial.reading-missing");
        assertThat(factor(bare).problems().stream().map(Said::text))
                .containsExactly("The water withdrawn" + end, "The gauge reading" + end);
        assertThat(factor(bare).factorPercent()).isEmpty();
        Readings onlyGauge = TrialReadings.both(
                bare,
                new Readings(
                        MeterType.B,
                        bare.bowl(),
                        bare.fine(),
                        bare.coarse(),
                        bare.soakMinutes(),
                        bare.waterCelsius(),
                        Optional.empty(),
                        Optional.of(new java.math.BigDecimal("5.4")),
                        Optional.empty(),
                        Optional.empty(),
                        false));
        refuses(onlyGauge, "withdrawn", "trial.reading-missing", "The water withdrawn" + end);
        assertThat(factor(onlyGauge).factorPercent()).isEmpty();
        Readings typeA = TrialReadings.blank(MeterType.A);
        assertThat(factor(typeA).problems().stream().map(Said::text))
                .containsExactly("The reading h1" + end, "The reading h2" + end);
        assertThat(factor(typeA).factorPercent()).isEmpty();
        assertThat(factor(typeA).counts()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"h1", "h2"})
    void needsBothReadingsOnTypeA(String missing) {
        Readings full = TrialReadings.typeA("0.5", "0.1");
        Readings readings = new Readings(
                MeterType.A,
                full.bowl(),
                full.fine(),
                full.coarse(),
                full.soakMinutes(),
                full.waterCelsius(),
                full.withdrawal(),
                full.gaugePercent(),
                missing.equals("h1") ? Optional.empty() : full.h1Percent(),
                missing.equals("h2") ? Optional.empty() : full.h2Percent(),
                false);
        refuses(
                readings,
                missing,
                "trial.reading-missing",
                "The reading " + missing + " is missing: the factor of this trial cannot be computed."
                        + " Type it, or mark the trial void.");
        assertThat(factor(readings).factorPercent()).isEmpty();
    }

    /** A leak voids the trial; what it would have given stays visible. */
    @Test
    void isVoidByALeakOnEitherType() {
        refuses(
                TrialReadings.leaking(TrialReadings.typeA("0.5", "0.1")),
                "leak",
                "trial.leak",
                "The meter leaked: the trial is void. Find the leak and make the trial again.");
        TrialFactor trial =
                factor(TrialReadings.leaking(TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "5.4")));
        assertThat(trial.factorPercent().orElseThrow()).isCloseTo(0.4, offset(1e-12));
        assertThat(trial.counts()).isFalse();
    }

    @Test
    void refusesABowlThatIsNotGreaterThanZero() {
        Readings readings = TrialReadings.withBowl(
                TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "5.4"), Typed.of("0.0", VolumeUnit.LITRE));
        refuses(
                readings,
                "bowl",
                "trial.bowl-not-positive",
                "Bowl volume 0.0 L must be greater than 0. Correct " + "the volume.");
        assertThat(factor(readings).factorPercent()).isEmpty();
        assertThat(factor(readings).withdrawnPercent()).isEmpty();
    }

    /** The bowl holds 7000 mL: all of it can be withdrawn, a drop more cannot. */
    @Test
    void refusesAWithdrawalLargerThanTheBowlOrLessThanNothing() {
        refuses(
                TrialReadings.typeB("7001", Withdrawal.Unit.MILLILITRE, "5.4"),
                "withdrawn",
                "trial.withdrawal-exceeds-bowl",
                "The water withdrawn is 100.01 % of the bowl: more than the bowl holds. Check the amount and its "
                        + "unit.");
        refuses(
                TrialReadings.typeB("100.1", Withdrawal.Unit.PERCENT, "5.4"),
                "withdrawn",
                "trial.withdrawal-exceeds-bowl",
                "The water withdrawn is 100.1 % of the bowl: more than the bowl holds. Check the amount and its "
                        + "unit.");
        refuses(
                TrialReadings.typeB("-1", Withdrawal.Unit.MILLILITRE, "5.4"),
                "withdrawn",
                "trial.withdrawal-negative",
                "Water withdrawn -1 must not be negative. Correct it.");
        assertThat(factor(TrialReadings.typeB("-1", Withdrawal.Unit.PERCENT, "5.4"))
                        .factorPercent())
                .isEmpty();
        assertThat(factor(TrialReadings.typeB("7001", Withdrawal.Unit.MILLILITRE, "5.4"))
                        .factorPercent())
                .isEmpty();
        assertThat(Said.codes(factor(TrialReadings.typeB("7000", Withdrawal.Unit.MILLILITRE, "5.4"))
                        .problems()))
                .doesNotContain("trial.withdrawal-exceeds-bowl");
        assertThat(Said.codes(factor(TrialReadings.typeB("100", Withdrawal.Unit.PERCENT, "5.4"))
                        .problems()))
                .doesNotContain("trial.withdrawal-exceeds-bowl");
    }

    @Test
    void needsTheTemperatureOfWaterThatWasWeighed() {
        Readings weighed = TrialReadings.typeB("350", Withdrawal.Unit.GRAM, "5.4");
        refuses(
                weighed,
                "waterTemperature",
                "trial.water-temperature-missing",
                "Water withdrawn by mass needs its temperature. Type the temperature of the water.");
        refuses(
                TrialReadings.withWater(weighed, "40.5"),
                "waterTemperature",
                "water.temperature-out-of-range",
                "Water temperature 40.5 C must be from 0 to 40 C. Correct the temperature.");
        assertThat(factor(TrialReadings.withWater(weighed, "40.5")).factorPercent())
                .isEmpty();
        assertThat(factor(TrialReadings.withWater(weighed, "40")).problems()).isEmpty();
        assertThat(factor(TrialReadings.withWater(weighed, "0")).problems()).isEmpty();
    }

    /** Where the temperature is not used, an odd one is a doubt and no more: by volume, and on Type A. */
    @Test
    void doubtsAnOddTemperatureThatIsNotUsed() {
        Readings measured =
                TrialReadings.withWater(TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "5.4"), "72");
        assertThat(Said.one(factor(measured).problems(), "water.temperature-out-of-range")
                        .isError())
                .isFalse();
        assertThat(factor(measured).counts()).isTrue();
        Readings typeA = TrialReadings.both(
                TrialReadings.typeA("0.5", "0.1"),
                TrialReadings.withWater(TrialReadings.typeB("350", Withdrawal.Unit.GRAM, "5.4"), "72"));
        assertThat(Said.one(factor(typeA).problems(), "water.temperature-out-of-range")
                        .isError())
                .isFalse();
        assertThat(factor(typeA).counts()).isTrue();
        assertThat(factor(typeA).factorPercent().orElseThrow()).isEqualTo(0.4);
    }

    @Test
    void refusesNegativeMassesAndSoaks() {
        Readings sound = TrialReadings.typeA("0.5", "0.1");
        refuses(
                TrialReadings.withMasses(sound, "-1.5", "7"),
                "fine",
                "trial.negative",
                "The fine aggregate of -1.5 must not be negative. Correct it.");
        refuses(
                TrialReadings.withMasses(sound, "5", "-7"),
                "coarse",
                "trial.negative",
                "The coarse aggregate of -7 must not be negative. Correct it.");
        refuses(
                TrialReadings.withSoak(sound, "-1"),
                "soak",
                "trial.negative",
                "The soak time of -1 must not be negative. Correct it.");
        assertThat(factor(TrialReadings.withSoak(TrialReadings.withMasses(sound, "0", "0"), "0"))
                        .problems())
                .isEmpty();
    }

    @Test
    void knowsTheUnitsOfWithdrawnWaterByTheirSymbols() {
        assertThat(Arrays.stream(Withdrawal.Unit.values()).map(Withdrawal.Unit::symbol))
                .containsExactly("mL", "g", "pct");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    /** The same share of any bowl, by volume, by mass or in per cent, is the same factor. */
    @ParameterizedTest
    @MethodSource("seeds")
    void givesOneFactorHoweverTheWaterWasMeasured(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double share = random.nextDouble(0, 9);
        double litres = random.nextDouble(5, 12);
        double celsius = random.nextDouble(0, 40);
        double density = porebench.method.WaterDensity.at(new porebench.quantity.Temperature(celsius))
                .kilogramsPerCubicMetre();
        double millilitres = share / 100 * litres * 1000;
        double[] numbers = {share, millilitres, millilitres * density / 1000};
        Withdrawal.Unit[] units = {Withdrawal.Unit.PERCENT, Withdrawal.Unit.MILLILITRE, Withdrawal.Unit.GRAM};
        for (int i = 0; i < 3; i++) {
            Readings readings = TrialReadings.withWater(
                    TrialReadings.typeB(
                            new Typed<>(java.math.BigDecimal.valueOf(litres), VolumeUnit.LITRE),
                            java.math.BigDecimal.valueOf(numbers[i]),
                            units[i],
                            "9.5"),
                    java.math.BigDecimal.valueOf(celsius).toPlainString());
            assertThat(factor(readings).factorPercent().orElseThrow())
                    .as(units[i].symbol())
                    .isCloseTo(9.5 - share, offset(1e-10));
        }
    }

    @Test
    void keepsItsProblemsToItself() {
        assertThat(factor(TrialReadings.typeA("0.5", "0.1")).problems()).isUnmodifiable();
    }
}
