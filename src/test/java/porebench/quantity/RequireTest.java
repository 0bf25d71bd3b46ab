package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {
    private static final double JUST_ABOVE_ZERO = Double.MIN_VALUE;

    @Test
    void givesBackWhatItAccepts() {
        assertThat(Require.finite("x", -3.5)).isEqualTo(-3.5);
        assertThat(Require.positive("x", JUST_ABOVE_ZERO)).isEqualTo(JUST_ABOVE_ZERO);
        assertThat(Require.atLeastZero("x", 0)).isZero();
        assertThat(Require.within("x", 1, 1, 2)).isEqualTo(1);
        assertThat(Require.within("x", 2, 1, 2)).isEqualTo(2);
        assertThat(Require.atLeast("n", 2, 2)).isEqualTo(2);
        assertThat(Require.notBlank("name", " a ")).isEqualTo(" a ");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void letsNothingThroughThatIsNotFinite(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.finite("x", value))
                .withMessage("x must be a finite number, but is " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("x", value))
                .withMessage("x must be greater than 0, but is " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.atLeastZero("x", value))
                .withMessage("x must be at least 0, but is " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.within("x", value, 1, 2))
                .withMessage("x must be from 1.0 to 2.0, but is " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.within("x", value, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    }

    @Test
    void refusesTheOtherSideOfEachBound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("mass", 0))
                .withMessage("mass must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("mass", -0.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.atLeastZero("mass", -JUST_ABOVE_ZERO))
                .withMessage("mass must be at least 0, but is -4.9E-324");
        assertThatIllegalArgumentException().isThrownBy(() -> Require.within("x", Math.nextDown(1.0), 1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Require.within("x", Math.nextUp(2.0), 1, 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.atLeast("n", 1, 2))
                .withMessage("n must be at least 2, but is 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "\u2003"})
    void refusesABlankText(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notBlank("name", text))
                .withMessage("name must not be blank, but is \"" + text + "\"");
    }
}
