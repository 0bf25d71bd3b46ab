package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every problem ends in what to do: the last sentence of its text, or what stands in it behind a colon or semicolon, begins
 * with an instruction. Whether the instruction is the right one a test cannot tell; a person has to read it.
 */
class ProblemsSayWhatToDoTest {
    private static final Path FOLDER = Path.of("src", "main", "resources", "porebench", "method");

    /** Words inside messages, and places; nothing is wrong in them. */
    private static final Pattern NO_PROBLEM =
            Pattern.compile("(word|place)\\..*|custody\\.(with-.*|card-with|both|more)");

    /** Texts that carry another text, which says what to do; and one that only states who decided. */
    private static final Map<String, String> EXCEPTIONS = Map.ofEntries(
            Map.entry("issue.doubt-of-trial", "carries the doubt"),
            Map.entry("group.of-member", "carries the problem of the mix"),
            Map.entry("register.drifted", "carries why"),
            Map.entry("issue.drifted", "carries why"),
            Map.entry("command.failed", "carries what failed"),
            Map.entry("command.failed-because", "carries what failed"),
            Map.entry("cardcheck.line-gone", "stands below cardcheck.altered, which says what to do"),
            Map.entry("cardcheck.line-added", "stands below cardcheck.altered, which says what to do"),
            Map.entry("register.doubt-taken-on", "somebody answers for it already"),
            Map.entry("register.doubts-taken-on", "somebody answers for them already"),
            Map.entry("register.meter-overridden", "somebody answers for it already"),
            Map.entry("register.decided-against", "somebody answers for it already"),
            Map.entry("register.kept-by", "states by which decision the factor is in force"));

    /** What a technician is told to do. */
    private static final Set<String> VERBS = Set.of(
            ("Add Ask Begin Calibrate Call Check Choose Close Collect Compare Complete Confirm Consider Copy Correct Create Do"
                            + " Draft Export Fill Find Forget Get Give Hand Have Import Issue Keep Leave Let Look Make Move"
                            + " Name Note Open Photograph Plan Print Put Read Record Register Remove Repair Report Restore"
                            + " Run Save Say Send Set Shorten Split Strike Take Test Type Use Wait Weigh Work Write")
                    .split(" "));

    /** Where nothing is wrong at all, that is said in these words. */
    private static final List<String> NOTHING = List.of("Nothing needs doing.", "No hace falta nada.");

    private static final Pattern SPANISH =
            Pattern.compile("([Nn]o )?\\p{L}+[aeií]r(se)?(l[aeo]s?)?\\b.*|\\p{L}+[áéí]r(se)?l[ao]s?\\b.*");
    private static final Pattern VALUES_AT_THE_END = Pattern.compile("[\\s:]*(\\{\\d}\\s*)+$");

    private static Map<String, String> problems(String name) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(FOLDER.resolve(name), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        Map<String, String> problems = new TreeMap<>();
        texts.stringPropertyNames().stream()
                .filter(key -> !NO_PROBLEM.matcher(key).matches())
                .forEach(key -> problems.put(key, texts.getProperty(key)));
        return problems;
    }

    private static List<String> lastSentence(String text) {
        String told = VALUES_AT_THE_END.matcher(text).replaceFirst("");
        String[] sentences = told.split("(?<=[.?!])\\s+");
        String last = sentences[sentences.length - 1];
        return List.of(("; " + last).split("[:;,]\\s+"));
    }

    static boolean saysWhatToDo(String text, boolean english) {
        return NOTHING.stream().anyMatch(text::endsWith)
                || lastSentence(text).stream().anyMatch(part -> english ? beginsWithAVerb(part) : spanish(part));
    }

    private static boolean beginsWithAVerb(String part) {
        String word = part.split("\\s")[0];
        return !word.isEmpty() && VERBS.contains(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }

    private static boolean spanish(String part) {
        return SPANISH.matcher(part).matches();
    }

    @ParameterizedTest
    @ValueSource(strings = {"problems.properties", "problems_es.properties"})
    void everyProblemEndsInWhatToDo(String bundle) throws IOException {
        boolean english = !bundle.contains("_");
        Map<String, String> silent = problems(bundle).entrySet().stream()
                .filter(text -> !EXCEPTIONS.containsKey(text.getKey()))
                .filter(text -> !saysWhatToDo(text.getValue(), english))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        assertThat(silent)
                .as("texts of %s that do not end in what to do", bundle)
                .isEmpty();
    }

    @Test
    void everyExceptionIsOne() throws IOException {
        Map<String, String> english = problems("problems.properties");
        assertThat(english.keySet()).containsAll(EXCEPTIONS.keySet());
        EXCEPTIONS
                .keySet()
                .forEach(key -> assertThat(saysWhatToDo(english.get(key), true))
                        .as("%s says what to do and is no exception", key)
                        .isFalse());
    }

    @Test
    void everyVerbIsUsed() throws IOException {
        Set<String> used = new TreeSet<>();
        problems("problems.properties")
                .values()
                .forEach(text -> lastSentence(text).stream()
                        .map(part -> part.split("\\s")[0])
                        .filter(word -> !word.isEmpty())
                        .forEach(word -> used.add(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))));
        assertThat(used).containsAll(VERBS);
    }

    @Test
    void aTextThatOnlyComplainsIsFound() {
        assertThat(saysWhatToDo("Meter {0} is out of service.", true)).isFalse();
        assertThat(saysWhatToDo("Make it again? Meter {0} is out of service.", true))
                .isFalse();
        assertThat(saysWhatToDo("Meter {0} is out of service. Use another.", true))
                .isTrue();
        assertThat(saysWhatToDo("If it goes on, say why.", true)).isTrue();
        assertThat(saysWhatToDo("El medidor {0} está fuera de servicio.", false))
                .isFalse();
        assertThat(saysWhatToDo("El medidor {0} tiene una fuga. Repararlo.", false))
                .isTrue();
        assertThat(saysWhatToDo("El lugar {0}.", false)).isFalse();
    }
}
