package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every code that the program uses has a message, and every message that exists is used. */
class ProblemCodesTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Path BUNDLE =
            Path.of("src", "main", "resources", "porebench", "method", "problems.properties");
    private static final Pattern MAKES_A_PROBLEM =
            Pattern.compile("Problem\\s*\\.\\s*(error|warning)\\(|new Problem\\(|\\b(error|warning)\\(");
    private static final Pattern CODE = Pattern.compile("(?<!get\\()\"([a-z]+\\.[a-z0-9]+(?:-[a-z0-9]+)*)\"");
    private static final Pattern GAP = Pattern.compile("\\{(\\d+)}");
    private static final List<String> TEXTS = new ArrayList<>();

    @BeforeAll
    static void readSources() throws IOException {
        TEXTS.clear();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                TEXTS.add(Files.readString(file, StandardCharsets.UTF_8));
            }
        }
    }

    static List<String> keys() throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words.stringPropertyNames().stream().sorted().toList();
    }

    private static boolean isUsed(String key) {
        String literal = '"' + (key.startsWith("word.") ? key.substring("word.".length()) : key) + '"';
        return TEXTS.stream().anyMatch(text -> text.contains(literal));
    }

    @Test
    void hasNoMessageThatNobodyUses() throws IOException {
        assertThat(keys().stream().filter(key -> !isUsed(key)))
                .as("messages that no source names")
                .isEmpty();
    }

    @Test
    void hasAMessageForEveryCode() throws IOException {
        Set<String> used = new TreeSet<>();
        for (String text : TEXTS) {
            for (String statement : text.split(";")) {
                if (MAKES_A_PROBLEM.matcher(statement).find()) {
                    CODE.matcher(statement).results().forEach(found -> used.add(found.group(1)));
                }
            }
        }
        assertThat(used).contains("mix.mass-negative", "trial.leak", "air.negative", "bowl.full-too-light");
        assertThat(used).isSubsetOf(keys());
    }

    /** Each value stands in the message once it is said, and the values are numbered without a gap. */
    @ParameterizedTest
    @MethodSource("keys")
    void showsEveryValueAndLeavesNoGap(String key) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        Matcher gaps = GAP.matcher(words.getProperty(key));
        Set<Integer> numbers = new TreeSet<>();
        while (gaps.find()) {
            numbers.add(Integer.valueOf(gaps.group(1)));
        }
        assertThat(numbers)
                .containsExactlyElementsOf(
                        IntStream.range(0, numbers.size()).boxed().toList());
        Object[] values =
                numbers.stream().map(number -> "<value " + number + ">").toArray();
        String said = ProblemText.in(Locale.ENGLISH).say(Problem.error("field", key, values));
        assertThat(said).isNotBlank().doesNotContain("{", "}", "''");
        for (Object value : values) {
            assertThat(said).contains(value.toString());
        }
    }

    /** The bundle is read as ISO 8859-1 by older tools: plain ASCII reads the same everywhere. */
    @Test
    void isPlainAscii() throws IOException {
        assertThat(Files.readString(BUNDLE, StandardCharsets.UTF_8)).matches("\\p{ASCII}*");
    }
}
