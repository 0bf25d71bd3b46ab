package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.print.page.Words;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.TrialColumns;

class WordsTest {
    private static final Path SOURCES = Path.of("src/main/java/porebench/print");
    /** Keys put together from a beginning and a symbol. */
    private static final List<String> FAMILIES = List.of(
            "meter.",
            "role.",
            "reason.",
            "check.",
            "amount.",
            "caution.pressure.",
            "card.marked.",
            "card.from-the-reading.",
            "card.formula.",
            "card.target.",
            "card.table.reading.",
            "plant.formula.",
            "sheet.steps-source.",
            "form.row.",
            "state.",
            "plan.need.",
            "recall.is.",
            "recall.act.",
            "holder.",
            "trial.");

    private final Words words = Words.in(Locale.ENGLISH);

    @Test
    void everyKeyUsedExistsAndEveryKeyThatExistsIsUsed() throws IOException {
        Set<String> keys = new TreeSet<>(
                ResourceBundle.getBundle("porebench.print.print", Locale.ROOT).keySet());
        Set<String> onCards = ResourceBundle.getBundle("porebench.evidence.paper.card", Locale.ROOT)
                .keySet();
        assertThat(keys).doesNotContainAnyElementsOf(onCards);
        keys.addAll(onCards);
        Set<String> literals = literals();
        Set<String> used = new TreeSet<>(literals);
        used.retainAll(keys);
        keys.stream()
                .filter(key ->
                        FAMILIES.stream().anyMatch(family -> key.startsWith(family) && literals.contains(family)))
                .forEach(used::add);
        assertThat(used).isEqualTo(keys);
        // Whatever looks like a key of this bundle is one.
        assertThat(
                        literals.stream()
                                .filter(
                                        text -> text.matches(
                                                "(print|plan|register|sheet|field|step|trial|caution|failed|what|calibration|form|simulated)\\.[a-z0-9.-]*[a-z0-9]")))
                .allMatch(keys::contains);
    }

    /** The meter of all rows stands at the head of the sheet. */
    @Test
    void everyColumnWrittenAtTheBenchHasAHeadingAndNoOtherHas() {
        Set<String> columns = TrialColumns.AT_THE_BENCH.stream()
                .filter(column -> column != TrialColumns.METER)
                .map(column -> "trial." + column.name())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(ResourceBundle.getBundle("porebench.print.print", Locale.ROOT).keySet().stream()
                        .filter(key -> key.startsWith("trial.")))
                .containsExactlyInAnyOrderElementsOf(columns);
    }

    @Test
    void everyColumnOfACalibrationsRowsHasAHeadingAndNoOtherHas() {
        Set<String> columns = Stream.of(CalibrationColumns.OF_FILL, CalibrationColumns.OF_POINT)
                .flatMap(part -> part.columns().all().stream())
                .map(column -> "form.row." + column.name())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(ResourceBundle.getBundle("porebench.print.print", Locale.ROOT).keySet().stream()
                        .filter(key -> key.startsWith("form.row.")))
                .containsExactlyInAnyOrderElementsOf(columns);
    }

    private static Set<String> literals() throws IOException {
        Set<String> literals = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            Stream<Path> texts = Stream.of("CardText", "PlantText")
                    .map(name -> Path.of("src/main/java/porebench/evidence/paper", name + ".java"));
            for (Path file :
                    Stream.concat(files.filter(Files::isRegularFile), texts).toList()) {
                Matcher matcher = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"")
                        .matcher(Files.readString(file, StandardCharsets.UTF_8));
                matcher.results().map(found -> found.group(1)).forEach(literals::add);
            }
        }
        return literals;
    }

    @Test
    void everyTextIsAPatternAndKeepsNoQuotes() {
        ResourceBundle bundle = ResourceBundle.getBundle("porebench.print.print", Locale.ROOT);
        for (String key : bundle.keySet()) {
            assertThat(words.say(key, "1", "2", "3")).as(key).doesNotContain("{", "}", "'");
        }
    }

    @Test
    void numbersKeepTheirDecimalsAndHaveATrueMinus() {
        assertThat(words.number(new BigDecimal("0.30"))).isEqualTo("0.30");
        assertThat(words.number(new BigDecimal("-0.25"))).isEqualTo("\u22120.25");
        assertThat(words.number(new BigDecimal("12345"))).isEqualTo("12345");
        assertThat(words.number(new BigDecimal("1E+1"))).isEqualTo("10");
        assertThat(words.signed(new BigDecimal("0.3"))).isEqualTo("+0.3");
        assertThat(words.signed(new BigDecimal("-0.3"))).isEqualTo("\u22120.3");
        assertThat(words.signed(new BigDecimal("0.0"))).isEqualTo("0.0");
    }
}
