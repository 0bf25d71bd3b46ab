package porebench.print.page;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.util.Locale;
import porebench.method.Dates;
import porebench.method.SourceText;
import porebench.method.Texts;

/**
 * The words, numbers and dates of cards and sheets in one language, English where there is no translation.
 *
 * <p>Numbers have the decimal sign of the locale but always the digits 0 to 9, so that nothing on a page is outside the typeface.
 */
public final class Words {
    private static final char MINUS = '\u2212';

    private final Texts words;
    private final Locale locale;

    private Words(Locale locale) {
        this.locale = locale;
        this.words = Texts.of("porebench.print.print", locale);
    }

    public static Words in(Locale locale) {
        return new Words(new Locale.Builder()
                .setLocale(locale.stripExtensions())
                .setUnicodeLocaleKeyword("nu", "latn")
                .build());
    }

    /** Returns a text of the bundle with its places filled. */
    public String say(String key, Object... filled) {
        return words.get(key, filled);
    }

    /** Returns a clause or an edition of a named standard in this language; one of the laboratory's own as it is. */
    public String source(String clause) {
        return SourceText.in(locale).say(clause);
    }

    /** Returns a unit; that of air and of a dial's marks in this language, a symbol as it is. */
    public String unit(String unit) {
        return switch (unit) {
            case "% air" -> say("unit.air");
            case "marks" -> say("unit.marks");
            default -> unit;
        };
    }

    /** Returns a number with all its decimals, and a true minus sign where it is negative. */
    public String number(BigDecimal number) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        String digits = format.format(number.abs());
        return number.signum() < 0 ? MINUS + digits : digits;
    }

    /** Returns a number with its sign: plus, minus, or none for 0. */
    public String signed(BigDecimal number) {
        return number.signum() > 0 ? "+" + number(number) : number(number);
    }

    public String date(LocalDate date) {
        return Dates.day(date);
    }
}
