package porebench.print.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Languages;
import porebench.method.SourceText;
import porebench.method.Texts;

/**
 * The words, numbers and dates of cards and sheets in one language, English where there is no translation.
 *
 * <p>Numbers have the decimal sign of the locale but always the digits 0 to 9, so that nothing on a page is outside the typeface.
 */
public final class Words {
    private final Texts texts;
    private final CardWords card;
    private final Locale locale;

    private Words(Locale locale, CardWords card) {
        this.locale = locale;
        this.texts = Texts.of("porebench.print.print", locale, Languages.ofNumbers(locale));
        this.card = card;
    }

    public static Words in(Locale locale) {
        return new Words(locale, CardWords.onSheets(locale));
    }

    /** Returns the words of a card. */
    public static Words in(PaperLanguage language) {
        return new Words(language.locale(), CardWords.in(language));
    }

    /** Returns the words that stand on cards. */
    public CardWords card() {
        return card;
    }

    /** Returns a text with its places filled. */
    public String say(String key, Object... filled) {
        return card.keys().contains(key) ? card.say(key, filled) : texts.get(key, filled);
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
        return card.number(number);
    }

    /** Returns a number with its sign: plus, minus, or none for 0. */
    public String signed(BigDecimal number) {
        return card.signed(number);
    }

    public String date(LocalDate date) {
        return card.date(date);
    }
}
