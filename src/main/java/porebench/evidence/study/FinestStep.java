package porebench.evidence.study;

import java.math.BigDecimal;
import java.util.Arrays;

/**
 * The division of the scale that some numbers were read on, as their digits tell it, where no meter says it; the division of
 * a determination is {@link porebench.evidence.MeterScale}'s.
 */
public final class FinestStep {
    private FinestStep() {}

    /** Returns 1 in the last decimal place that any of some numbers needs; 1 for whole numbers. */
    public static BigDecimal of(double... values) {
        int decimals = Arrays.stream(values)
                .mapToInt(
                        value -> BigDecimal.valueOf(value).stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return BigDecimal.ONE.movePointLeft(Math.max(0, decimals));
    }
}
