package porebench.app;

import java.util.Locale;
import java.util.Map;

/** The language and country of whoever reads: those of the machine, or another one named for this program alone. */
final class ReaderLanguage {
    /** Names a language by its tag (BCP 47), such as {@code fr}, {@code es-ES} or {@code de_CH}. */
    static final String VARIABLE = "POREBENCH_LANGUAGE";

    private ReaderLanguage() {}

    /**
     * Returns what the environment names; a language named without its country has that of the machine where the machine speaks it,
     * and what is no tag is passed over.
     *
     * @param environment the variables
     * @param machine what the machine speaks
     */
    static Locale of(Map<String, String> environment, Locale machine) {
        String tag = environment
                .getOrDefault(VARIABLE, "")
                .strip()
                .replaceFirst("\\..*", "")
                .replace('_', '-');
        Locale named = Locale.forLanguageTag(tag);
        if (named.getLanguage().isEmpty()) {
            return machine;
        }
        boolean isSpoken = named.getCountry().isEmpty() && named.getLanguage().equals(machine.getLanguage());
        return isSpoken ? machine : named;
    }
}
