package porebench.desk.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import porebench.method.RoundingRule;
import porebench.quantity.Typed;

/**
 * Numbers as a person of one locale types and reads them; the one place where the window does so.
 *
 * <p>The whole input must be a number; thousands separators are refused, because they are read differently elsewhere.
 */
public final class Numbers {
    private final Locale locale;
    private final char decimalSign;

    public Numbers(Locale locale) {
        this.locale = locale;
        this.decimalSign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    /** Reads a number typed with the locale's decimal sign; empty when the text is anything else. */
    public Optional<BigDecimal> parse(String text) {
        String stripped = text.strip();
        if (decimalSign != '.' && stripped.indexOf('.') >= 0) {
            return Optional.empty();
        }
        return Typed.parseNumber(stripped.replace(decimalSign, '.'));
    }

    /** Returns typed digits as they were typed, with the locale's decimal sign. */
    public String show(BigDecimal typed) {
        return typed.toPlainString().replace('.', decimalSign);
    }

    /**
     * Returns a computed value with a fixed number of decimals, rounded once and ties to even.
     *
     * @param decimals digits after the decimal sign, at least 0
     */
    public String show(double computed, int decimals) {
        BigDecimal rounded = RoundingRule.withoutNoise(computed).setScale(decimals, RoundingMode.HALF_EVEN);
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(rounded);
    }
}
