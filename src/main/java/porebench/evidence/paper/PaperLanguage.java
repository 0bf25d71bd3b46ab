package porebench.evidence.paper;

import java.util.Locale;
import porebench.quantity.Symbolic;

/**
 * A language of cards, apart from the language of the window: whoever reads a card need not be whoever prints it.
 *
 * <p>Its locale gives words and the decimal sign. Days stand as year, month, day (ISO 8601) in all: 05/06 is another day on each side
 * of the Atlantic.
 */
public enum PaperLanguage implements Symbolic {
    ENGLISH("en"),
    /** Spanish of the Americas: concreto, a decimal point. */
    SPANISH_AMERICAS("es-419"),
    /** Spanish of Spain: hormigón, a decimal comma. */
    SPANISH_SPAIN("es-ES"),
    FRENCH("fr"),
    GERMAN("de");

    private final Locale locale;

    PaperLanguage(String tag) {
        this.locale = Locale.forLanguageTag(tag);
    }

    /** Returns its tag by BCP 47: {@code en}, {@code es-419}, {@code es-ES}, {@code fr} or {@code de}. */
    @Override
    public String symbol() {
        return locale.toLanguageTag();
    }

    public Locale locale() {
        return locale;
    }

    /** Returns the language of cards nearest to a language and country; English where there is none. */
    public static PaperLanguage of(Locale wanted) {
        return switch (wanted.getLanguage()) {
            case "es" -> wanted.getCountry().equals("ES") ? SPANISH_SPAIN : SPANISH_AMERICAS;
            case "fr" -> FRENCH;
            case "de" -> GERMAN;
            default -> ENGLISH;
        };
    }
}
