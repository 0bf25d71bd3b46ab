package porebench.desk.frame;

import java.util.Arrays;
import java.util.Locale;

/** The language a person chose for the window, or that of the machine. */
enum Language {
    MACHINE("machine", Locale.ROOT),
    ENGLISH("en", Locale.ENGLISH),
    /** Spanish of the Americas: concreto. */
    SPANISH_AMERICAS("es-419", Locale.forLanguageTag("es-419")),
    /** Spanish of Spain: hormigón. */
    SPANISH_SPAIN("es-ES", Locale.forLanguageTag("es-ES")),
    FRENCH("fr", Locale.FRENCH),
    GERMAN("de", Locale.GERMAN);

    private static final String SPANISH = "es";
    private static final String SPAIN = "ES";

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

    /** Returns the language with a symbol, also the one by which older settings know Spanish; that of the machine for any other word. */
    static Language ofSymbol(String symbol) {
        if (symbol.equals(SPANISH)) {
            return SPANISH_AMERICAS;
        }
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
     * ({@code es-419}) the point. So the locale data of the JDK (CLDR) say. Which Spanish is the choice of the person alone: where
     * it is not that of the machine's country, the country stands as the one of the numbers ({@code rg} of Unicode TR 35).
     *
     * @param machine those of the machine; kept where it speaks the language already
     */
    Locale on(Locale machine) {
        if (this == MACHINE) {
            return machine;
        }
        String country = machine.getCountry();
        boolean isSpoken = machine.getLanguage().equals(locale.getLanguage());
        if (!locale.getLanguage().equals(SPANISH)) {
            return isSpoken ? machine : inCountry(locale.getLanguage(), country);
        }
        if ((this == SPANISH_SPAIN) == country.equals(SPAIN)) {
            return isSpoken ? machine : inCountry(SPANISH, country);
        }
        return country.length() == 2
                ? new Locale.Builder()
                        .setLocale(locale)
                        .setUnicodeLocaleKeyword("rg", country.toLowerCase(Locale.ROOT) + "zzzz")
                        .build()
                : locale;
    }

    private static Locale inCountry(String language, String country) {
        return new Locale.Builder().setLanguage(language).setRegion(country).build();
    }
}
