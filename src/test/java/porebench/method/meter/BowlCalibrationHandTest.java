package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** Bowl volumes from several fills, by pencil, and everything that can be wrong with the weighings. */
class BowlCalibrationHandTest {
    private static final BowlFill LOW = Fills.fill("3.000", "0.500", "10.480", "20");
    private static final BowlFill MIDDLE = Fills.fill("3.000", "0.500", "10.482", "20");
    private static final BowlFill HIGH = Fills.fill("3.000", "0.500", "10.484", "20");

    private static Answer<BowlCalibration> answer(BowlFills fills) {
        return BowlCalibration.of(fills, Profiles.standard());
    }

    private static BowlFills with(Optional<BigDecimal> diameter, Optional<BigDecimal> height) {
        return new BowlFills(List.of(LOW, HIGH), false, Optional.empty(), Optional.empty(), diameter, height);
    }

    private static BowlFills buoyant(Optional<BigDecimal> celsius, Optional<BigDecimal> kilopascals) {
        return new BowlFills(
                List.of(LOW, MIDDLE, HIGH), true, celsius, kilopascals, Optional.empty(), Optional.empty());
    }

    /**
     * Water at 20 C, 998.20675 kg/m3.
     *
     * <pre>
     * 6.980, 6.982, 6.984 kg: 6.992539, 6.994543, 6.996547 L; mean 6.994543, s = 0.002004 L, 0.02865 %
     * scatter of the mean          0.002004 / sqrt(3)                                     0.001157 L
     * weighings, 1 g = 0.001002 L  0.001002 / sqrt(12), three of them                     0.000501 L
     * water, 1 C about 20 C        6.9945 x 0.2068 / 998.2 / sqrt(12)                     0.000418 L
     * together                     sqrt(0.001157^2 + 0.000501^2 + 0.000418^2)             0.001328 L
     * </pre>
     */
    @Test
    void takesTheMeanOfTheFillsWithItsSpreadAndUncertainty() {
        Answer<BowlCalibration> answer = answer(Fills.plain(LOW, MIDDLE, HIGH));
        BowlCalibration bowl = answer.value().orElseThrow();
        assertThat(answer.problems()).isEmpty();
        assertThat(bowl.fills().stream().map(volume -> volume.in(VolumeUnit.LITRE)))
                .satisfiesExactly(
                        low -> assertThat(low).isCloseTo(6.992539, offset(2e-6)),
                        middle -> assertThat(middle).isCloseTo(6.994543, offset(2e-6)),
                        high -> assertThat(high).isCloseTo(6.996547, offset(2e-6)));
        assertThat(bowl.volume().in(VolumeUnit.LITRE)).isCloseTo(6.994543, offset(2e-6));
        assertThat(bowl.litres().standardDeviation().orElseThrow()).isCloseTo(0.002004, offset(1e-6));
        assertThat(bowl.spreadPercent().orElseThrow()).isCloseTo(0.02865, offset(1e-5));
        assertThat(bowl.standardUncertaintyLitres()).isCloseTo(0.001328, offset(2e-6));
        assertThat(bowl.buoyancyCorrected()).isFalse();
        assertThat(bowl.passes()).isTrue();
    }

    /** The same in air of 20 C and 101.325 kPa: 6.994543 x 1.001052801 = 7.001907 L (see the test of the air's density). */
    @Test
    void takesTheBuoyancyOfTheAirOutWhenAsked() {
        BowlCalibration bowl = answer(buoyant(Fills.number("20"), Fills.number("101.325")))
                .value()
                .orElseThrow();
        assertThat(bowl.volume().in(VolumeUnit.LITRE)).isCloseTo(7.001907, offset(3e-6));
        assertThat(bowl.buoyancyCorrected()).isTrue();
    }

    @Test
    void doubtsASingleFillWhoseSpreadIsNotKnown() {
        Answer<BowlCalibration> answer = answer(Fills.plain(MIDDLE));
        assertThat(Said.codes(answer.problems())).containsExactly("meter.one-fill");
        assertThat(answer.value().orElseThrow().spreadPercent()).isEmpty();
        // Without the scatter: sqrt(0.000501^2 + 0.000418^2).
        assertThat(answer.value().orElseThrow().standardUncertaintyLitres()).isCloseTo(0.000652, offset(2e-6));
    }

    /** ASTM C231 (recalled): at least 6.0 L. Water of 5.989 kg at 20 C is 5.99976 L, of 5.990 kg 6.00076 L. */
    @ParameterizedTest
    @CsvSource({"9.489, false", "9.490, true"})
    void holdsTheVolumeAgainstTheLeastOfTheProfile(String full, boolean passes) {
        BowlFill fill = Fills.fill("3.000", "0.500", full, "20");
        Answer<BowlCalibration> answer = answer(Fills.plain(fill, fill));
        assertThat(answer.value().orElseThrow().passes()).isEqualTo(passes);
        assertThat(Said.codes(answer.problems()).contains("meter.bowl-small")).isEqualTo(!passes);
        // Two equal fills have no spread.
        assertThat(answer.value().orElseThrow().spreadPercent().orElseThrow()).isZero();
    }

    /** JIS A 1128 (seen): diameter 0.75 to 1.25 of the height. */
    @ParameterizedTest
    @CsvSource({"150, 200, true", "149, 200, false", "250, 200, true", "251, 200, false", "203.5, 213.0, true"})
    void holdsTheShapeAgainstTheProfile(String diameter, String height, boolean passes) {
        Answer<BowlCalibration> answer = answer(with(Fills.number(diameter), Fills.number(height)));
        BowlCalibration bowl = answer.value().orElseThrow();
        assertThat(bowl.checks().stream().map(MeterCheck::subject))
                .containsExactly(MeterCheck.Subject.BOWL_VOLUME, MeterCheck.Subject.BOWL_SHAPE);
        assertThat(bowl.passes()).isEqualTo(passes);
        assertThat(Said.codes(answer.problems()).contains("meter.bowl-shape")).isEqualTo(!passes);
    }

    @Test
    void checksNoShapeThatWasNotMeasured() {
        assertThat(answer(with(Fills.number("200"), Optional.empty()))
                        .value()
                        .orElseThrow()
                        .checks())
                .hasSize(1);
    }

    /** 0.499 kg of water of 998.20675 kg/m3 is 0.4999 L; a measuring bowl holds 0.5 to 50 L (common practice, no source). */
    @Test
    void refusesABowlThatNobodyHas() {
        BowlFills fills = new BowlFills(
                List.of(Fills.fill("3.000", "0.500", "10.482", "20"), Fills.fill("3.000", "0", "3.499", "20")),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(BowlCalibration.of(fills, Profiles.standard()).problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("fills.1.full", "bowl.volume-impossible"));
    }

    @Test
    void namesEverythingThatIsWrongAtOnce() {
        BowlFills wrong = new BowlFills(
                List.of(
                        Fills.fill("10.482", "0.500", "3.000", "20"),
                        Fills.fill("3.000", "0.500", "10.482", "40.1"),
                        Fills.fill("-3.000", "-0.500", "10.482", "-0.1")),
                true,
                Fills.number("41"),
                Optional.empty(),
                Fills.number("0"),
                Fills.number("-200"));
        Answer<BowlCalibration> answer = answer(wrong);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems().stream().map(Problem::field))
                .containsExactlyInAnyOrder(
                        "airPressure",
                        "airTemperature",
                        "fills.0.full",
                        "fills.1.waterTemperature",
                        "fills.2.empty",
                        "fills.2.plate",
                        "fills.2.waterTemperature",
                        "diameter",
                        "height");
        assertThat(Said.text(Said.one(answer.problems(), "bowl.full-too-light")))
                .isEqualTo("The full bowl of 3 kg must weigh more than bowl and plate together, 10.98 kg. "
                        + "Correct one of the masses.");
        assertThat(Said.text(Said.one(answer.problems(), "meter.needed-for-buoyancy")))
                .isEqualTo("The pressure of the air is missing, and the buoyancy of the air cannot be corrected "
                        + "without it. Fill it in.");
        assertThat(Said.text(Said.one(answer.problems(), "meter.air-temperature-out-of-range")))
                .isEqualTo("Air temperature 41 C must be from 0 to 40 C. Correct the temperature.");
    }

    /** A barometer in hPa, or one that was brought down to sea level on a mountain, is caught by its range. */
    @ParameterizedTest
    @CsvSource({"1013.25, false", "49.9, false", "110.1, false", "50, true", "110, true"})
    void asksForThePressureOfTheAirInKilopascals(String kilopascals, boolean isTaken) {
        Answer<BowlCalibration> answer = answer(buoyant(Fills.number("20"), Fills.number(kilopascals)));
        assertThat(answer.value().isPresent()).isEqualTo(isTaken);
        if (!isTaken) {
            assertThat(Said.codes(answer.problems())).containsExactly("meter.air-pressure-out-of-range");
        }
    }

    @Test
    void needsAFill() {
        assertThat(Said.codes(answer(Fills.plain()).problems())).containsExactly("meter.no-fill");
    }

    /** 15.388 lb of water, in the units it was weighed in: the same bowl as 6.98 kg. */
    @Test
    void weighsInAnyUnit() {
        BowlFill pounds = new BowlFill(
                Typed.of("6.614", MassUnit.POUND),
                Typed.of("1.102", MassUnit.POUND),
                Typed.of("23.104", MassUnit.POUND),
                new BigDecimal("20"));
        assertThat(answer(Fills.plain(pounds, pounds))
                        .value()
                        .orElseThrow()
                        .volume()
                        .in(VolumeUnit.LITRE))
                .isCloseTo(15.388 * 0.45359237 / 0.99820675, offset(1e-6));
    }

    /** At both ends of the water's range the step of the thermometer is cut where the density ends. */
    @ParameterizedTest
    @CsvSource({"0", "40"})
    void reckonsWithTheThermometerAtTheEndsOfItsRange(String celsius) {
        BowlFill fill = Fills.fill("3.000", "0.500", "10.482", celsius);
        assertThat(answer(Fills.plain(fill, fill)).value().orElseThrow().standardUncertaintyLitres())
                .isBetween(0.0005, 0.001);
    }
}
