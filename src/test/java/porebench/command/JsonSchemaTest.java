package porebench.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.command.Terminal.Said;
import porebench.command.book.PageReadingsCommand;
import porebench.evidence.paper.CardSeal;
import porebench.exchange.DemoLaboratory;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** Every command answers with {@code --json} as its schema says, on the demo laboratory of 25 November 2026. */
class JsonSchemaTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);
    private static final String DEMO = Path.of("demo-data").toAbsolutePath() + "/";

    /** What is run, in this order; an underscore is a blank within a word. */
    private static final List<String> LINES = List.of(
            "sample --mix DEMO/mix-design.csv --mix-id HG-108 --bowl 7.05_L --trials 3 --spare 10",
            "sample --mix DEMO/mix-design.csv --mix-id HG-101 --bowl 0.249_ft3",
            "factor --trials DEMO/trial-sheet.csv --mix-id HG-108",
            "factor --trials DEMO/trial-sheet.csv --mix-id HG-101 --mix DEMO/mix-design.csv",
            "factor --trials DEMO/trial-sheet.csv --mix-id HG-105",
            "air --reading 5.4 --factor 0.4 --profile astm-c231",
            "air --full-mixture --air 6 --vc 20_ft3 --vt 25_ft3 --va 5_ft3 --vm 12_ft3",
            "bowl --empty 3.500_kg --plate 1.200_kg --full 11.700_kg --water-temp 22_C",
            "meter --calibration DEMO/meter-calibration.csv --meter-id B-1 --at 2026-06-01",
            "meter --calibration DEMO/meter-calibration.csv --meter-id A-1 --at 2026-06-01",
            "simulate --true-factor 0.4 --trials 6 --meter-type B --seed 1 --fault foam --faulty 1 --out practice.csv",
            "stats --values values.csv --repeatability 0.2",
            "stats --values sets.csv --sets",
            "chart --values subgroups.csv --kind mean-range",
            "chart --values subgroups.csv --kind mean-sd",
            "chart --values subgroups.csv --kind means",
            "chart --values subgroups.csv --kind ewma",
            "chart --values subgroups.csv --kind cusum",
            "chart --values subgroups.csv --kind individuals",
            "compare --before values.csv --after later.csv --margin 0.1",
            "compare --book lab.porebench --mix-id HG-109",
            "compare --book lab.porebench --mix-id HG-111",
            "risk --error 0.1 --target 6 --tolerance 1.5 --spread 0.4 --mean 5.8 --reading-spread 0.1",
            "holds --book lab.porebench --mix-id HG-107",
            "holds --pairs pairs.csv --air-free-density 2440",
            "interlab --values DEMO/studies/laboratories.csv",
            "budget --trials DEMO/trial-sheet.csv --mix-id HG-101 --calibration DEMO/meter-calibration.csv"
                    + " --equipment DEMO/equipment.csv --reading 5.4 --reading-meter B-1 --seed 1 --draws 10000",
            "gauge-study --values DEMO/studies/operators.csv",
            "gauge-study --values DEMO/studies/operators.csv --no-interaction",
            "components --values DEMO/studies/layers.csv",
            "components --values DEMO/studies/layers.csv --crossed",
            "forecast --book lab.porebench --mix-id HG-115",
            "forecast --book lab.porebench --mix-id HG-116",
            "forecast --mixes DEMO/mix-design.csv --trials DEMO/trial-sheet.csv --mix-id HG-101",
            "card --book lab.porebench --mix-id HG-101 --out card.pdf --paper a6",
            "cards --book lab.porebench --out cards.pdf --leave-out --paper a6",
            "field-sheet --book lab.porebench --mix-id HG-101 --out field.pdf",
            "page --book lab.porebench --mix-id HG-101 --out page.html",
            "card-check --book lab.porebench --text card.txt",
            "card-check --book lab.porebench --text other.txt",
            "page-readings --picture codes.png --out home.csv",
            "photo --book lab.porebench --trial-id T-001 --file photo.png",
            "photo --book lab.porebench --trial-id T-001",
            "source --book lab.porebench --source-id S-09",
            "source --book lab.porebench --source-id S-02 --changed 2026-11-20 --reason another_bench",
            "group --book lab.porebench --mix-id HG-101 --within 5",
            "group --book lab.porebench --group-id G-1",
            "register --book lab.porebench",
            "register --book lab.porebench --on 2026-06-01 --out register.csv",
            "plan --book lab.porebench --from 2026-11-30",
            "plan --book lab.porebench --from 2026-12-07 --out plan.pdf",
            "recall --book lab.porebench",
            "recall --book lab.porebench --all --out recall.pdf",
            "readings --book lab.porebench --guard 1",
            "readings --book lab.porebench --from 2026-07-01 --to 2026-11-25 --out readings.csv",
            "issue --book lab.porebench --mix-id HG-108 --reason first --who Ada_Test --approved-by Bo_Check",
            "import --book lab.porebench DEMO/meters.csv DEMO/mix-design.csv",
            "export --book lab.porebench out",
            "export --book lab.porebench whole --whole",
            "schema schemas",
            "backup --book lab.porebench copies",
            "restore --book again.porebench --from whole",
            "verify --book lab.porebench",
            "demo --book demo.porebench",
            "completion bash");

    @TempDir
    static Path folder;

    private static final Map<String, Said> ANSWERS = new LinkedHashMap<>();

    @BeforeAll
    static void runAll() throws Exception {
        try (LabBook book = new SqliteShelf(CLOCK).create(folder.resolve("lab.porebench"))) {
            new DemoLaboratory().fill(book);
            FactorIssue issue = book.latest(FactorIssue.class).stream()
                    .map(Version::value)
                    .filter(one -> one.mixId().equals(new MixId("HG-101")) && one.isIssue())
                    .findFirst()
                    .orElseThrow();
            String sealed = CardSeal.of(book, issue).orElseThrow().sealed("HG-101, subtract G.");
            Files.writeString(folder.resolve("card.txt"), sealed, UTF_8);
        }
        PageCommandTest.picture(
                folder.resolve("codes.png"),
                PageReadingsCommand.HEADING + "\r\nR-1,HG-101,2026-07-01T09:00:00+00:00,12,,5.4,,,,\r\n");
        Files.writeString(folder.resolve("values.csv"), "factor\n0.3\n0.4\n0.3\n0.5\n0.4\n0.4\n0.3\n0.4\n", UTF_8);
        Files.writeString(folder.resolve("later.csv"), "determination,value\na,0.5\na,0.6\nb,0.5\nb,0.7\n", UTF_8);
        Files.writeString(folder.resolve("sets.csv"), "set,value\na,0.3\na,0.4\na,0.5\nb,0.4\nb,0.6\n", UTF_8);
        Files.writeString(
                folder.resolve("subgroups.csv"),
                Stream.of("1,0.3", "1,0.4", "2,0.5", "2,0.3", "3,0.4", "3,0.4", "4,0.9", "4,0.8")
                        .reduce("subgroup,value", (all, line) -> all + "\n" + line),
                UTF_8);
        Files.writeString(
                folder.resolve("pairs.csv"),
                Stream.iterate(1, i -> i <= 24, i -> i + 1)
                        .map(i -> "R-" + i + "," + (4 + i % 5 * 0.5) + "," + (2340 - i % 5 * 12))
                        .reduce("reading_id,air_pct,value", (all, line) -> all + "\n" + line),
                UTF_8);
        Files.writeString(folder.resolve("other.txt"), "not a card", UTF_8);
        Files.write(folder.resolve("photo.png"), porebench.record.SamplePhotos.png(99, 1));
        Terminal terminal = new Terminal(folder, CLOCK);
        for (String line : LINES) {
            String[] words = Stream.of(line.split(" "))
                    .map(word -> word.replace("DEMO/", DEMO).replace('_', ' '))
                    .toArray(String[]::new);
            ANSWERS.put(line, terminal.json(words));
        }
    }

    static Set<String> commands() {
        return new Terminal(folder).commandLine().getSubcommands().keySet();
    }

    static List<String> lines() {
        return LINES;
    }

    @ParameterizedTest
    @MethodSource("lines")
    void isAnsweredAsTheSchemaSays(String line) {
        Said said = ANSWERS.get(line);
        assertThat(said.status()).as(said.out() + said.err()).isLessThan(2);
        assertThat(AnswerSchemas.faults(line.split(" ")[0], said.out())).isEmpty();
    }

    @Test
    void everyCommandIsRun() {
        Set<String> run = new TreeSet<>();
        ANSWERS.forEach((line, said) -> {
            if (said.status() == 0) {
                run.add(line.split(" ")[0]);
            }
        });
        assertThat(new TreeSet<>(commands())).isEqualTo(run);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void aSchemaIsOne(String command) {
        assertThat(AnswerSchemas.faultsOf(AnswerSchemas.DRAFT, AnswerSchemas.text(command)))
                .isEmpty();
    }

    @Test
    void theCommandWritesThemAll() throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve("schemas"))) {
            assertThat(files.toList())
                    .hasSize(commands().size() + 4)
                    .contains(folder.resolve("schemas").resolve("datapackage.json"));
        }
        for (String command : commands()) {
            assertThat(folder.resolve("schemas").resolve(command + ".schema.json"))
                    .hasContent(AnswerSchemas.text(command));
        }
    }

    @Test
    void aSchemaThatIsNoneIsSeen() {
        assertThat(AnswerSchemas.faultsOf(AnswerSchemas.DRAFT, "{\"type\": \"text\"}"))
                .isNotEmpty();
    }

    /** A key more, a key less, another type, and nothing where something must be: each is seen, in the depth of an answer too. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bowl     | \"bowlLitres\":       | \"bowlVolume\":",
                "bowl     | \"bowlLitres\":       | \"more\":1,\"bowlLitres\":",
                "factor   | \"trialId\":\"         | \"trial\":\"",
                "register | \"mixId\":\"HG-101\"  | \"mixId\":101",
                "register | \"title\":            | \"factorInForce\":true,\"title\":",
                "register | \"countedTrials\":6   | \"countedTrials\":null",
                "stats    | \"problems\":         | \"faults\":"
            })
    void whatTheSchemaDoesNotSayIsSeen(String command, String right, String wrong) {
        String answer = ANSWERS.entrySet().stream()
                .filter(one -> one.getKey().startsWith(command + " "))
                .map(one -> one.getValue().out())
                .filter(out -> out.contains(right))
                .findFirst()
                .orElseThrow();
        assertThat(AnswerSchemas.faults(command, answer)).isEmpty();
        assertThat(AnswerSchemas.faults(command, answer.replace(right, wrong))).isNotEmpty();
    }
}
