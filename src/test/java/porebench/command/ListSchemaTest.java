package porebench.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.NeedsTableValidator;
import porebench.TableValidator;
import porebench.store.Books;

/** What is written or read as CSV and holds no records has schemas too: a validator that is not ours holds real files against them. */
class ListSchemaTest {
    private static final String LISTS = "lists.datapackage.json";
    private static final String VALUES = "values.datapackage.json";
    private static final String WHOLE = "whole.datapackage.json";
    private static final Pattern EXAMPLE =
            Pattern.compile("\n###? [^\n]*`([^`\n]*\\.csv)`\n(?:(?!\n##).)*?```csv\n(.*?)```", Pattern.DOTALL);

    @TempDir
    static Path folder;

    @TempDir
    Path other;

    /** On the day of which docs/formats.md tells. */
    @BeforeAll
    static void writeAll() {
        Terminal terminal = new Terminal(folder).withTheWholeDemo().on("2026-11-25");
        for (String line : List.of(
                "schema schemas",
                "demo --book one.book",
                "export --whole --book one.book whole",
                "register --book one.book --out register.csv",
                "readings --book one.book --from 2026-01-01 --out readings.csv")) {
            assertThat(terminal.json(line.split(" ")).status()).as(line).isZero();
        }
    }

    private static Map<String, String> examples() throws IOException {
        Map<String, String> examples = new LinkedHashMap<>();
        Matcher matcher = EXAMPLE.matcher(Files.readString(Path.of("docs", "formats.md"), UTF_8));
        while (matcher.find()) {
            examples.put(matcher.group(1), matcher.group(2));
        }
        return examples;
    }

    private static Path schema(String name) {
        return folder.resolve("schemas").resolve(name);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, List<String>> fields(String name) throws IOException {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (Map<String, Object> resource : (List<Map<String, Object>>)
                JsonReading.object(Files.readString(schema(name), UTF_8)).get("resources")) {
            Map<String, Object> schema = (Map<String, Object>) resource.get("schema");
            fields.put(
                    (String) resource.get("path"),
                    ((List<Map<String, Object>>) schema.get("fields"))
                            .stream().map(field -> (String) field.get("name")).toList());
        }
        return fields;
    }

    private static List<String> heading(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(file, UTF_8)) {
            return List.of(lines.findFirst().orElseThrow().split(","));
        }
    }

    /** What is loaded of the demo files into a training book says in its last column where it comes from. */
    @Test
    @NeedsTableValidator
    void theListsOfATrainingBookAreSoToo() throws IOException, InterruptedException {
        LabFiles.write(other, "laboratory.csv", "laboratory_name,laboratory_address,training\nSchool,,yes\n");
        Path demo = Path.of("demo-data").toAbsolutePath();
        Terminal terminal = new Terminal(other).on("2026-11-25");
        for (String line : List.of(
                "import --book school.book --new laboratory.csv " + demo.resolve("sources.csv") + " "
                        + demo.resolve("mix-design.csv"),
                "register --book school.book --out register.csv")) {
            assertThat(terminal.json(line.split(" ")).status()).as(line).isZero();
        }
        assertThat(heading(other.resolve("register.csv")))
                .isEqualTo(fields(LISTS).get("register.csv"));
        assertThat(TableValidator.ask(schema(LISTS), other).text())
                .contains("checked register.csv: 8 rows", "1 files, 0 faults");
    }

    /** A doubt of a factor has a reason of its own, and the factor's row in the file of factors another. */
    @Test
    void aColumnIsDescribedAsWhatItIs() throws IOException {
        assertThat(words("book-factor_issue_doubt.csv", "reason")).startsWith("why the doubt was taken on");
        assertThat(words("book-factor_issue.csv", "reason")).startsWith("As reason in factor-issues.csv: ");
        assertThat(words("book-mix_constituent.csv", "name")).startsWith("As constituent in mix-design.csv: ");
        assertThat(words("book-test_plan_row.csv", "remark")).startsWith("As remark in test-plans.csv: ");
    }

    @SuppressWarnings("unchecked")
    private static String words(String file, String column) throws IOException {
        return ((List<Map<String, Object>>) JsonReading.object(Files.readString(schema(WHOLE), UTF_8))
                        .get("resources"))
                .stream()
                        .filter(resource -> resource.get("path").equals(file))
                        .map(resource -> (Map<String, Object>) resource.get("schema"))
                        .flatMap(schema -> ((List<Map<String, Object>>) schema.get("fields")).stream())
                        .filter(field -> field.get("name").equals(column))
                        .map(field -> (String) field.get("description"))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    @NeedsTableValidator
    void theListsOfTheDemoAreAsTheirSchemasSay() throws IOException, InterruptedException {
        assertThat(TableValidator.ask(schema(LISTS), folder).text())
                .contains("checked register.csv: 16 rows", "checked readings.csv: ", "2 files, 0 faults");
    }

    @ParameterizedTest
    @ValueSource(strings = {"register.csv", "readings.csv"})
    void aListIsWrittenUnderTheHeadingsOfItsSchema(String name) throws IOException {
        List<String> written = new ArrayList<>(heading(folder.resolve(name)));
        written.add("simulated");
        assertThat(fields(LISTS).get(name)).isEqualTo(written);
    }

    /** The whole export says itself which files it has; the columns stand as the schema steps put them. */
    @Test
    @NeedsTableValidator
    void everyTableOfAWholeExportIsAsItsSchemaSays() throws IOException, InterruptedException {
        Map<String, List<String>> fields = fields(WHOLE);
        try (Stream<Path> files = Files.list(folder.resolve("whole"))) {
            assertThat(new TreeSet<>(fields.keySet()))
                    .isEqualTo(
                            new TreeSet<>(files.map(file -> file.getFileName().toString())
                                    .filter(file -> file.endsWith(".csv"))
                                    .toList()));
        }
        for (Map.Entry<String, List<String>> file : fields.entrySet()) {
            assertThat(heading(folder.resolve("whole").resolve(file.getKey())))
                    .as(file.getKey())
                    .containsExactlyInAnyOrderElementsOf(file.getValue());
        }
        assertThat(TableValidator.ask(schema(WHOLE), folder.resolve("whole")).text())
                .contains(fields.size() + " files, 0 faults");
    }

    /** Its rows were kept before some columns were there, and before some bounds were. */
    @Test
    @NeedsTableValidator
    void soIsThatOfAnOldBook() throws IOException, InterruptedException {
        Path old = other.resolve("old.book");
        try (InputStream stream = Books.class.getResourceAsStream("books/book-of-step-4.porebench")) {
            Files.copy(stream, old);
        }
        assertThat(new Terminal(other)
                        .json("export", "--whole", "--book", "old.book", "whole")
                        .status())
                .isZero();
        assertThat(TableValidator.ask(schema(WHOLE), other.resolve("whole")).text())
                .contains(fields(WHOLE).size() + " files, 0 faults");
    }

    @Test
    void inABookYesIsOne() throws IOException {
        assertThat(Files.readString(schema(WHOLE), UTF_8).replaceAll("\\s", ""))
                .contains("\"trueValues\":[\"1\"],\"falseValues\":[\"0\"]")
                .doesNotContain("\"yes\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {LISTS, VALUES, WHOLE})
    void anImportPassesADescriptionOver(String name) {
        Terminal.Said said =
                new Terminal(folder).on("2026-11-25").json("import", "--book", "one.book", "schemas/" + name);
        assertThat(said.codes()).containsExactly("csv.data-package");
    }

    @Test
    @NeedsTableValidator
    void theExamplesOfTheValueTablesAreAsTheirSchemasSay() throws IOException, InterruptedException {
        Map<String, String> examples = examples();
        assertThat(examples).containsKeys(fields(VALUES).keySet().toArray(new String[0]));
        for (String name : fields(VALUES).keySet()) {
            Files.writeString(other.resolve(name), examples.get(name), UTF_8);
        }
        assertThat(TableValidator.ask(schema(VALUES), other).text()).contains("7 files, 0 faults");
    }

    @ParameterizedTest
    @ValueSource(strings = {"register.csv", "readings.csv", "book.csv", "book-entry.csv", "book-<table>.csv"})
    void theExamplesOfWhatIsWrittenStandInRealFiles(String name) throws IOException {
        Path file = name.startsWith("book")
                ? folder.resolve("whole").resolve(name.replace("<table>", "equipment"))
                : folder.resolve(name);
        List<String> example = withoutHashes(examples().get(name));
        assertThat(example).hasSize(5);
        List<String> real = withoutHashes(Files.readString(file, UTF_8));
        assertThat(example.get(0)).isEqualTo(real.get(0));
        assertThat(real).containsAll(example);
    }

    /** Each hash hangs on everything before it. */
    private static List<String> withoutHashes(String text) {
        return text.replaceAll("[0-9a-f]{64}", "hash").lines().toList();
    }

    @ParameterizedTest
    @NeedsTableValidator
    @CsvSource({
        "register.csv, in force, all right, state, enum",
        "register.csv, 2026-04-20, 20 April, in_force_from, type",
        "readings.csv, kg/m3, kg, density_unit, enum",
        "readings.csv, passes, good, verdict, enum",
        "readings.csv, 2026-10-27T10:12, yesterday, read_at, type",
        "readings.csv, FR-048, FR-047, reading_id, unique"
    })
    void theValidatorFindsWhatAListNeverSays(String name, String right, String wrong, String column, String rule)
            throws IOException, InterruptedException {
        String text = Files.readString(folder.resolve(name), UTF_8);
        assertThat(text).contains(right);
        Files.writeString(other.resolve(name), text.replaceFirst(Pattern.quote(right), wrong), UTF_8);
        TableValidator.Said said = TableValidator.ask(schema(LISTS), other);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.text())
                .contains("1 faults")
                .contains('"' + column + '"')
                .contains(rule);
    }

    /** Columns that are not fixed are counted: six are the most of a study in layers, and no other table has any. */
    @ParameterizedTest
    @NeedsTableValidator
    @CsvSource({
        "components.csv, 'a,b,c,d,e,f,value', 0",
        "components.csv, 'a,b,c,d,e,f,g,value', 7",
        "sets.csv, 'a,set,value', 1"
    })
    void otherColumnsAreCounted(String name, String heading, int faults) throws IOException, InterruptedException {
        Files.writeString(other.resolve(name), heading + "\n" + heading.replaceAll("\\w+", "1") + "\n", UTF_8);
        assertThat(TableValidator.ask(schema(VALUES), other).text()).contains("1 files, " + faults + " faults");
    }
}
