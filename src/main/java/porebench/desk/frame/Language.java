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
     * <p>The country of the machine decides the decimal sign, whatever the language: Spanish in Mexico and in the United States
     * has the point, in Spain and Argentina the comma; without a country Spanish has the comma, that of Latin America
     * ({@code es-419}) the point. So the locale data of the JDK (CLDR) say.
     *
     * @param machine those of the machine; kept where it speaks the language already
     */
    Locale on(Locale machine) {
        return this == MACHINE || machine.getLanguage().equals(locale.getLanguage())
                ? machine
                : new Locale.Builder()
                        .setLocale(locale)
                        .setRegion(machine.getCountry())
                        .build();
    }
}
