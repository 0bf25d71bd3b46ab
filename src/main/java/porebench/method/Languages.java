package porebench.method;

import java.util.List;
import java.util.Locale;

/** The languages in which every text of the program is there. */
public final class Languages {
    /** English, Spanish as in the Americas and as in Spain, French, German; the first one stands where none of them is asked for. */
    public static final List<Locale> ALL = List.of(
            Locale.ENGLISH,
            Locale.forLanguageTag("es-419"),
            Locale.forLanguageTag("es-ES"),
            Locale.FRENCH,
            Locale.GERMAN);

    private static final String REGION_OF_NUMBERS = "rg";

    private Languages() {}

    /**
     * Returns how the numbers of a locale are written, in digits 0 to 9.
     *
     * @param locale a language whose numbers may be those of another country, by the keyword {@code rg} of Unicode TR 35
     */
    public static Locale ofNumbers(Locale locale) {
        Locale.Builder numbers = new Locale.Builder().setLocale(locale.stripExtensions());
        String region = locale.getUnicodeLocaleType(REGION_OF_NUMBERS);
        if (region != null && region.length() > 2) {
            // The JDK looks at this keyword only where no digits are asked for.
            numbers.setRegion(region.substring(0, 2));
        }
        return numbers.setUnicodeLocaleKeyword("nu", "latn").build();
    }
}
