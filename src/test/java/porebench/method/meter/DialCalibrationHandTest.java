package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.BoyleTypeB;
import porebench.method.DialScale;
import porebench.method.Profile;
import porebench.method.Said;
import porebench.method.Surroundings;
import porebench.method.profile.Profiles;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** What a dial check tells of line, chamber and drift, by pencil. */
class DialCalibrationHandTest {
    private static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);
    private static final Profile PROFILE = Profiles.standard();
    private static final DialCheck CHECK = Fills.millilitres("350", "5.1", "700", "10.3");

    private static DialCalibration calibration(DialCheck check) {
        return DialCalibration.of(check, BOWL, 0.1, PROFILE).value().orElseThrow();
    }

    private static DialCheck with(Optional<BigDecimal> line, Optional<BigDecimal> leak) {
        return new DialCheck(
                Optional.empty(), Optional.empty(), CHECK.points(), line, leak, Optional.empty(), Optional.empty());
    }

    /**
     * Errors 0.1 at 5 % and 0.3 at 10 %, chamber 5 % of the bowl: w = 1 + 5/5 = 2 and 1 + 10/5 = 3.
     *
     * <pre>
     * d = - (0.1 x 2 + 0.3 x 3) / (4 + 9) = - 1.1 / 13 = - 0.084615 %
     * left: 0.1 - 2 x 0.084615 = - 0.069231 and 0.3 - 3 x 0.084615 = 0.046154
     * </pre>
     */
    @Test
    void tellsWhereTheInitialLineBelongs() {
        InitialLine line = calibration(CHECK).line();
        assertThat(line.shiftPercent()).isCloseTo(-0.084615, offset(1e-6));
        assertThat(line.largestErrorBefore()).isCloseTo(0.3, offset(1e-9));
        assertThat(line.largestErrorAfter()).isCloseTo(0.069231, offset(1e-6));
        assertThat(line.impliedPercent()).isEmpty();
        assertThat(calibration(with(Fills.number("-0.2"), Optional.empty()))
                        .line()
                        .impliedPercent()
                        .orElseThrow())
                .isCloseTo(-0.284615, offset(1e-6));
    }

    /** A meter that is right but for a line 2 % off in pressure: moving the line by what the dial then shows mends it. */
    @ParameterizedTest
    @CsvSource({"98", "102", "104"})
    void mendsAMeterWhoseLineAloneIsOff(double kilopascals) {
        DialScale scale = DialScale.usual(BOWL);
        Pressure pumped = Pressure.of(kilopascals, PressureUnit.KILOPASCAL);
        BoyleTypeB meter = BoyleTypeB.of(scale, Surroundings.at(0)).withInitialGauge(pumped);
        DialCurve curve = new DialCurve(
                List.of(
                        new DialCurve.Knot(3, meter.reading(3, scale), 1, 0.03),
                        new DialCurve.Knot(5, meter.reading(5, scale), 1, 0.03),
                        new DialCurve.Knot(9, meter.reading(9, scale), 1, 0.03)),
                0.1,
                "ours");
        InitialLine line = InitialLine.of(curve, scale, Optional.of(BigDecimal.ZERO));
        assertThat(line.largestErrorAfter()).isCloseTo(0, offset(1e-9));
        // The hand stood at this reading instead of 0, so 0 is that much the other way.
        assertThat(line.shiftPercent()).isCloseTo(-scale.readingAt(pumped), offset(1e-9));
        ImpliedChamber chamber = ImpliedChamber.of(curve, scale).orElseThrow();
        assertThat(chamber.litres()).isCloseTo(0.35, offset(1e-9));
        assertThat(chamber.initialGauge().in(PressureUnit.KILOPASCAL)).isCloseTo(kilopascals, offset(1e-9));
    }

    /**
     * The line through (5, 5.1) and (10, 10.3): b = 1.04, a = - 0.1.
     *
     * <pre>
     * l = 1 - 0.1 / 5 = 0.98; Vk = 0.98 x 0.35 / 1.04 = 0.329808 L; p1 = 100 / 0.98 = 102.0408 kPa
     * u: slope takes -0.2 and 0.2 of the two readings, l takes (0.5 + 1.5) / 5 = 0.4 and (0.5 - 1.5) / 5 = - 0.2
     *    0.4 / 0.98 + 0.2 / 1.04 = 0.600471; - 0.2 / 0.98 - 0.2 / 1.04 = - 0.396390
     *    0.0291606 x sqrt(0.600471^2 + 0.396390^2) = 0.0291606 x 0.719507 = 0.020981
     * </pre>
     */
    @Test
    void tellsTheChamberThatThePointsImply() {
        DialCalibration calibration = calibration(CHECK);
        ImpliedChamber chamber = calibration.chamber().orElseThrow();
        assertThat(chamber.litres()).isCloseTo(0.329808, offset(1e-6));
        assertThat(chamber.initialGauge().in(PressureUnit.KILOPASCAL)).isCloseTo(102.0408, offset(1e-4));
        assertThat(chamber.relativeUncertainty()).isCloseTo(0.020981, offset(1e-6));
        assertThat(calibration.isScaleUsual()).isTrue();
    }

    /** Two points are explained wholly: the model with the implied chamber reads what was read. */
    @Test
    void showsTheModelBesideTheReadings() {
        DialCalibration calibration = calibration(CHECK);
        assertThat(calibration.curve().knots())
                .hasSize(2)
                .allSatisfy(knot -> assertThat(calibration.predictedReading(knot.truePercent()))
                        .isCloseTo(knot.readingPercent(), offset(1e-9)));
        assertThat(calibration.predictedReading(0)).isCloseTo(-0.1, offset(1e-9));
        assertThat(calibration.predictedReading(7.5)).isCloseTo(7.7, offset(1e-9));
    }

    @Test
    void takesTheMakersChamberWhereItIsKnown() {
        DialCheck known = new DialCheck(
                Optional.empty(),
                Optional.empty(),
                CHECK.points(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Typed.of("420", VolumeUnit.MILLILITRE)),
                Optional.of(Typed.of("15", PressureUnit.POUND_PER_SQUARE_INCH)));
        DialCalibration calibration = calibration(known);
        assertThat(calibration.isScaleUsual()).isFalse();
        assertThat(calibration.scale().chamberPercent()).isCloseTo(6, offset(1e-12));
        // l = 1 - 0.1 / 6; Vk = l x 0.42 / 1.04.
        assertThat(calibration.chamber().orElseThrow().litres()).isCloseTo((1 - 0.1 / 6) * 0.42 / 1.04, offset(1e-9));
    }

    /** Readings 5.0 at 5 % and 17.6 at 10 %: b = 2.52, a = - 7.6, l = 1 - 7.6 / 5 is below 0: no pressure does that. */
    @Test
    void impliesNoChamberWhereNoneCouldBe() {
        var answer = DialCalibration.of(Fills.millilitres("350", "5.0", "700", "17.6"), BOWL, 0.1, PROFILE);
        assertThat(Said.codes(answer.problems())).contains("meter.no-chamber-implied");
        DialCalibration calibration = answer.value().orElseThrow();
        assertThat(calibration.chamber()).isEmpty();
        assertThat(calibration.predictedReading(5)).isCloseTo(5, offset(1e-9));
    }

    @Test
    void passesOnlyWhenDialAndLeakPass() {
        assertThat(calibration(CHECK).checks()).hasSize(1);
        assertThat(calibration(CHECK).passes()).isFalse();
        DialCheck right = Fills.millilitres("350", "5.0", "700", "10.0");
        assertThat(calibration(right).passes()).isTrue();
        DialCalibration leaking = calibration(new DialCheck(
                Optional.empty(),
                Optional.empty(),
                right.points(),
                Optional.empty(),
                Fills.number("1"),
                Optional.empty(),
                Optional.empty()));
        assertThat(leaking.checks()).hasSize(2);
        assertThat(leaking.leak().orElseThrow().passes()).isFalse();
        assertThat(leaking.passes()).isFalse();
    }

    @Test
    void handsOnWhatIsWrongWithTheCheck() {
        var answer = DialCalibration.of(Fills.millilitres("350", "5.0"), BOWL, 0.1, PROFILE);
        assertThat(answer.value()).isEmpty();
        assertThat(Said.codes(answer.problems())).containsExactly("meter.too-few-points");
    }

    /** 0.35 L to 0.36 L is 2.857 %: beyond the limit of 2 %, and flagged only where the readings can tell it. */
    @ParameterizedTest
    @CsvSource({"0.36, 0.005, true", "0.36, 0.02, false", "0.356, 0.001, false", "0.34, 0.005, true"})
    void flagsAChamberBeyondTheLimitThatTheReadingsCanTell(double litres, double relative, boolean isFlagged) {
        Pressure line = Pressure.of(100, PressureUnit.KILOPASCAL);
        ImpliedChamber before = new ImpliedChamber(Volume.of(0.35, VolumeUnit.LITRE), relative, line);
        ImpliedChamber after = new ImpliedChamber(Volume.of(litres, VolumeUnit.LITRE), relative, line);
        ImpliedChamber.Drift drift = after.since(before, PROFILE);
        assertThat(drift.percent()).isCloseTo(100 * (litres / 0.35 - 1), offset(1e-9));
        assertThat(drift.expandedUncertaintyPercent()).isCloseTo(200 * relative * Math.sqrt(2), offset(1e-9));
        assertThat(drift.limitPercent()).isEqualTo(2);
        assertThat(drift.isFlagged()).isEqualTo(isFlagged);
    }

    @Test
    void refusesAChamberThatCannotBe() {
        Pressure line = Pressure.of(100, PressureUnit.KILOPASCAL);
        assertThatIllegalArgumentException().isThrownBy(() -> new ImpliedChamber(new Volume(0), 0.01, line));
        assertThatIllegalArgumentException().isThrownBy(() -> new ImpliedChamber(BOWL, -0.01, line));
        assertThatIllegalArgumentException().isThrownBy(() -> new ImpliedChamber(BOWL, 0.01, new Pressure(0)));
    }
}
