package porebench.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import porebench.statistics.comparison.ComparisonVerdict;

/**
 * A comparison of trials before and after a change as it stood when somebody decided on it, each figure with six digits.
 *
 * @param trialsBefore how many trials were compared from before the change
 * @param meanBefore their mean, in % air
 * @param trialsAfter how many from after it
 * @param meanAfter their mean, in % air
 * @param difference after less before, in % air
 * @param differenceLow the lower end of its 95 % interval, in % air
 * @param differenceHigh the upper end, in % air
 * @param t Welch's t
 * @param degreesOfFreedom of t
 * @param p the probability of so large a difference when nothing changed
 * @param margin how far a factor may move before it matters, in % air
 * @param equivalenceLow the lower end of the 90 % interval, which must lie within the margin, in % air
 * @param equivalenceHigh the upper end, in % air
 * @param power the probability that so many trials show equivalence when nothing changed
 * @param trialsNeeded how many more after the change it took for a power of 80 %; empty where no number was enough
 * @param verdict what the comparison said
 */
public record DecidedFigures(
        int trialsBefore,
        BigDecimal meanBefore,
        int trialsAfter,
        BigDecimal meanAfter,
        BigDecimal difference,
        BigDecimal differenceLow,
        BigDecimal differenceHigh,
        BigDecimal t,
        BigDecimal degreesOfFreedom,
        BigDecimal p,
        BigDecimal margin,
        BigDecimal equivalenceLow,
        BigDecimal equivalenceHigh,
        BigDecimal power,
        Optional<Integer> trialsNeeded,
        ComparisonVerdict verdict) {
    private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
    private static final int DECIMALS = 12;

    /** Returns a computed figure as it is kept: with six digits, and none beyond the twelfth decimal. */
    public static BigDecimal figure(double computed) {
        BigDecimal rounded = BigDecimal.valueOf(computed)
                .round(DIGITS)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
