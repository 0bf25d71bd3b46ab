package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.command.Terminal.Said;
import porebench.port.Release;

class UsageTest {
    @TempDir
    Path folder;

    private void assertWrongUsage(Said said, String message) {
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains(message).contains("--help");
    }

    @ParameterizedTest
    @ValueSource(strings = {"7", "L", "", "7,05"})
    void aVolumeIsANumberAndAUnit(String bowl) {
        assertWrongUsage(
                new Terminal(folder).json("sample", "--mix", "m.csv", "--mix-id", "M-1", "--bowl", bowl),
                "'--bowl': \"" + bowl
                        + "\" must be a number and a unit in one argument; units are m3, L, mL, ft3, yd3, in3, gal");
    }

    @ParameterizedTest
    @CsvSource({"'7,05 L', '7,05'", "seven L, seven", "NaN L, NaN", "1e400 L, 1e400", "'7 L L', '7 L'"})
    void aRefusedQuantitySaysThatItsNumberIsWrong(String bowl, String number) {
        assertWrongUsage(
                new Terminal(folder).json("sample", "--mix", "m.csv", "--mix-id", "M-1", "--bowl", bowl),
                "'--bowl': \"" + bowl + "\": \"" + number
                        + "\" must be a number with a decimal point; the unit is understood");
    }

    @ParameterizedTest
    @CsvSource({"7 litres, litres", "7 kg, kg", "7 L x, x", "'7 °C', '°C'"})
    void aRefusedQuantitySaysThatItsUnitIsWrong(String bowl, String unit) {
        assertWrongUsage(
                new Terminal(folder).json("sample", "--mix", "m.csv", "--mix-id", "M-1", "--bowl", bowl),
                "'--bowl': \"" + bowl + "\": \"" + unit
                        + "\" is not one of its units, which are m3, L, mL, ft3, yd3, in3, gal");
    }

    @Test
    void massesAndTemperaturesNameTheirUnits() {
        assertWrongUsage(
                new Terminal(folder)
                        .run("bowl", "--empty", "3 L", "--plate", "0 g", "--full", "9 kg", "--water-temp", "20 C"),
                "'--empty': \"3 L\": \"L\" is not one of its units, which are kg, g, lb, oz");
        assertWrongUsage(
                new Terminal(folder)
                        .run("bowl", "--empty", "3 kg", "--plate", "0 g", "--full", "9 kg", "--water-temp", "20 K"),
                "\"K\" is not one of its units, which are C, F");
    }

    @Test
    void aNumberHasADecimalPoint() {
        assertWrongUsage(
                new Terminal(folder).run("air", "--reading", "5,4", "--factor", "0.4"),
                "\"5,4\" must be a number with a decimal point");
    }

    @Test
    void saysWhatIsMissingOrUnknown() {
        Terminal terminal = new Terminal(folder);
        assertWrongUsage(terminal.json("bowl", "--plate", "0 g"), "Missing required options");
        assertWrongUsage(terminal.json("air", "--reading", "5"), "--factor");
        assertWrongUsage(terminal.json("air"), "--reading");
        assertWrongUsage(terminal.json("air", "--reading", "5", "--factor", "0", "--colour", "red"), "--colour");
        assertWrongUsage(terminal.json("weigh"), "weigh");
        assertWrongUsage(terminal.run("stats"), "--values");
        assertWrongUsage(terminal.run("import", "--book", "b"), "<file>");
        assertWrongUsage(terminal.run("register", "--book", "b", "--on", "1.7.2026"), "must be a date");
        assertWrongUsage(terminal.run("card", "--book", "b", "--mix-id", " ", "--out", "f.pdf"), "must not be blank");
        assertWrongUsage(
                terminal.run("card", "--book", "b", "--mix-id", "M", "--out", "f.pdf", "--paper", "A4"),
                "\"A4\" must be one of A6, 4x6in");
        assertWrongUsage(terminal.run("stats", "--values", "a\0b"), "cannot be a path");
    }

    @Test
    void readingAndFullMixtureExcludeEachOther() {
        assertWrongUsage(
                new Terminal(folder)
                        .run(
                                "air",
                                "--reading",
                                "5",
                                "--factor",
                                "0.4",
                                "--full-mixture",
                                "--air",
                                "6",
                                "--vc",
                                "1 L",
                                "--vt",
                                "1 L",
                                "--va",
                                "0 L",
                                "--vm",
                                "1 L"),
                "mutually exclusive");
    }

    @Test
    void theCommandsAreThoseOfTheContract() {
        assertThat(commands())
                .containsExactly(
                        "sample",
                        "factor",
                        "air",
                        "bowl",
                        "meter",
                        "simulate",
                        "stats",
                        "chart",
                        "compare",
                        "risk",
                        "holds",
                        "interlab",
                        "budget",
                        "gauge-study",
                        "components",
                        "forecast",
                        "issue",
                        "card",
                        "cards",
                        "field-sheet",
                        "page",
                        "page-readings",
                        "card-check",
                        "photo",
                        "source",
                        "group",
                        "register",
                        "plan",
                        "recall",
                        "readings",
                        "import",
                        "export",
                        "schema",
                        "restore",
                        "verify",
                        "backup",
                        "demo",
                        "completion");
    }

    private List<String> commands() {
        return List.copyOf(new Terminal(folder).commandLine().getSubcommands().keySet());
    }

    @Test
    void everyCommandHelps() {
        Said whole = new Terminal(folder).run("--help");
        assertThat(whole.status()).isZero();
        assertThat(commands()).allSatisfy(name -> {
            assertThat(whole.out()).contains("\n  " + name + " ");
            Said said = new Terminal(folder).run(name, "--help");
            assertThat(said.status()).isZero();
            assertThat(said.err()).isEmpty();
            assertThat(said.out())
                    .contains("Usage: porebench " + name)
                    .contains("--json")
                    .contains("0   done", "1   refused", "2   wrong usage");
        });
    }

    @Test
    void saysItsVersionThatOfJavaAndTheSystem() {
        Said said = new Terminal(folder).run("--version");
        assertThat(said.status()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines())
                .containsExactly(
                        "Porebench " + Release.version().orElse("(run from its sources)"),
                        "Java " + System.getProperty("java.version") + ", " + System.getProperty("java.vendor"),
                        System.getProperty("os.name") + " " + System.getProperty("os.version") + ", "
                                + System.getProperty("os.arch"));
        assertThat(new Terminal(folder).run("-V").out()).isEqualTo(said.out());
    }

    @Test
    void theHelpNamesTheVersionAndHowToAskForIt() {
        String help = new Terminal(folder).run("--help").out();
        assertThat(help).contains("--version");
        assertThat(help.stripTrailing().lines().reduce((before, last) -> last))
                .contains(new Terminal(folder)
                        .run("--version")
                        .out()
                        .lines()
                        .findFirst()
                        .orElseThrow());
    }
}
