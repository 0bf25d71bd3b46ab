package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Everything that can be wrong with a dial check, each with its field and its rule. */
class DialProblemsTest {
    private static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);
    private static final CheckAmount.Unit VESSELS = CheckAmount.Unit.VESSELS;

    private static Answer<DialCurve> answer(DialCheck check) {
        return DialCurve.of(check, BOWL, 0.1, Profiles.standard());
    }

    private static Problem only(DialCheck check) {
        Answer<DialCurve> answer = answer(check);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems()).hasSize(1);
        return answer.problems().get(0);
    }

    private static DialCheck vessels(Optional<Typed<Mass>> water, Optional<BigDecimal> celsius) {
        return new DialCheck(
                water,
                celsius,
                List.of(Fills.point("1", VESSELS, "5.0"), Fills.point("2", VESSELS, "10.0")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Optional<Typed<Mass>> grams(String digits) {
        return Optional.of(Typed.of(digits, MassUnit.GRAM));
    }

    @Test
    void asksForTwoDifferentAmounts() {
        assertThat(Said.text(only(Fills.millilitres())))
                .isEqualTo("Different amounts of air at which the dial was checked: 0. Check the dial at two "
                        + "amounts at least.");
        assertThat(only(Fills.millilitres("350", "5.0")).code()).isEqualTo("meter.too-few-points");
        Problem repeats = only(Fills.millilitres("350", "5.0", "350", "5.1"));
        assertThat(repeats.field()).isEqualTo("points");
        assertThat(Said.text(repeats)).contains("checked: 1.");
    }

    @Test
    void asksForPointsInRisingOrder() {
        Problem problem = only(Fills.millilitres("0", "0.0", "700", "10.0", "350", "5.0"));
        assertThat(problem.field()).isEqualTo("points.2.amount");
        assertThat(Said.text(problem))
                .isEqualTo("Check point 3: 5 % air must not be less than the 10 % of the point before."
                        + " Give the points in rising order, repeats of one amount together.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5.0", "4.9"})
    void asksForReadingsThatRiseWithTheAir(String second) {
        Problem problem = only(Fills.millilitres("350", "5.0", "700", second));
        assertThat(problem.field()).isEqualTo("points.1.gauge");
        assertThat(problem.code()).isEqualTo("meter.reading-not-rising");
        Said.text(problem);
    }

    /** 7000 g at 20 C take 7.0126 L, more than the 7 L of the bowl; 6900 g take 6.9124 L, and two of them too much. */
    @Test
    void refusesAVesselLargerThanTheBowl() {
        Answer<DialCurve> answer = answer(vessels(grams("7000"), Fills.number("20")));
        assertThat(answer.problems().stream().map(Problem::field))
                .contains("vesselWater", "points.0.amount", "points.1.amount");
        assertThat(Said.text(Said.one(answer.problems(), "meter.vessel-exceeds-bowl")))
                .isEqualTo("The calibration vessel of 7.013 L must be smaller than the bowl of 7 L. Check the "
                        + "masses and their units.");
        Problem second = only(vessels(grams("6900"), Fills.number("20")));
        assertThat(second.field()).isEqualTo("points.1.amount");
        assertThat(second.code()).isEqualTo("meter.amount-exceeds-bowl");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.1", "40.1"})
    void asksForWaterBetween0And40Degrees(String celsius) {
        Problem problem = only(vessels(grams("350.0"), Fills.number(celsius)));
        assertThat(problem.field()).isEqualTo("waterTemperature");
        assertThat(Said.text(problem))
                .isEqualTo("Water temperature " + celsius + " C must be from 0 to 40 C. Correct the temperature.");
    }

    @Test
    void asksForTheVesselAndTheWaterOnlyWhereTheyAreNeeded() {
        assertThat(Said.codes(
                        answer(vessels(Optional.empty(), Optional.empty())).problems()))
                .containsExactlyInAnyOrder("meter.water-temperature-missing", "meter.vessel-missing");
        assertThat(answer(Fills.millilitres("350", "5.0", "700", "10.0")).problems())
                .isEmpty();
        assertThat(only(Fills.check(List.of(
                                Fills.point("350", CheckAmount.Unit.GRAM, "5.0"),
                                Fills.point("700", CheckAmount.Unit.GRAM, "10.0"))))
                        .code())
                .isEqualTo("meter.water-temperature-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-350"})
    void asksForAVesselThatHoldsSomething(String digits) {
        Problem problem =
                Said.one(answer(vessels(grams(digits), Fills.number("20"))).problems(), "meter.not-positive");
        assertThat(problem.field()).isEqualTo("vesselWater");
        assertThat(Said.text(problem))
                .isEqualTo("The water of the calibration vessel, " + digits + " g, must be greater than 0. "
                        + "Correct it.");
    }

    @ParameterizedTest
    @CsvSource({"-0.1", "100.1"})
    void asksForReadingsOnTheScale(String reading) {
        Answer<DialCurve> answer = answer(Fills.millilitres("350", "5.0", "700", reading));
        Problem problem = Said.one(answer.problems(), "meter.gauge-out-of-range");
        assertThat(problem.field()).isEqualTo("points.1.gauge");
        assertThat(answer.problems()).hasSize(1);
    }

    @Test
    void refusesWaterThatWasPutIn() {
        Answer<DialCurve> answer = answer(Fills.millilitres("-350", "5.0", "350", "5.0", "700", "10.0"));
        assertThat(Said.codes(answer.problems())).containsExactly("meter.amount-negative");
        assertThat(answer.problems().get(0).field()).isEqualTo("points.0.amount");
    }

    private static DialCheck set(
            Optional<BigDecimal> line,
            Optional<BigDecimal> leak,
            Optional<Typed<Volume>> chamber,
            Optional<Typed<Pressure>> pressure) {
        return new DialCheck(
                Optional.empty(),
                Optional.empty(),
                Fills.millilitres("350", "5.0", "700", "10.0").points(),
                line,
                leak,
                chamber,
                pressure);
    }

    @Test
    void namesEverySettingThatCannotBe() {
        Answer<DialCurve> answer = answer(set(
                Fills.number("-10.1"),
                Fills.number("-0.1"),
                Optional.of(Typed.of("7.0", VolumeUnit.LITRE)),
                Optional.of(Typed.of("0", PressureUnit.KILOPASCAL))));
        assertThat(Said.codes(answer.problems()))
                .containsExactlyInAnyOrder(
                        "meter.line-out-of-range",
                        "meter.leak-negative",
                        "meter.chamber-out-of-range",
                        "meter.not-positive");
        assertThat(answer.problems().stream().map(Problem::field))
                .containsExactlyInAnyOrder("initialLine", "leakMarks", "chamber", "initialPressure");
        assertThat(Said.codes(answer(set(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(Typed.of("0", VolumeUnit.LITRE)),
                                Optional.empty()))
                        .problems()))
                .containsExactly("meter.chamber-out-of-range");
    }

    /** A state checklist for T 152 of 2001 (seen): at most half a mark in 90 s. */
    @ParameterizedTest
    @CsvSource({"0.5, true", "0.6, false", "0, true"})
    void doubtsAMeterThatLosesMoreThanHalfAMark(String marks, boolean passes) {
        Answer<DialCurve> answer =
                answer(set(Optional.empty(), Fills.number(marks), Optional.empty(), Optional.empty()));
        assertThat(answer.value()).isPresent();
        assertThat(Said.codes(answer.problems()).contains("meter.leaks")).isEqualTo(!passes);
    }
}
