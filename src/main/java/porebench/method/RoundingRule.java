package porebench.method;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import porebench.quantity.Require;

/**
 * How a value is rounded, once, when it is reported.
 *
 * <p>A computed value is first read at 12 significant digits, which takes away the noise of binary fractions: 5.35 - 0.3
 * is 5.05 and counts as a tie. Source of the tie rule: ASTM E29, rounding method (recalled).
 *
 * @param step the step of the reported value, greater than 0, in the unit of the value
 * @param ties what happens to a value half way between two steps
 * @param clause where the rule stands, for people to look it up
 */
public record RoundingRule(BigDecimal step, Ties ties, String clause) {
    private static final MathContext WITHOUT_BINARY_NOISE = new MathContext(12, RoundingMode.HALF_EVEN);

    public RoundingRule {
        Require.positive("step", step.doubleValue());
    }

    /** Returns a computed value without the noise of binary fractions: read at 12 significant digits. */
    public static BigDecimal withoutNoise(double computed) {
        return new BigDecimal(Require.finite("computed", computed)).round(WITHOUT_BINARY_NOISE);
    }

    /** Returns a computed value rounded to the step, with as many decimals as the step has. */
    public BigDecimal round(double computed) {
        return round(withoutNoise(computed));
    }

    /** Returns an exact value rounded to the step, with as many decimals as the step has. */
    public BigDecimal round(BigDecimal exact) {
        BigDecimal[] stepsAndRest = exact.divideAndRemainder(step);
        // The rest against half a step, as a number with the same nearest whole: 0.25, 0.5 or 0.75 of a step.
        int half = stepsAndRest[1].abs().multiply(BigDecimal.valueOf(2)).compareTo(step);
        BigDecimal part = new BigDecimal("0.5").add(new BigDecimal("0.25").multiply(BigDecimal.valueOf(half)));
        BigDecimal steps = stepsAndRest[0]
                .add(part.multiply(BigDecimal.valueOf(stepsAndRest[1].signum())))
                .setScale(0, ties.mode());
        return steps.multiply(step).setScale(step.scale(), RoundingMode.UNNECESSARY);
    }
}
