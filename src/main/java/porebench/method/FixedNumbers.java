package porebench.method;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Writes the numbers that stand fixed in a text, such as the sieve of 37.5 mm, with the decimal sign of the reader.
 *
 * <p>In a bundle such a number stands in brackets and with a point in every language, {@code [37.5]}: the sign is the reader's
 * country's, not the language's; Spanish is written with a point in Mexico and with a comma in Spain. Digits stay 0 to 9.
 */
public final class FixedNumbers {
    private static final Pattern FIXED = Pattern.compile("\\[(\\d+)\\.(\\d+)]");
    private static final Pattern ANY = Pattern.compile("(?<=\\d)\\.(?=\\d)");

    private FixedNumbers() {}

    /** Returns a text of a bundle with its fixed numbers written out. */
    public static String in(Locale locale, String text) {
        return FIXED.matcher(text).replaceAll("$1" + sign(locale) + "$2");
    }

    /** Returns a text that holds no numbers but decimal ones, such as a clause, with all of them in the reader's writing. */
    static String everyOneIn(Locale locale, String text) {
        return ANY.matcher(text).replaceAll(String.valueOf(sign(locale)));
    }

    private static char sign(Locale locale) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
        return symbols.getZeroDigit() == '0' ? symbols.getDecimalSeparator() : '.';
    }
}
