package porebench.chart.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text that a plot asks for is in the bundle, and every text in the bundle is asked for. */
class PlotWordsTest {
    private static final Path SOURCES = Path.of("src/main/java/porebench/chart");
    private static final Path BUNDLE = Path.of("src/main/resources/porebench/chart/chart.properties");
    private static final Pattern KEY =
            Pattern.compile("\"((?:axis|label|legend|note|notice|said|tip)\\.[a-z0-9-]+|nothing)\"");

    @Test
    void keysAskedForAreThoseThatExist() throws IOException {
        Set<String> asked = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher matcher = KEY.matcher(Files.readString(file, StandardCharsets.UTF_8));
                while (matcher.find()) {
                    asked.add(matcher.group(1));
                }
            }
        }
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        assertThat(asked).isNotEmpty().isEqualTo(new TreeSet<>(words.stringPropertyNames()));
    }

    @Test
    void aFactorIsSaidToTwoDecimalsTiesToEven() {
        PlotWords words = new PlotWords(Locale.ENGLISH);
        assertThat(words.percent(0.125)).isEqualTo("0.12");
        assertThat(words.percent(5.35 - 5.215)).isEqualTo("0.14");
        assertThat(words.percent(-0.3)).isEqualTo("-0.30");
    }
}
