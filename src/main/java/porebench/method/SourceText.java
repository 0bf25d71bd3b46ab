package porebench.method;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Says in one language where the figures of the named standards come from.
 *
 * <p>The clauses are kept, exported and compared in English; only what is shown of them is said anew. A clause that a
 * laboratory wrote itself stays as it was written, the decimal sign of a named standard's numbers is the reader's. Each file of a named standard has one of the same name with the language
 * behind it, which gives its clauses and no figures.
 */
public final class SourceText {
    private static final List<String> STANDARDS = List.of("astm-c231", "aashto-t152", "en-12350-7", "jis-a1128");

    private static final String FOLDER = "porebench.method.profile.";

    private final Map<String, String> said;

    private SourceText(Map<String, String> said) {
        this.said = said;
    }

    /** Returns the clauses in a language, English where it has no translation. */
    public static SourceText in(Locale locale) {
        Map<String, String> said = new HashMap<>();
        for (String standard : STANDARDS) {
            Texts english = Texts.of(FOLDER + standard, Locale.ROOT);
            Texts other = Texts.of(FOLDER + standard, locale);
            english.keys().forEach(key -> {
                String clause = clauseOf(english.plain(key));
                said.put(clause, FixedNumbers.everyOneIn(locale, clauseOf(other.plain(key))));
            });
        }
        return new SourceText(said);
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
