package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A text put together by {@link TextPattern} is the one that the JDK's class makes of the same pattern. */
class TextPatternTest {
    private static final Object[] VALUES = {"a", "{1}", "it's", "\u2212", "", "f", "g", "h", "i", "j"};

    private static String jdk(String pattern, Object... values) {
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plain",
                "{0}",
                "{0}{0}",
                "{1} of {0}.",
                "it''s {0}",
                "'{0}' stays",
                "a '{' brace {0} and '}'",
                "an open 'quote {0}",
                "'''{0}'''",
                "''{2}''",
                "a } alone {0}"
            })
    void quotesAndBracesAreTheJdks(String pattern) {
        assertThat(TextPattern.of(pattern).fill(VALUES)).hasValue(jdk(pattern, VALUES));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{0,number}", "{ 0 }", "{12}", "{0", "{", "{x}"})
    void whatIsNoBarePlaceIsLeftToTheJdk(String pattern) {
        assertThat(TextPattern.of(pattern).fill(VALUES)).isEmpty();
    }

    @Test
    void soIsAValueThatIsMissingOrNoText() {
        assertThat(TextPattern.of("{1}").fill("one")).isEmpty();
        assertThat(TextPattern.of("{0}").fill(12)).isEmpty();
        assertThat(TextPattern.of("none").fill(12)).hasValue("none");
    }

    /** Every text of the program, in every language. */
    @Test
    void everyTextOfTheProgramIsTheJdks() throws IOException {
        List<String> patterns = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".properties")).toList()) {
                Properties texts = new Properties();
                try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                    texts.load(reader);
                }
                texts.values().forEach(text -> patterns.add((String) text));
            }
        }
        assertThat(patterns).hasSizeGreaterThan(1000);
        int put = 0;
        for (String pattern : patterns) {
            TextPattern apart = TextPattern.of(pattern);
            put += apart.fill(VALUES).isPresent() ? 1 : 0;
            apart.fill(VALUES).ifPresent(text -> assertThat(text).isEqualTo(jdk(pattern, VALUES)));
        }
        assertThat(put).isGreaterThan(patterns.size() * 9 / 10);
    }
}
