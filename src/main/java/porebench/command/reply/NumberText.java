package porebench.command.reply;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import porebench.method.RoundingRule;

/** Numbers as people read them: in their locale, with the decimals that mean something. */
public final class NumberText {
    /** What stands where there is no number. */
    public static final String NONE = "-";

    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);

    private static final int P_DECIMALS = 4;
    private static final double LEAST_PROBABILITY = 0.0001;

    private final NumberFormat format;

    public NumberText(Locale locale) {
        format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
    }

    /** Returns a number with all its digits as typed. */
    public String exact(BigDecimal number) {
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        return format.format(number);
    }

    /** Returns a computed number with fixed decimals, ties to even. */
    public String fixed(double number, int decimals) {
        return exact(RoundingRule.withoutNoise(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Returns how numbers are written with fixed decimals. */
    public DoubleFunction<String> fixed(int decimals) {
        return number -> fixed(number, decimals);
    }

    public String fixed(OptionalDouble number, int decimals) {
        return number.isPresent() ? fixed(number.getAsDouble(), decimals) : NONE;
    }

    /** Returns a computed number to six digits, wherever its decimal point is. */
    public String sixDigits(double number) {
        BigDecimal rounded = new BigDecimal(number).round(SIX_DIGITS);
        BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        int exponent = plain.precision() - plain.scale() - 1;
        return Math.abs(exponent) > 15 ? plain.toString() : exact(plain);
    }

    public String sixDigits(OptionalDouble number) {
        return number.isPresent() ? sixDigits(number.getAsDouble()) : NONE;
    }

    /** Returns a probability to four decimals; of a smaller one only that it is smaller. */
    public String probability(double p) {
        return p < LEAST_PROBABILITY ? "< " + fixed(LEAST_PROBABILITY, P_DECIMALS) : fixed(p, P_DECIMALS);
    }

    /** Returns a probability with its sign, to follow the letter p: {@code = 0.0224} or {@code < 0.0001}. */
    public String equalsProbability(double p) {
        return p < LEAST_PROBABILITY ? probability(p) : "= " + probability(p);
    }
}
