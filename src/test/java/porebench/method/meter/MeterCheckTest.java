package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A value against its limits, both of them included. */
class MeterCheckTest {
    @ParameterizedTest
    @CsvSource({"0.74, false", "0.75, true", "1, true", "1.25, true", "1.26, false"})
    void takesItsLimitsAndNothingBeyond(double value, boolean passes) {
        assertThat(MeterCheck.within(MeterCheck.Subject.BOWL_SHAPE, value, 0.75, 1.25, "ours")
                        .passes())
                .isEqualTo(passes);
    }

    /** 5.1 - 5.0 is 0.0999999999999996 or so in binary, and 0.3 - 0.2 a little below 0.1: on paper both are 0.1. */
    @Test
    void isNotMisledByBinaryFractions() {
        assertThat(MeterCheck.atMost(MeterCheck.Subject.DIAL_ERROR, 0.1 + 1e-12, 0.1, "ours")
                        .passes())
                .isTrue();
        assertThat(MeterCheck.atLeast(MeterCheck.Subject.BOWL_VOLUME, 6 - 1e-12, 6, "ours")
                        .passes())
                .isTrue();
        assertThat(MeterCheck.atLeast(MeterCheck.Subject.BOWL_VOLUME, 5.999, 6, "ours")
                        .passes())
                .isFalse();
    }

    @Test
    void namesItsSubjectsWithTheirUnits() {
        assertThat(Arrays.stream(MeterCheck.Subject.values()).map(MeterCheck.Subject::symbol))
                .containsExactly("bowl-volume", "bowl-shape", "dial-error", "leak", "expansion", "elevation");
        assertThat(Arrays.stream(MeterCheck.Subject.values()).map(MeterCheck.Subject::unit))
                .containsExactly("L", "", "% air", "marks", "% air", "m");
    }

    @Test
    void refusesAValueThatIsNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeterCheck.atMost(MeterCheck.Subject.LEAK, Double.NaN, 1, "ours"))
                .withMessage("value must be a finite number, but is NaN");
    }
}
