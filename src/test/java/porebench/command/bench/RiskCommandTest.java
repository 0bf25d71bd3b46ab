package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class RiskCommandTest {
    @TempDir
    Path folder;

    private Said risk(String... options) {
        return new Terminal(folder).json(options);
    }

    private static double number(Object value) {
        return new BigDecimal(value.toString()).doubleValue();
    }

    /** Source: the integrals of JCGM 106:2012, 9.5, in R 4.2.2 (src/test/resources/reference/load-risk.csv). */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = risk(
                "risk",
                "--target",
                "6",
                "--tolerance",
                "1.5",
                "--spread",
                "0.6",
                "--error",
                "0.3",
                "--mean",
                "6.8",
                "--reading-spread",
                "0.2");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsOnlyKeys("wronglyPassed", "wronglyFailed", "curve", "problems");
        assertThat(number(said.json().get("wronglyPassed"))).isCloseTo(0.00173837553205449, within(1e-11));
        assertThat(number(said.json().get("wronglyFailed"))).isCloseTo(0.143566990949936, within(1e-11));
        assertThat(said.list("curve"))
                .hasSize(41)
                .allSatisfy(point -> assertThat(point).containsOnlyKeys("error", "wronglyPassed", "wronglyFailed"));
        assertThat(number(said.list("curve").get(0).get("error"))).isEqualTo(-0.75);
    }

    /** The mean is the target and readings are exact if nothing is said of them: by a table of the normal distribution. */
    @Test
    void theMeanIsTheTargetAndReadingsAreExactIfNotGiven() {
        Said said = risk("risk", "--target", "6", "--tolerance", "1.5", "--spread", "0.6", "--error", "-0.3");
        assertThat(number(said.json().get("wronglyPassed"))).isCloseTo(0.0048598, within(1e-7));
        assertThat(number(said.json().get("wronglyFailed"))).isCloseTo(0.0165404, within(1e-7));
    }

    @Test
    void saysTheSharesInPercentAndTheirCurve() {
        Terminal terminal = new Terminal(folder);
        String[] line = {"risk", "--target", "6", "--tolerance", "1.5", "--spread", "0.6", "--error", "-0.3"};
        assertThat(terminal.run(line).out())
                .contains("Of all loads wrongly passed  0.49  %")
                .contains("Of all loads wrongly failed  1.65  %");
        assertThat(terminal.in(Locale.forLanguageTag("es")).run(line).out()).contains("rechazadas por error");
    }

    @Test
    void refusesLimitsAndSpreadsThatAreNone() {
        Said said = risk(
                "risk",
                "--target",
                "6",
                "--tolerance",
                "0",
                "--spread",
                "-1",
                "--error",
                "0",
                "--reading-spread",
                "-1");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes())
                .containsExactly("risk.tolerance-not-positive", "risk.spread-negative", "risk.reading-spread-negative");
        assertThat(new Terminal(folder).run("risk", "--target", "6").status()).isEqualTo(2);
    }
}
