package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounding to a step, by pencil; ties to even as in ASTM E29 (recalled). */
class RoundingRuleHandTest {
    private static RoundingRule rule(String step, Ties ties) {
        return new RoundingRule(new BigDecimal(step), ties, "a clause");
    }

    /**
     * A tie is a value half way between two steps. 5.05 lies between 50 and 51 tenths: even gives 5.0, away 5.1. 0.125 in
     * hundredths lies between 12 and 13. In halves of a 0.1 division 8.125 lies between 162 and 163 steps of 0.05: 8.10 and
     * 8.15. In quarters 0.375 lies between 1 and 2: 0.25 and 0.50; 0.125 between 0 and 1.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1,  5.05,   5.0,   5.1",
        "0.1,  5.15,   5.2,   5.2",
        "0.1,  5.25,   5.2,   5.3",
        "0.1,  5.0499, 5.0,   5.0",
        "0.1,  5.0501, 5.1,   5.1",
        "0.1,  -0.05,  0.0,   -0.1",
        "0.1,  -0.15,  -0.2,  -0.2",
        "0.1,  -0.25,  -0.2,  -0.3",
        "0.1,  -0.2501,-0.3,  -0.3",
        "0.1,  0.35,   0.4,   0.4",
        "0.01, 0.125,  0.12,  0.13",
        "0.05, 8.125,  8.10,  8.15",
        "0.05, 8.175,  8.20,  8.20",
        "0.05, 8.12,   8.10,  8.10",
        "0.05, 8.13,   8.15,  8.15",
        "0.25, 0.375,  0.50,  0.50",
        "0.25, 0.125,  0.00,  0.25",
        "0.25, 0.374,  0.25,  0.25",
        "0.3,  0.45,   0.6,   0.6",
        "0.3,  0.15,   0.0,   0.3",
        "1,    2.5,    2,     3",
        "1,    0,      0,     0",
        "0.1,  7.3,    7.3,   7.3"
    })
    void roundsToTheStepByTheTieRule(String step, String value, String even, String away) {
        assertThat(rule(step, Ties.TO_EVEN).round(new BigDecimal(value))).isEqualTo(new BigDecimal(even));
        assertThat(rule(step, Ties.AWAY_FROM_ZERO).round(new BigDecimal(value))).isEqualTo(new BigDecimal(away));
        assertThat(rule(step, Ties.TO_EVEN).round(Double.parseDouble(value))).isEqualTo(new BigDecimal(even));
        assertThat(rule(step, Ties.AWAY_FROM_ZERO).round(Double.parseDouble(value)))
                .isEqualTo(new BigDecimal(away));
    }

    /** On paper 5.35 - 0.3 is 5.05 and 5.35 - 5 is 0.35: both ties. In binary the second is 0.349 999 999 999 999 64. */
    @Test
    void readsADifferenceAsItStandsOnPaper() {
        double air = 5.35 - 0.3;
        assertThat(RoundingRule.withoutNoise(air)).isEqualByComparingTo("5.05");
        assertThat(rule("0.1", Ties.TO_EVEN).round(air)).isEqualTo(new BigDecimal("5.0"));
        assertThat(rule("0.1", Ties.AWAY_FROM_ZERO).round(air)).isEqualTo(new BigDecimal("5.1"));
        double factor = 5.35 - 5;
        assertThat(factor).isLessThan(0.35);
        assertThat(RoundingRule.withoutNoise(factor)).isEqualByComparingTo("0.35");
        assertThat(rule("0.1", Ties.TO_EVEN).round(factor)).isEqualTo(new BigDecimal("0.4"));
        assertThat(rule("0.1", Ties.AWAY_FROM_ZERO).round(factor)).isEqualTo(new BigDecimal("0.4"));
    }

    /** An exact value is a tie only when it is one to its last digit: 0.05 and a bit is nearer to 0.1. */
    @Test
    void seesTheLastDigitOfAnExactValue() {
        assertThat(rule("0.1", Ties.TO_EVEN).round(new BigDecimal("0.0500000000000000001")))
                .isEqualTo(new BigDecimal("0.1"));
        assertThat(rule("0.1", Ties.AWAY_FROM_ZERO).round(new BigDecimal("0.0499999999999999999")))
                .isEqualTo(new BigDecimal("0.0"));
    }

    @Test
    void refusesAStepThatIsNotGreaterThanZeroAndAValueThatIsNoNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rule("0", Ties.TO_EVEN))
                .withMessage("step must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> rule("-0.1", Ties.TO_EVEN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rule("0.1", Ties.TO_EVEN).round(Double.NaN))
                .withMessage("computed must be a finite number, but is NaN");
    }

    @Test
    void namesItsTieRulesAsTheProfilesDo() {
        assertThat(Ties.TO_EVEN.symbol()).isEqualTo("even");
        assertThat(Ties.AWAY_FROM_ZERO.symbol()).isEqualTo("away");
    }

    /** A rounded value is a multiple of the step, no further than half a step away, and stays when rounded again. */
    @ParameterizedTest
    @ValueSource(strings = {"0.01", "0.05", "0.1", "0.125", "0.2", "0.25", "0.3", "1"})
    void landsOnTheNearestStepAndStaysThere(String stepText) {
        BigDecimal step = new BigDecimal(stepText);
        SplittableRandom random = new SplittableRandom(20261125);
        for (Ties ties : Ties.values()) {
            RoundingRule rule = rule(stepText, ties);
            for (int i = 0; i < 500; i++) {
                BigDecimal value = BigDecimal.valueOf(random.nextInt(-20_000, 20_000), 3);
                BigDecimal rounded = rule.round(value);
                assertThat(rounded.remainder(step)).isEqualByComparingTo(BigDecimal.ZERO);
                assertThat(rounded.subtract(value).abs().multiply(BigDecimal.valueOf(2)))
                        .isLessThanOrEqualTo(step);
                assertThat(rule.round(rounded)).isEqualTo(rounded);
                assertThat(rule.round(value.negate())).isEqualByComparingTo(rounded.negate());
            }
        }
    }
}
