package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.MeterStory;
import porebench.method.MeterType;
import porebench.method.budget.Bowl;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.meter.DialCurve;
import porebench.method.profile.Profiles;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** How well the uncertainty of a calibration is known, and whether a dial rests on the bowl that is used. */
class CalibrationDegreesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "for a test");

    /** A meter with a dial of 0.10 % and a bowl of 7.050 L. */
    private static MeterStory story(MeterCalibration... calibrations) {
        return MeterStory.of(
                new Version<>(Samples.meter("B-1", MeterType.B), 1, STAMP),
                List.of(calibrations).stream()
                        .map(one -> new Version<>(one, 1, STAMP))
                        .toList(),
                Profiles.standard());
    }

    /**
     * A knot of three repeats with u = 0.05 at a dial of 0.10: the step has 0.01 / 12 of the 0.0025, a third, so that scatter has
     * two thirds of the square. Two degrees of freedom over (2/3)^2 make 4.5. The knot without more than the step has no end.
     */
    @Test
    void whatAKnotHasBeyondTheStepOfTheDialIsItsScatter() {
        DialCurve curve =
                new DialCurve(List.of(new DialCurve.Knot(0, 0, 1, 0.02), new DialCurve.Knot(5, 5, 3, 0.05)), 0.1, "A1");
        assertThat(CalibrationDegrees.ofDial(curve, story())).isEqualTo(4.5, within(1e-9));
    }

    @Test
    void withoutRepeatsOrScatterThereIsNoEndOfDegrees() {
        assertThat(CalibrationDegrees.of(0, 0, 3)).isInfinite();
        assertThat(CalibrationDegrees.of(0.1, 0, 3)).isInfinite();
        assertThat(CalibrationDegrees.of(0.1, 0.05, 0)).isInfinite();
        // All of it is scatter: as many as the scatter has.
        assertThat(CalibrationDegrees.of(0.1, 0.1, 1)).isEqualTo(1, within(1e-12));
        // Half of it is scatter: 2^4 times as many.
        assertThat(CalibrationDegrees.of(0.1, 0.05, 3)).isEqualTo(48, within(1e-9));
    }

    /** The same volume may differ in the ninth digit, by the arithmetic of its units. */
    @ParameterizedTest
    @CsvSource({"7.050, true", "7.050000003, true", "7.0500001, false", "7.051, false"})
    void aDialRestsOnTheBowlWhoseVolumeItWasCheckedIn(double litres, boolean expected) {
        MeterCalibration shares = SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.0", "5.0", "10.0");
        DialCheck check = shares.dial().orElseThrow();
        DialCheck measured = new DialCheck(
                Optional.empty(),
                Optional.empty(),
                List.of(
                        SampleCalibrations.point("0", CheckAmount.Unit.MILLILITRE, "0.0"),
                        SampleCalibrations.point("353", CheckAmount.Unit.MILLILITRE, "5.0")),
                check.initialLine(),
                check.leakMarks(),
                check.chamber(),
                check.initialPressure());
        MeterCalibration withWater = new MeterCalibration(
                shares.id(),
                shares.meterId(),
                shares.meterType(),
                DAY,
                "",
                shares.reason(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(measured),
                Optional.empty(),
                "");
        Bowl bowl = Bowl.stated(litres, 0.001);
        assertThat(CalibrationDegrees.restsOn(bowl, story(withWater), DAY)).isEqualTo(expected);
        assertThat(CalibrationDegrees.restsOn(bowl, story(withWater), DAY.minusDays(1)))
                .isFalse();
        assertThat(CalibrationDegrees.restsOn(bowl, story(shares), DAY)).isFalse();
    }
}
