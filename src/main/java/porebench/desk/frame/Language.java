package porebench.desk.frame;

import java.util.Arrays;
import java.util.Locale;

/** The language a person chose for the window, or that of the machine. */
enum Language {
    MACHINE("machine", Locale.ROOT),
    ENGLISH("en", Locale.ENGLISH),
    SPANISH("es", Locale.forLanguageTag("es"));

    private final String symbol;
    private final Locale locale;

    Language(String symbol, Locale locale) {
        this.symbol = symbol;
        this.locale = locale;
    }

    /** Returns the word by which settings know the language. */
    String symbol() {
        return symbol;
    }

    /** Returns the language with a symbol; that of the machine for any other word. */
    static Language ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(language -> language.symbol.equals(symbol))
                .findFirst()
                .orElse(MACHINE);
    }

    /**
     * Returns the language and number format of the window.
     *
     * @param machine those of the machine; kept where it speaks the language already, because its country has its own
     *     decimal sign
     */
    Locale on(Locale machine) {
        return this == MACHINE || machine.getLanguage().equals(locale.getLanguage()) ? machine : locale;
    }
}
