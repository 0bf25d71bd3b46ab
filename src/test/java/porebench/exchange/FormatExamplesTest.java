package porebench.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.NeedsTableValidator;
import porebench.TableValidator;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueRow;
import porebench.exchange.schema.DataPackage;
import porebench.exchange.sheet.Format;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.profile.Profiles;
import porebench.record.Kept;

/** Each example in docs/formats.md is read by the reader that reads such a file, without a problem. */
class FormatExamplesTest {
    private static final Pattern EXAMPLE = Pattern.compile("```csv\n(.*?)```", Pattern.DOTALL);
    private static final String PROFILES = "profiles.csv";

    /** Files that say one thing, or that have fewer things in the demo: they have fewer lines. */
    private static final Map<String, Integer> SHORTER = Map.of("laboratory.csv", 2, "change-decisions.csv", 4);

    @TempDir
    Path folder;

    private static Map<String, List<String>> bySection() throws IOException {
        Map<String, List<String>> examples = new LinkedHashMap<>();
        for (String section :
                Files.readString(Path.of("docs", "formats.md"), UTF_8).split("\n## ", -1)) {
            List<String> found = new ArrayList<>();
            Matcher matcher = EXAMPLE.matcher(section);
            while (matcher.find()) {
                found.add(matcher.group(1));
            }
            examples.put(
                    section.substring(0, section.indexOf('\n'))
                            .replaceFirst(": `.*", "")
                            .replace("`", ""),
                    found);
        }
        return examples;
    }

    static List<Format<? extends Kept>> formats() {
        return CsvSheets.FORMATS;
    }

    private static String example(Format<?> format) throws IOException {
        List<String> examples = bySection().get(format.fileName());
        assertThat(examples).as(format.fileName()).hasSize(1);
        String text = examples.get(0);
        return format.fileName().equals(PROFILES) ? text + otherFigures(text) : text;
    }

    /** A profile states every figure; five lines show how. */
    private static String otherFigures(String there) {
        return Arrays.stream(FigureName.values())
                .filter(name -> !there.contains("," + name.symbol() + ","))
                .map(name -> {
                    Figure figure = Profiles.standard().figure(name);
                    return "own,,,," + name.symbol() + "," + figure.value() + ","
                            + figure.mark().symbol() + ",\"" + figure.clause().replace("\"", "\"\"") + "\"\n";
                })
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @MethodSource("formats")
    void anExampleIsReadWithoutAProblem(Format<? extends Kept> format) throws IOException {
        List<String> lines = bySection().get(format.fileName()).get(0).lines().toList();
        assertThat(lines).as(format.fileName()).hasSize(SHORTER.getOrDefault(format.fileName(), 5));
        Sheet<Kept> sheet = CsvSheets.records(format.fileName(), example(format).getBytes(UTF_8));
        assertThat(sheet.problems()).as(format.fileName()).isEmpty();
        assertThat(sheet.rows()).as(format.fileName()).isNotEmpty();
        assertThat(sheet.values())
                .as(format.fileName())
                .allSatisfy(record -> assertThat(record).isInstanceOf(format.type()));
    }

    @Test
    @NeedsTableValidator
    void theSchemaSaysTheSameOfThem() throws IOException, InterruptedException {
        for (Format<? extends Kept> format : CsvSheets.FORMATS) {
            Files.writeString(folder.resolve(format.fileName()), example(format), UTF_8);
        }
        Files.writeString(folder.resolve(DataPackage.FILE), DataPackage.of(CsvSheets.FORMATS, false), UTF_8);
        TableValidator.Said said = TableValidator.ask(folder.resolve(DataPackage.FILE), folder);
        assertThat(said.text()).contains("21 files, 0 faults");
    }

    private Path file(String text) throws IOException {
        Path file = folder.resolve("values.csv");
        Files.writeString(file, text, UTF_8);
        return file;
    }

    private static void assertClean(Sheet<?> sheet, int rows) {
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows()).hasSize(rows);
    }

    @Test
    void theListsAndTablesOfValuesAreReadToo() throws IOException {
        Map<String, List<String>> examples = bySection();
        CsvSheets sheets = new CsvSheets();
        assertClean(sheets.values(file(examples.get("A list of values").get(0))), 4);
        Sheet<ValueRow> before = sheets.readings(
                file(examples.get("Trials before and after a change").get(0)), "determination");
        assertClean(before, 4);
        assertClean(
                sheets.table(file(examples.get("Results of laboratories").get(0)), List.of("laboratory", "level")), 4);
        List<List<String>> columns = Stream.of("set", "subgroup", "reading_id,air_pct", "operator,sample,repeat", "")
                .map(names -> names.isEmpty() ? List.<String>of() : List.of(names.split(",")))
                .toList();
        List<String> tables = examples.get("Tables of values");
        assertThat(tables).hasSize(columns.size());
        for (int i = 0; i < tables.size(); i++) {
            assertThat(tables.get(i).lines()).hasSize(5);
            assertClean(sheets.table(file(tables.get(i)), columns.get(i)), 4);
        }
    }
}
