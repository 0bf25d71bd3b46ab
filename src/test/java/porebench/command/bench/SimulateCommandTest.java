package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class SimulateCommandTest {
    @TempDir
    Path folder;

    private Said simulate(String factor, String count, String type, String seed, String out, String... more) {
        List<String> arguments = new ArrayList<>(List.of("simulate", "--true-factor", factor, "--trials", count));
        arguments.addAll(List.of("--meter-type", type, "--seed", seed, "--out", out));
        arguments.addAll(List.of(more));
        return new Terminal(folder).json(arguments.toArray(String[]::new));
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name), StandardCharsets.UTF_8);
    }

    private Map<String, Object> factor(String name) {
        Said said = new Terminal(folder).json("factor", "--trials", name);
        assertThat(said.status()).isZero();
        assertThat(said.list("determinations")).hasSize(1);
        return said.list("determinations").get(0);
    }

    private static double number(Object json) {
        return ((Number) json).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static double interval(Map<String, Object> determination, String end) {
        return number(((Map<String, Object>) determination.get("confidence95")).get(end));
    }

    @Test
    void writesASheetThatSaysItIsSimulatedInEveryRow() throws IOException {
        Said said = simulate("0.4", "6", "B", "1", "trials.csv");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsEntry("simulated", true)
                .containsEntry("path", folder.resolve("trials.csv").toString())
                .containsEntry("trials", 6);
        List<String> lines = text("trials.csv").lines().toList();
        assertThat(lines).hasSize(7);
        List<String> columns = List.of(lines.get(0).split(","));
        assertThat(columns).contains("simulated");
        assertThat(lines.subList(1, 7)).allSatisfy(line -> {
            assertThat(line)
                    .startsWith("SIM-1-00")
                    .contains("SIM-MIX", "SIM-B")
                    .contains("SIMULATED for training (seed 1)");
            assertThat(line.split(",", -1)[columns.indexOf("simulated")]).isEqualTo("yes");
        });
        assertThat(text("trials.csv")).doesNotContain(",0.4,", "0.40", "fault");
    }

    /** The whole way back: what the bench knew is inside the 95 % interval that the trials give. */
    @ParameterizedTest
    @CsvSource({"0.4, B", "0.4, A", "0.9, B", "0.2, A"})
    void theFactorOfTheSheetIsTheTrueOne(String truth, String type) {
        assertThat(simulate(truth, "30", type, "7", "trials.csv").status()).isZero();
        Map<String, Object> determination = factor("trials.csv");
        assertThat(determination)
                .containsEntry("count", 30)
                .containsEntry("accepted", 30)
                .containsEntry("simulated", true);
        double expected = Double.parseDouble(truth);
        assertThat(number(determination.get("meanPercent"))).isEqualTo(expected, within(0.08));
        assertThat(expected).isBetween(interval(determination, "low"), interval(determination, "high"));
    }

    @Test
    void theSameOptionsGiveTheSameBytesOnAnyDay() throws IOException {
        simulate("0.4", "6", "B", "1", "one.csv");
        new Terminal(folder)
                .on("2027-01-31")
                .json(
                        "simulate",
                        "--true-factor",
                        "0.4",
                        "--trials",
                        "6",
                        "--meter-type",
                        "b",
                        "--seed",
                        "1",
                        "--out",
                        "two.csv");
        simulate("0.4", "6", "B", "2", "three.csv");
        assertThat(text("two.csv")).isEqualTo(text("one.csv"));
        assertThat(text("three.csv").replace("SIM-2", "SIM-1").replace("(seed 2)", "(seed 1)"))
                .isNotEqualTo(text("one.csv"));
    }

    /** A leak and a wrong line move the reading, foam and a short soak leave air in: against the sound sheet of the seed. */
    @ParameterizedTest
    @CsvSource({"leak, 1", "line, -1", "foam, 1", "soak, 1"})
    void aFaultMovesTheFactor(String fault, int direction) {
        simulate("0.4", "20", "B", "3", "sound.csv");
        Said said = simulate("0.4", "20", "B", "3", "faulty.csv", "--fault", fault);
        assertThat(said.json()).containsEntry("faults", List.of(fault));
        double moved = number(factor("faulty.csv").get("meanPercent"))
                - number(factor("sound.csv").get("meanPercent"));
        assertThat(moved * direction).isGreaterThan(0.03);
    }

    @Test
    void replacesAFileOnlyWhenTold() throws IOException {
        LabFiles.write(folder, "real.csv", LabFiles.THREE_TRIALS);
        Said refused = simulate("0.4", "3", "B", "2", "real.csv");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.codes()).containsExactly("output.there");
        assertThat(text("real.csv")).isEqualTo(LabFiles.THREE_TRIALS);
        assertThat(simulate("0.4", "3", "B", "2", "real.csv", "--replace").status())
                .isZero();
        assertThat(text("real.csv").lines()).hasSize(4);
        Files.createDirectory(folder.resolve("folder"));
        assertThat(simulate("0.4", "3", "B", "2", "folder", "--replace").codes())
                .containsExactly("output.is-folder");
    }

    @Test
    void aFolderThatIsNotThereIsSaidAndNothingIsLeft() throws IOException {
        Said said = simulate("0.4", "3", "B", "2", "no/such/trials.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).hasSize(1);
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void refusesWhatCannotBeSimulated() {
        assertThat(simulate("-0.1", "0", "B", "1", "x.csv").codes())
                .containsExactly("command.true-factor-out-of-range", "command.trials-out-of-range");
        assertThat(simulate("10.1", "1001", "B", "1", "x.csv").codes())
                .containsExactly("command.true-factor-out-of-range", "command.trials-out-of-range");
        assertThat(simulate("10", "1000", "A", "-5", "x.csv").status()).isZero();
        assertThat(simulate("0", "1", "A", "9223372036854775807", "y.csv").status())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"C", "", "AB"})
    void aMeterTypeIsAOrB(String type) {
        Said said = simulate("0.4", "6", type, "1", "x.csv");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("\"" + type + "\" must be one of A, B");
    }

    @Test
    void aFaultIsOneOfFour() {
        Said said = simulate("0.4", "6", "B", "1", "x.csv", "--fault", "frost");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("\"frost\" must be one of leak, line, foam, soak");
        assertThat(folder.resolve("x.csv")).doesNotExist();
    }

    @Test
    void simulatedAndRealTrialsAreNeverOneDetermination() throws IOException {
        simulate("0.4", "1", "B", "1", "sim.csv", "--mix-id", "M-1", "--meter-id", "PM-1");
        List<String> lines = text("sim.csv").lines().toList();
        String mixed = lines.get(0) + "\n" + lines.get(1) + "\n"
                + lines.get(1)
                        .replace("SIM-1-001", "T-1")
                        .replaceAll("yes$", "no")
                        .replaceFirst("T\\d\\d:", "T23:");
        LabFiles.write(folder, "mixed.csv", mixed);
        Said said = new Terminal(folder).json("factor", "--trials", "mixed.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("command.simulated-beside-real");
    }

    /** On the demo's own day, as none of its calibrations may be of a day to come. */
    private Terminal school() {
        Terminal terminal = new Terminal(folder).on("2026-11-25");
        LabFiles.write(
                folder, "laboratory.csv", "laboratory_name,laboratory_address,training\nBench School,1 Lane,yes\n");
        Path demo = Path.of("demo-data").toAbsolutePath();
        Said begun = terminal.json(
                "import",
                "--book",
                "school.book",
                "--new",
                "laboratory.csv",
                demo.resolve("sources.csv").toString(),
                demo.resolve("meters.csv").toString(),
                demo.resolve("meter-calibration.csv").toString(),
                demo.resolve("mix-design.csv").toString());
        assertThat(begun.status()).isZero();
        assertThat(begun.json()).containsEntry("simulated", true);
        return terminal;
    }

    private Said practise(Terminal terminal, String... more) {
        List<String> arguments = new ArrayList<>(List.of("simulate", "--book", "school.book", "--mix-id", "HG-101"));
        arguments.addAll(List.of("--meter-id", "B-1", "--true-factor", "0.4", "--seed", "1", "--out", "sim.csv"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    @Test
    void aLabBookTakesThemOnlyWhenItIsForTraining() {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        simulate("0.4", "4", "B", "1", "sim.csv", "--mix-id", "M-1", "--meter-id", "PM-1", "--from", "2026-06-10");
        Said refused = terminal.json("import", "--book", "lab.book", "sim.csv");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.codes()).contains("book.simulated-trial");
        assertThat(terminal.json("register", "--book", "lab.book").json()).doesNotContainKey("simulated");
    }

    @Test
    void aTrainingBookTakesThemWithoutADoubtAndSaysSimulatedEverywhere() {
        Terminal terminal = school();
        assertThat(practise(terminal, "--trials", "25").status()).isZero();
        Said taken = terminal.json("import", "--book", "school.book", "sim.csv");
        assertThat(taken.status()).isZero();
        assertThat(taken.codes()).isEmpty();
        Said register = terminal.json("register", "--book", "school.book");
        assertThat(register.json()).containsEntry("simulated", true);
        assertThat(terminal.run("register", "--book", "school.book").out()).startsWith("SIMULATED");
        Said issued = terminal.json("issue", "--book", "school.book", "--mix-id", "HG-101", "--reason", "Practice");
        assertThat(issued.codes()).isEmpty();
        assertThat(issued.json()).containsEntry("simulated", true);
        Said card = terminal.json("card", "--book", "school.book", "--mix-id", "HG-101", "--out", "card.pdf");
        assertThat(card.json()).containsEntry("simulated", true);
    }

    @Test
    void tellsWhatWasPlantedAndInWhichTrialsButTheSheetDoesNot() throws IOException {
        Terminal terminal = school();
        Said said = practise(terminal, "--trials", "6", "--fault", "foam", "--faulty", "1");
        assertThat(said.json().get("planted").toString())
                .matches("\\{trueFactorPercent=0.4, faults=\\[foam], trials=\\[SIM-1-00[1-6]]}");
        assertThat(said.json()).containsEntry("meterType", "B").containsEntry("meterId", "B-1");
        assertThat(text("sim.csv")).doesNotContain("foam").contains("2026-11-25T08:00");
        Said none = practise(terminal, "--trials", "6", "--fault", "foam", "--faulty", "0", "--replace");
        assertThat(none.json().get("planted").toString()).contains("faults=[]").contains("trials=[]");
    }

    @Test
    void sheetsOfMixesAndMetersTellTheBenchAsMuch() throws IOException {
        Path demo = Path.of("demo-data").toAbsolutePath();
        List<String> arguments = new ArrayList<>(List.of("simulate", "--true-factor", "0.4", "--trials", "2"));
        arguments.addAll(List.of("--mix", demo.resolve("mix-design.csv").toString(), "--mix-id", "HG-101"));
        arguments.addAll(List.of("--seed", "1", "--out", "sim.csv"));
        List<String> typed = new ArrayList<>(arguments);
        typed.addAll(List.of("--meter-type", "A"));
        assertThat(new Terminal(folder).json(typed.toArray(String[]::new)).status())
                .isZero();
        assertThat(text("sim.csv")).contains("SIM-A,A,7.00,L");
        arguments.addAll(List.of("--meters", demo.resolve("meters.csv").toString(), "--meter-id", "B-2", "--replace"));
        assertThat(new Terminal(folder).json(arguments.toArray(String[]::new)).status())
                .isZero();
        assertThat(text("sim.csv")).contains("B-2,B,0.249,ft3");
        arguments.addAll(List.of("--meter-type", "A"));
        assertThat(new Terminal(folder).json(arguments.toArray(String[]::new)).codes())
                .containsExactly("command.meter-of-other-type");
    }

    @Test
    void saysWhatIsNotThereAndWhatIsMissing() {
        Terminal terminal = school();
        Said mix = terminal.json(
                "simulate",
                "--book",
                "school.book",
                "--mix-id",
                "HG-999",
                "--meter-id",
                "B-1",
                "--true-factor",
                "0.4",
                "--trials",
                "2",
                "--seed",
                "1",
                "--out",
                "x.csv");
        assertThat(mix.codes()).containsExactly("command.not-in");
        assertThat(mix.out()).contains("has no mix HG-999.");
        Said usage = terminal.run("simulate", "--true-factor", "0.4", "--trials", "2", "--seed", "1", "--out", "x.csv");
        assertThat(usage.status()).isEqualTo(2);
        assertThat(usage.err()).contains("--meter-type");
        assertThat(folder.resolve("x.csv")).doesNotExist();
    }

    @Test
    void saysInTextThatItIsSimulated() {
        Said said = new Terminal(folder)
                .run(
                        "simulate",
                        "--true-factor",
                        "0.4",
                        "--trials",
                        "6",
                        "--meter-type",
                        "B",
                        "--seed",
                        "1",
                        "--out",
                        "t.csv",
                        "--fault",
                        "foam");
        assertThat(said.status()).isZero();
        assertThat(said.out())
                .startsWith("SIMULATED")
                .contains("Trial sheet written to")
                .contains("foam");
        assertThat(said.out().lines()).anyMatch(line -> line.matches("True factor G +0\\.4 +% air"));
        assertThat(new Terminal(folder).run("factor", "--trials", "t.csv").out())
                .startsWith("SIMULATED");
    }
}
