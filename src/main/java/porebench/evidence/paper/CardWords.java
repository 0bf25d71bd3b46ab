package porebench.evidence.paper;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import porebench.method.Dates;
import porebench.method.Languages;
import porebench.method.Texts;

/** Words, numbers and days as they stand on cards, in one language; the digits are 0 to 9 in every one. */
public final class CardWords {
    private static final char MINUS = '\u2212';

    private final Texts texts;
    private final Set<String> keys;
    private final char decimalSign;

    private CardWords(Locale words, Locale numbers) {
        Locale locale = Languages.ofNumbers(numbers);
        this.decimalSign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        this.texts = Texts.of("porebench.evidence.paper.card", words, locale);
        this.keys = Set.copyOf(texts.keys());
    }

    public static CardWords in(PaperLanguage language) {
        return new CardWords(language.locale(), language.locale());
    }

    /** Returns the words that sheets share with cards, in the language and with the numbers of a locale. */
    public static CardWords onSheets(Locale locale) {
        return new CardWords(locale, locale);
    }

    /** Returns a text with its places filled. */
    public String say(String key, Object... filled) {
        return texts.get(key, filled);
    }

    /** Returns the keys of all texts. */
    public Set<String> keys() {
        return keys;
    }

    /** Returns a number with all its decimals, and a true minus sign where it is negative. */
    public String number(BigDecimal number) {
        String digits = number.abs().toPlainString().replace('.', decimalSign);
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
