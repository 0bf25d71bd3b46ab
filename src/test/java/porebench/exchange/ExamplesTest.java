package porebench.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.NeedsProgram;
import porebench.command.JsonReading;
import porebench.command.Terminal;
import porebench.port.OutputFolder;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;

/** The programs of docs/examples find of every determination of the demo's export what {@code factor --json} finds. */
class ExamplesTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
    private static final Path EXAMPLES = Path.of("docs", "examples");

    /** Two types of meter, water in mL, in g and in % of the bowl, bowls in L and ft3, struck and void trials. */
    private static final List<String> DETERMINATIONS = new ArrayList<>();

    private static final Map<String, Map<String, Object>> OURS = new LinkedHashMap<>();

    @TempDir
    static Path folder;

    @BeforeAll
    static void exportTheDemo() {
        LabBook book = new MemoryLabBook(CLOCK);
        new DemoLaboratory().fill(book);
        new CsvSheets().export(book, OutputFolder.replacing(folder));
        Terminal.Said said =
                new Terminal(folder).json("factor", "--trials", "trial-sheet.csv", "--mix", "mix-design.csv");
        assertThat(said.status()).as(said.err()).isZero();
        for (Map<String, Object> one : said.list("determinations")) {
            OURS.put((String) one.get("determinationId"), one);
            if (one.get("meanPercent") != null) {
                DETERMINATIONS.add((String) one.get("determinationId"));
            }
        }
        assertThat(DETERMINATIONS).hasSizeGreaterThan(10);
    }

    private static String run(String... words) throws IOException, InterruptedException {
        Path said = Files.createTempFile(Path.of("target"), "example", ".txt");
        int status = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        String text = Files.readString(said, UTF_8);
        Files.delete(said);
        assertThat(status).as(text).isZero();
        return text;
    }

    private static double number(Object number) {
        return Double.parseDouble(String.valueOf(number));
    }

    /** Both compute in doubles, in another order. */
    private static void assertNear(String what, Object theirs, Object ours) {
        assertThat(number(theirs)).as(what).isCloseTo(number(ours), within(1e-9));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Double> counted(Map<String, Object> ours) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (Map<String, Object> trial : (List<Map<String, Object>>) ours.get("trials")) {
            if (Boolean.TRUE.equals(trial.get("accepted"))) {
                factors.put((String) trial.get("trialId"), number(trial.get("factorPercent")));
            }
        }
        return factors;
    }

    private static void compare(String determination, Map<String, ?> factors, Map<String, ?> results) {
        Map<String, Object> ours = OURS.get(determination);
        Map<String, Double> counted = counted(ours);
        assertThat(factors.keySet()).as(determination).isEqualTo(counted.keySet());
        counted.forEach((trial, factor) -> assertNear(trial, factors.get(trial), factor));
        assertNear(determination, results.get("accepted"), ours.get("accepted"));
        assertNear(determination, results.get("meanPercent"), ours.get("meanPercent"));
        assertNear(determination, results.get("reportedPercent"), ours.get("reportedPercent"));
        if (counted.size() > 1) {
            double deviation = number(ours.get("standardDeviationPercent"));
            assertNear(determination, results.get("standardDeviationPercent"), deviation);
            assertNear(determination, results.get("standardErrorPercent"), deviation / Math.sqrt(counted.size()));
        }
    }

    @Test
    @NeedsProgram("python3")
    @SuppressWarnings("unchecked")
    void thePythonExampleFindsTheSame() throws IOException, InterruptedException {
        for (String determination : DETERMINATIONS) {
            Map<String, Object> found = JsonReading.object(
                    run("python3", EXAMPLES.resolve("determination.py").toString(), folder.toString(), determination));
            compare(determination, (Map<String, Object>) found.get("trials"), found);
        }
    }

    @Test
    @NeedsProgram("Rscript")
    void theExampleInRFindsTheSame() throws IOException, InterruptedException {
        for (String determination : DETERMINATIONS) {
            Map<String, String> results = new LinkedHashMap<>();
            run(
                            "Rscript",
                            "--vanilla",
                            EXAMPLES.resolve("determination.R").toString(),
                            folder.toString(),
                            determination)
                    .lines()
                    .map(line -> line.split("\t"))
                    .forEach(parts -> results.put(parts[0], parts[1]));
            Map<String, String> factors = new LinkedHashMap<>(results);
            Stream.of("accepted", "meanPercent", "standardDeviationPercent", "standardErrorPercent", "reportedPercent")
                    .forEach(factors::remove);
            compare(determination, factors, results);
        }
    }
}
