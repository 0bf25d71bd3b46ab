package porebench;

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
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.method.Texts;

/** A number that stands fixed in a text is written for the program to put the reader's decimal sign into it. */
class FixedNumbersOfTextsTest {
    private static final Path TEXTS = TextFiles.FOLDER;
    private static final Pattern BARE = Pattern.compile("(?<![\\[\\d])\\d+[.,]\\d+(?!])");
    private static final Pattern FIXED = Pattern.compile("\\[\\d+\\.\\d+]");

    /** What a person types on the command line or into a file, where the sign is always a point, and names of versions. */
    private static final Set<String> WITH_A_POINT = Set.of(
            "about.versions",
            "howto.OPERATORS",
            "porebench.usage.description.2",
            "porebench.factor.division",
            "porebench.air.division",
            "porebench.meter.division",
            "porebench.budget.division",
            "porebench.chart.lambda",
            "porebench.chart.slack",
            "usage.number");

    private static List<Path> texts() throws IOException {
        try (Stream<Path> files = Files.walk(TEXTS)) {
            return files.filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.getParent().endsWith("theme"))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isProfile(Path file) {
        return file.getParent().endsWith("profile");
    }

    private static Properties read(Path file) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        return texts;
    }

    @Test
    void noTextHoldsABareDecimalNumber() throws IOException {
        List<String> bare = new ArrayList<>();
        Set<String> excepted = new TreeSet<>();
        for (Path file : texts()) {
            if (isProfile(file)) {
                continue;
            }
            read(file).forEach((key, text) -> {
                if (BARE.matcher((String) text).find()) {
                    if (WITH_A_POINT.contains(key)) {
                        excepted.add((String) key);
                    } else {
                        bare.add(file.getFileName() + ": " + key + " = " + text);
                    }
                }
            });
        }
        assertThat(bare).as("texts with a decimal number out of brackets").isEmpty();
        assertThat(excepted).as("exceptions that are still needed").containsExactlyInAnyOrderElementsOf(WITH_A_POINT);
    }

    /** Clauses are kept, exported and compared as they stand in English, with a point; so their translations have one too. */
    @Test
    void theClausesOfStandardsAreWrittenWithAPoint() throws IOException {
        for (Path file : texts()) {
            if (isProfile(file)) {
                read(file)
                        .values()
                        .forEach(text ->
                                assertThat((String) text).as(file.toString()).doesNotContainPattern("\\d,\\d"));
            }
        }
    }

    @Test
    void aTextHasTheSameFixedNumbersInEveryLanguage() throws IOException {
        for (Path file : texts()) {
            if (isTranslation(file) || isProfile(file)) {
                continue;
            }
            Properties english = read(file);
            for (Path other : translations(file)) {
                read(other)
                        .forEach((key, text) -> assertThat(fixed((String) text))
                                .as("%s in %s", key, other)
                                .isEqualTo(fixed(english.getProperty((String) key))));
            }
        }
    }

    private static boolean isTranslation(Path file) {
        return file.getFileName().toString().matches(".*_(es|fr|de)(_[A-Z]{2})?\\.properties");
    }

    /** Returns the Spanish of a bundle, which is always there, and what other languages it has. */
    private static List<Path> translations(Path english) throws IOException {
        String name = english.getFileName().toString().replace(".properties", "");
        List<Path> found = texts().stream()
                .filter(file -> file.getParent().equals(english.getParent()))
                .filter(file -> file.getFileName().toString().startsWith(name + "_") && isTranslation(file))
                .toList();
        assertThat(found).contains(english.resolveSibling(name + "_es.properties"));
        return found;
    }

    private static List<String> fixed(String text) {
        return FIXED.matcher(text).results().map(MatchResult::group).sorted().toList();
    }

    @Test
    void bundlesAreLookedUpInOnePlaceWhichWritesTheirFixedNumbersOut() throws IOException {
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            assertThat(sources.filter(file -> file.toString().endsWith(".java"))
                            .filter(file -> says(file, "ResourceBundle.getBundle(")))
                    .containsExactly(Path.of("src/main/java/porebench/method/Texts.java"));
        }
        assertThat(Texts.of("porebench.method.problems", Locale.GERMANY).plain("mix.no-aggregate-passes"))
                .contains("37,5 mm");
    }

    private static boolean says(Path file, String words) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8).contains(words);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException("reading " + file, failure);
        }
    }

    @Test
    void aBareNumberWouldBeFound() {
        assertThat(BARE.matcher("more than 37,5 mm").find()).isTrue();
        assertThat(BARE.matcher("more than 37.5 mm").find()).isTrue();
        assertThat(BARE.matcher("more than [37.5] mm, {0}, 8 to 12").find()).isFalse();
    }
}
