package porebench.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.NeedsTableValidator;
import porebench.TableValidator;
import porebench.command.JsonReading;
import porebench.exchange.schema.DataPackage;
import porebench.exchange.sheet.Format;
import porebench.port.OutputFolder;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;

/** The table schemas say of every column what it may hold, and a validator that is not ours agrees with the reader. */
class TableSchemaTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    static Path exported;

    @TempDir
    Path folder;

    @BeforeAll
    static void exportTheDemo() {
        LabBook book = new MemoryLabBook(CLOCK);
        new DemoLaboratory().fill(book);
        new CsvSheets().export(book, OutputFolder.replacing(exported));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, List<Map<String, Object>>> fields(String json) {
        Map<String, List<Map<String, Object>>> fields = new LinkedHashMap<>();
        for (Map<String, Object> resource :
                (List<Map<String, Object>>) JsonReading.object(json).get("resources")) {
            Map<String, Object> schema = (Map<String, Object>) resource.get("schema");
            fields.put((String) resource.get("path"), (List<Map<String, Object>>) schema.get("fields"));
        }
        return fields;
    }

    private static List<String> names(List<Map<String, Object>> fields) {
        return fields.stream().map(field -> (String) field.get("name")).toList();
    }

    private static Map<String, Object> field(String file, String name) {
        return fields(DataPackage.of(CsvSheets.FORMATS, false)).get(file).stream()
                .filter(field -> field.get("name").equals(name))
                .findFirst()
                .orElseThrow();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> constraints(String file, String name) {
        return (Map<String, Object>) field(file, name).getOrDefault("constraints", Map.of());
    }

    @Test
    void everyColumnOfEveryFileHasAFieldWithWords() {
        Map<String, List<Map<String, Object>>> fields = fields(DataPackage.of(CsvSheets.FORMATS, false));
        assertThat(fields).hasSize(CsvSheets.FORMATS.size());
        for (Format<?> format : CsvSheets.FORMATS) {
            assertThat(names(fields.get(format.fileName())))
                    .containsExactlyElementsOf(format.columns().all());
            assertThat(fields.get(format.fileName()))
                    .allSatisfy(field ->
                            assertThat((String) field.get("description")).matches("(?s)\\S.*\\. Cell: \\S.*"));
        }
    }

    /** By docs/formats.md: what is needed, bounds, words, units. */
    @Test
    void aFieldSaysTypeUnitAndWhatMayStandThere() {
        assertThat(field("trial-sheet.csv", "water_temp_c"))
                .containsEntry("type", "number")
                .containsEntry("unit", "C");
        assertThat(constraints("trial-sheet.csv", "water_temp_c").toString()).isEqualTo("{minimum=-20, maximum=100}");
        assertThat(field("trial-sheet.csv", "coarse_mass"))
                .containsEntry("unitField", List.of("coarse_mass_unit", "mass_unit"));
        assertThat(constraints("trial-sheet.csv", "mass_unit"))
                .isEqualTo(Map.of("enum", List.of("kg", "g", "lb", "oz")));
        assertThat(constraints("trial-sheet.csv", "bowl_volume_unit")).containsEntry("required", true);
        assertThat(constraints("trial-sheet.csv", "meter_type"))
                .isEqualTo(Map.of("required", true, "enum", List.of("A", "B")));
        assertThat(constraints("trial-sheet.csv", "trial_id")).isEqualTo(Map.of("required", true, "unique", true));
        assertThat(constraints("trial-sheet.csv", "remarks")).isEmpty();
        assertThat(field("trial-sheet.csv", "leak"))
                .containsEntry("type", "boolean")
                .containsEntry("trueValues", List.of("yes"))
                .containsEntry("falseValues", List.of("no"));
        assertThat(field("trial-sheet.csv", "tested_at"))
                .containsEntry("type", "datetime")
                .containsEntry("format", "any");
        assertThat(field("determinations.csv", "opened_on")).containsEntry("type", "date");
        assertThat(constraints("determinations.csv", "mix_version").toString()).isEqualTo("{required=true, minimum=1}");
        assertThat(field("trial-sheet.csv", "gauge_pct")).containsEntry("unit", "%");
        assertThat(constraints("meters.csv", "bowl_volume").toString()).isEqualTo("{required=true, minimum=0}");
        assertThat(constraints("studies.csv", "value").toString()).isEqualTo("{required=true}");
    }

    /** What only the first row of a record must state is not asked of every row; what is for one kind of row is asked of none. */
    @Test
    void asksOfARowOnlyWhatEveryRowStates() {
        assertThat(constraints("mix-design.csv", "mix_id")).containsEntry("required", true);
        assertThat(constraints("mix-design.csv", "target_air_pct")).doesNotContainKey("required");
        assertThat(constraints("mix-design.csv", "mass_unit")).containsEntry("required", true);
        assertThat(constraints("mix-design.csv", "batch_volume_unit")).doesNotContainKey("required");
        assertThat(constraints("meter-calibration.csv", "row")).containsEntry("required", true);
        assertThat(constraints("meter-calibration.csv", "empty_mass")).doesNotContainKey("required");
        assertThat(constraints("meter-calibration.csv", "mass_unit")).doesNotContainKey("required");
        assertThat(constraints("factor-issues.csv", "mix_version")).doesNotContainKey("required");
        assertThat(constraints("mix-design.csv", "mass_state")).doesNotContainKey("required");
    }

    @Test
    void theFilesOfATrainingBookEndWithSimulated() {
        Map<String, List<Map<String, Object>>> plain = fields(DataPackage.of(CsvSheets.FORMATS, false));
        Map<String, List<Map<String, Object>>> marked = fields(DataPackage.of(CsvSheets.FORMATS, true));
        marked.forEach((file, fields) -> {
            List<String> names = names(fields);
            boolean knows =
                    file.equals("laboratory.csv") || names(plain.get(file)).contains("simulated");
            assertThat(names.subList(0, plain.get(file).size())).isEqualTo(names(plain.get(file)));
            assertThat(names.size()).isEqualTo(plain.get(file).size() + (knows ? 0 : 1));
            assertThat(names.contains("simulated")).isEqualTo(!file.equals("laboratory.csv"));
        });
    }

    @Test
    void anExportDescribesItselfAndComesInAgain() throws IOException {
        Path descriptor = exported.resolve("datapackage.json");
        assertThat(descriptor).hasContent(DataPackage.of(CsvSheets.FORMATS, false));
        var sheet = new CsvSheets().records(descriptor);
        assertThat(sheet.rows()).isEmpty();
        assertThat(sheet.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("csv.data-package");
            assertThat(problem.isError()).isFalse();
        });
        Set<String> shipped = new CsvSheets().schemas().keySet();
        assertThat(shipped)
                .containsExactly(
                        "datapackage.json",
                        "lists.datapackage.json",
                        "values.datapackage.json",
                        "whole.datapackage.json");
        assertThat(Files.readString(descriptor, UTF_8)).endsWith("}\n").doesNotContain("\t");
    }

    @Test
    @NeedsTableValidator
    void theValidatorFindsNoFaultInAnExport() throws IOException, InterruptedException {
        TableValidator.Said said = TableValidator.ask(exported.resolve("datapackage.json"), exported);
        assertThat(said.text()).contains("checked trial-sheet.csv: 143 rows", "21 files, 0 faults");
        assertThat(said.status()).isZero();
    }

    @ParameterizedTest
    @NeedsTableValidator
    @ValueSource(strings = {"demo-data", "demo-data/airfield", "demo-data/new-ledge", "demo-data/cards", "lab-sheets"})
    void theValidatorFindsNoFaultInWhatIsShipped(String shipped) throws IOException, InterruptedException {
        TableValidator.Said said = TableValidator.ask(exported.resolve("datapackage.json"), Path.of(shipped));
        assertThat(said.text()).contains(" files, 0 faults").doesNotContain("FAULT");
        assertThat(said.status()).isZero();
    }

    private TableValidator.Said spoilt(String file, Consumer<List<String>> spoil)
            throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>(Files.readAllLines(exported.resolve(file), UTF_8));
        spoil.accept(lines);
        Files.writeString(folder.resolve(file), lines.stream().collect(Collectors.joining("\r\n", "", "\r\n")), UTF_8);
        return TableValidator.ask(exported.resolve("datapackage.json"), folder);
    }

    @ParameterizedTest
    @NeedsTableValidator
    @CsvSource({
        "',4859,', ',48x9,', fine_mass, type",
        "',4859,', ',-1,', fine_mass, minimum",
        "',22.0,', ',101,', water_temp_c, maximum",
        "',B-1,B,', ',B-1,C,', meter_type, enum",
        "',7.05,L,', ',7.05,pint,', bowl_volume_unit, enum",
        "',no,', ',,', leak, required",
        "',no,', ',maybe,', leak, type",
        "2025-12-02T09:10, yesterday, tested_at, type",
        "T-001, T-002, trial_id, unique"
    })
    void theValidatorFindsWhatTheReaderRefuses(String right, String wrong, String column, String rule)
            throws IOException, InterruptedException {
        TableValidator.Said said = spoilt("trial-sheet.csv", lines -> {
            assertThat(lines.get(1)).contains(right);
            lines.set(1, lines.get(1).replaceFirst(right, wrong));
        });
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.text())
                .contains("1 faults")
                .contains('"' + column + '"')
                .contains(rule);
        assertThat(new CsvSheets()
                        .records(folder.resolve("trial-sheet.csv")).problems().stream()
                                .filter(problem -> problem.isError()))
                .isNotEmpty();
    }

    @Test
    @NeedsTableValidator
    void theValidatorFindsAColumnThatIsMissingOrUnknown() throws IOException, InterruptedException {
        TableValidator.Said said =
                spoilt("meters.csv", lines -> lines.set(0, lines.get(0).replace("serial", "cereal")));
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.text()).contains("unknown column cereal").contains("lacks column serial");
    }
}
