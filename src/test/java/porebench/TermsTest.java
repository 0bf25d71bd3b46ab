package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.TextFiles.Translation;

/**
 * All texts keep to the words of {@code docs/terms.csv}: no word stands in a text that the table does not want, and every
 * term that the table gives is a term of that language alone. Whether the right concept is meant, only a reader can tell.
 */
class TermsTest {
    private static final Path TABLE = Path.of("docs", "terms.csv");
    private static final Path EXCEPTIONS = Path.of("src", "test", "resources", "terms-exceptions.csv");

    /** The columns of a language: its terms, and its words that are not wanted. */
    private static final Map<String, List<String>> COLUMNS = Map.of(
            "en", List.of("en", "not-en"),
            "es", List.of("es-419", "not-es-419"),
            "es_ES", List.of("es-ES", "not-es-ES"),
            "fr", List.of("fr", "not-fr"),
            "de", List.of("de", "not-de"));

    /** What is no running text: names in code, options, files, and places for values. */
    private static final Pattern CODE =
            Pattern.compile("(?s)```.*?```|<!--.*?-->|`[^`]*`|--[a-z-]+|[\\w./-]+\\.(csv|md|pdf|json)\\b|\\{\\d}");

    private static final Pattern UNICODE = Pattern.compile("\\W+", Pattern.UNICODE_CHARACTER_CLASS);

    private record Exempt(String language, String place, String key, String word) {
        boolean covers(String language, String place, String key, String word) {
            return this.language.equals(language)
                    && this.place.equals(place)
                    && (this.key.equals("*") || this.key.equals(key))
                    && this.word.equals(word);
        }
    }

    /** One text: where it stands, its key, what it says. */
    private record Said(String place, String key, String text) {}

    private static List<List<String>> rows(Path file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                rows.add(cells(line));
            }
        }
        return rows;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean isQuoted = false;
        for (char letter : line.toCharArray()) {
            if (letter == '"') {
                isQuoted = !isQuoted;
            } else if (letter == ',' && !isQuoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    /** Returns the table, row by row, each by its column. */
    private static List<Map<String, String>> table() throws IOException {
        List<List<String>> rows = rows(TABLE);
        List<Map<String, String>> table = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            Map<String, String> named = new LinkedHashMap<>();
            for (int cell = 0; cell < rows.get(0).size(); cell++) {
                named.put(rows.get(0).get(cell), cell < row.size() ? row.get(cell) : "");
            }
            table.add(named);
        }
        return table;
    }

    private static Set<String> unwanted(String language) throws IOException {
        Set<String> unwanted = new TreeSet<>();
        for (Map<String, String> row : table()) {
            Arrays.stream(row.get(COLUMNS.get(language).get(1)).split(";"))
                    .filter(word -> !word.isBlank())
                    .forEach(unwanted::add);
        }
        return unwanted;
    }

    private static List<Exempt> exceptions() throws IOException {
        return rows(EXCEPTIONS).stream()
                .map(row -> new Exempt(row.get(0), row.get(1), row.get(2), row.get(3)))
                .toList();
    }

    private static List<Said> bundles(String language) {
        List<Said> said = new ArrayList<>();
        for (Path bundle : TextFiles.bundles()) {
            Path file = language.equals("en") ? bundle : new Translation(bundle, language).file();
            if (Files.exists(file)) {
                String place = TextFiles.FOLDER.relativize(bundle).toString().replace('\\', '/');
                TextFiles.read(file)
                        .forEach((key, text) ->
                                said.add(new Said(place.replace(".properties", ""), key, text.replace("&", ""))));
            }
        }
        return said;
    }

    private static List<Said> pages() {
        List<Said> said = new ArrayList<>();
        try (Stream<Path> manual = Files.list(Path.of("docs", "manual"))) {
            Stream.concat(
                            Stream.of(Path.of("README.md")),
                            manual.filter(page -> page.toString().endsWith(".md")))
                    .forEach(page -> said.add(new Said(page.toString().replace('\\', '/'), "", read(page))));
        } catch (IOException failure) {
            throw new UncheckedIOException("listing the manual", failure);
        }
        return said;
    }

    private static String read(Path page) {
        try {
            return Files.readString(page, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException("reading " + page, failure);
        }
    }

    /** Returns a text as words with a blank before and behind each. */
    private static String words(String text) {
        String plain = CODE.matcher(text).replaceAll(" # ");
        return " " + UNICODE.matcher(plain).replaceAll(" ").toLowerCase(Locale.ROOT) + " ";
    }

    static boolean holds(String text, String word) {
        return words(text).contains(words(word).replaceAll("\\s+", " "));
    }

    private static List<String> found(List<Said> texts, String language, Set<Exempt> used) throws IOException {
        List<String> found = new ArrayList<>();
        List<Exempt> exceptions = exceptions();
        Set<String> unwanted = unwanted(language);
        for (Said each : texts) {
            for (String word : unwanted) {
                if (holds(each.text(), word)) {
                    List<Exempt> covering = exceptions.stream()
                            .filter(exempt -> exempt.covers(language, each.place(), each.key(), word))
                            .toList();
                    used.addAll(covering);
                    if (covering.isEmpty()) {
                        found.add(language + " " + each.place() + " " + each.key() + ": " + word);
                    }
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "es_ES", "fr", "de"})
    void noTextOfTheProgramHoldsAWordThatIsNotWanted(String language) throws IOException {
        assertThat(bundles(language)).hasSizeGreaterThan(50);
        assertThat(found(bundles(language), language, new HashSet<>()))
                .as("words that docs/terms.csv does not want; exceptions stand in terms-exceptions.csv")
                .isEmpty();
    }

    @Test
    void noPageOfTheManualHoldsAWordThatIsNotWanted() throws IOException {
        assertThat(found(pages(), "en", new HashSet<>()))
                .as("words that docs/terms.csv does not want; exceptions stand in terms-exceptions.csv")
                .isEmpty();
    }

    @Test
    void everyExceptionIsNeeded() throws IOException {
        Set<Exempt> used = new HashSet<>();
        for (String language : COLUMNS.keySet()) {
            found(bundles(language), language, used);
        }
        found(pages(), "en", used);
        assertThat(used).containsExactlyInAnyOrderElementsOf(exceptions());
    }

    @Test
    void everyTermIsThereInEveryLanguageAndSaysHowItIsKnown() throws IOException {
        for (Map<String, String> row : table()) {
            COLUMNS.values()
                    .forEach(columns -> assertThat(row.get(columns.get(0)))
                            .as("%s in %s", row.get("concept"), columns.get(0))
                            .isNotBlank());
            assertThat(row.get("known")).as(row.get("concept")).matches("(seen|recalled)\\b.*");
        }
        assertThat(table()).extracting(row -> row.get("concept")).doesNotHaveDuplicates();
        assertThat(table()).hasSizeGreaterThan(100);
    }

    /** A term of the table is itself no word that the table does not want in that language. */
    @Test
    void noTermIsUnwantedItself() throws IOException {
        for (Map.Entry<String, List<String>> language : COLUMNS.entrySet()) {
            Set<String> unwanted = unwanted(language.getKey());
            for (Map<String, String> row : table()) {
                String term = row.get(language.getValue().get(0));
                assertThat(unwanted.stream().filter(word -> holds(term, word)))
                        .as("%s: %s", language.getKey(), term)
                        .isEmpty();
            }
        }
    }

    /**
     * Where the English text names one of these parts and papers, the other language names it too: the begin of each word of
     * its term stands in the text, since words bend.
     */
    @ParameterizedTest
    @CsvSource({
        "es, air chamber", "es, main air valve", "es, training book", "es, relative density", "es, calibration vessel",
        "fr, air chamber", "fr, relative density", "de, air chamber", "de, main air valve", "de, initial pressure line",
        "de, training book", "de, relative density", "de, calibration vessel",
    })
    void aTermIsUsedWhereItsConceptIsMeant(String language, String english) throws IOException {
        String term = table().stream()
                .filter(row -> row.get("en").equals(english))
                .map(row -> row.get(COLUMNS.get(language).get(0)))
                .findFirst()
                .orElseThrow();
        List<String> begins = Arrays.stream(term.split(" "))
                .filter(word -> word.length() > 3)
                .map(word -> word.substring(0, Math.max(4, word.length() - 3)).toLowerCase(Locale.ROOT))
                .toList();
        List<String> without = new ArrayList<>();
        int meant = 0;
        for (Path bundle : TextFiles.bundles()) {
            Map<String, String> texts = new Translation(bundle, language).texts();
            for (Map.Entry<String, String> each : TextFiles.read(bundle).entrySet()) {
                if (holds(each.getValue(), english)) {
                    meant++;
                    String said = texts.get(each.getKey()).replace("&", "").toLowerCase(Locale.ROOT);
                    if (!begins.stream().allMatch(said::contains)) {
                        without.add(TextFiles.FOLDER.relativize(bundle) + " " + each.getKey() + ": " + said);
                    }
                }
            }
        }
        assertThat(meant).as("texts with %s", english).isPositive();
        assertThat(without)
                .as("texts that say %s otherwise than %s", english, term)
                .isEmpty();
    }

    @Test
    void aWordIsFoundAsAWordOnly() {
        assertThat(holds("Take the lid off.", "lid")).isTrue();
        assertThat(holds("The gauge is valid.", "lid")).isFalse();
        assertThat(holds("Draw\noff water.", "draw off")).isTrue();
        assertThat(holds("See `lid` or --lid.", "lid")).isFalse();
        assertThat(holds("El árido", "árido")).isTrue();
    }
}
