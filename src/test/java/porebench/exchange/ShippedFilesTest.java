package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueRow;
import porebench.exchange.sheet.Format;
import porebench.record.Kept;

/** Every CSV file that is shipped is read, and every column is described. */
class ShippedFilesTest {
    private static final Path FORMS = Path.of("lab-sheets");
    private static final Path DEMO = Path.of("demo-data");
    private static final Path STUDIES = DEMO.resolve("studies");
    private static final Path DESCRIPTION = Path.of("docs/formats.md");

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @Test
    void everyFormatHasABlankFormThatReadsAsNoRows() throws IOException {
        assertThat(files(FORMS)).hasSize(21);
        for (Path form : files(FORMS)) {
            Sheet<Kept> sheet = new CsvSheets().records(form);
            assertThat(sheet.problems()).as(form.toString()).isEmpty();
            assertThat(sheet.rows()).isEmpty();
        }
        for (Format<?> format : CsvSheets.FORMATS) {
            assertThat(FORMS.resolve(format.fileName()))
                    .hasContent(String.join(",", format.columns().all()));
        }
    }

    @Test
    void everyDemoFileIsReadAndLoaded() throws IOException {
        List<Path> demo = new ArrayList<>(files(DEMO));
        demo.addAll(files(DEMO.resolve("airfield")));
        demo.addAll(files(DEMO.resolve("new-ledge")));
        demo.addAll(files(DEMO.resolve("cards")));
        assertThat(demo.stream().map(ShippedFilesTest::nameInDemo))
                .containsExactlyInAnyOrderElementsOf(DemoLaboratory.files());
        for (Path file : demo) {
            Sheet<Kept> sheet = new CsvSheets().records(file);
            assertThat(sheet.problems()).as(file.toString()).isEmpty();
            assertThat(sheet.rows()).isNotEmpty();
            assertThat(sheet.values())
                    .isEqualTo(DemoLaboratory.read(nameInDemo(file)).values());
        }
    }

    private static String nameInDemo(Path file) {
        return DEMO.relativize(file).toString().replace('\\', '/');
    }

    @Test
    void everyDemoStudyIsATableOfValues() throws IOException {
        Map<String, Integer> rows = Map.of("laboratories.csv", 60, "layers.csv", 68, "operators.csv", 72);
        assertThat(files(STUDIES).stream().map(file -> file.getFileName().toString()))
                .containsExactlyInAnyOrderElementsOf(rows.keySet());
        for (Path file : files(STUDIES)) {
            Sheet<ValueRow> sheet = new CsvSheets().table(file, List.of());
            assertThat(sheet.problems()).as(file.toString()).isEmpty();
            assertThat(sheet.rows())
                    .as(file.toString())
                    .hasSize(Objects.requireNonNull(rows.get(file.getFileName().toString())));
        }
    }

    @Test
    void everyColumnIsDescribed() throws IOException {
        List<String> sections =
                List.of(Files.readString(DESCRIPTION, StandardCharsets.UTF_8).split("\n## "));
        for (Format<?> format : CsvSheets.FORMATS) {
            String section = sections.stream()
                    .filter(text -> text.startsWith("`" + format.fileName() + "`"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no section for " + format.fileName()));
            List<String> described = section.lines()
                    .filter(line -> line.startsWith("| `"))
                    .map(line -> line.substring(3, line.indexOf('`', 3)))
                    .toList();
            assertThat(described)
                    .as(format.fileName())
                    .containsExactlyElementsOf(format.columns().all());
            for (String column : format.columns().extra()) {
                assertThat(section).containsPattern("\\| `" + column + "` \\|[^|]*\\|[^|]*\\| column may be absent");
            }
        }
    }
}
