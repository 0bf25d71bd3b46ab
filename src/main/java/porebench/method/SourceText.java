package porebench.method;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/**
 * Says in one language where the figures of the named standards come from.
 *
 * <p>The clauses are kept, exported and compared in English; only what is shown of them is said anew. A clause that a
 * laboratory wrote itself stays as it was written, the decimal sign of a named standard's numbers is the reader's. Each file of a named standard has one of the same name with the language
 * behind it, which gives its clauses and no figures.
 */
public final class SourceText {
    private static final List<String> STANDARDS = List.of("astm-c231", "aashto-t152", "en-12350-7", "jis-a1128");

    private final Map<String, String> said;

    private SourceText(Map<String, String> said) {
        this.said = said;
    }

    /** Returns the clauses in a language, English where it has no translation. */
    public static SourceText in(Locale locale) {
        Map<String, String> said = new HashMap<>();
        for (String standard : STANDARDS) {
            ResourceBundle english = bundle(standard, Locale.ROOT);
            ResourceBundle other = bundle(standard, locale);
            english.keySet().forEach(key -> {
                String clause = clauseOf(english.getString(key));
                said.put(clause, FixedNumbers.everyOneIn(locale, clauseOf(other.getString(key))));
            });
        }
        return new SourceText(said);
    }

    private static ResourceBundle bundle(String standard, Locale locale) {
        return ResourceBundle.getBundle(
                "porebench.method.profile." + standard,
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** Returns what stands behind value and mark; the whole line where it has neither, as that of an edition. */
    private static String clauseOf(String line) {
        return line.substring(line.lastIndexOf('|') + 1).strip();
    }

    /** Returns a clause, or the edition of a standard, in this language. */
    public String say(String clause) {
        return said.getOrDefault(clause, clause);
    }
}
