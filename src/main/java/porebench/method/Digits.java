package porebench.method;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How many digits a computed figure is shown with wherever a person reads it, so that it never says more than its dial, its trials
 * or its model can. Files and what is computed on keep all of them.
 */
public final class Digits {
    /** Decimals of air, of a factor and of what is quoted beside it, in % air: the best dial is read to a twentieth. */
    public static final int AIR = 2;

    /** Decimals of a standard deviation or of a part of an uncertainty, in % air: two digits of it count. */
    public static final int SCATTER = 3;

    /** Digits of an uncertainty that count. */
    public static final int UNCERTAINTY = 2;

    private static final int MOST_DECIMALS = 9;
    private static final double HALF = 0.5;

    private Digits() {}

    /** Returns a share of a whole in whole per cent, without its sign; of one that is there but too small, that it is smaller than 1. */
    public static String share(double share) {
        BigDecimal percent = RoundingRule.withoutNoise(100 * share);
        return percent.signum() > 0 && percent.doubleValue() <= HALF
                ? "< 1"
                : percent.setScale(0, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Returns with how many decimals a number has some digits that count; none where its whole digits are more. */
    public static int decimals(double number, int digits) {
        if (number == 0) {
            return 0;
        }
        BigDecimal rounded = RoundingRule.withoutNoise(number).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int magnitude = rounded.precision() - rounded.scale() - 1;
        return Math.max(0, Math.min(MOST_DECIMALS, digits - 1 - magnitude));
    }
}
