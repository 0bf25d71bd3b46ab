package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class AirCommandTest {
    @TempDir
    Path folder;

    /** Source: AASHTO re:source newsletter, April 2015: reading 4.0, factor 0.3, air 3.7 (seen). */
    @Test
    void subtractsTheFactorAsTheNewsletterDoes() {
        Said said = new Terminal(folder).json("air", "--reading", "4.0", "--factor", "0.3");
        assertThat(said.status()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.json()).containsOnlyKeys("airPercent", "reportedAirPercent", "rule", "problems");
        assertThat(said.json())
                .containsEntry("airPercent", new BigDecimal("3.7"))
                .containsEntry("reportedAirPercent", new BigDecimal("3.7"));
        assertThat(said.list("problems")).isEmpty();
    }

    @Test
    void saysTheRuleInWords() {
        Said said = new Terminal(folder).json("air", "--reading", "5.4", "--factor", "0.4");
        assertThat(said.json().get("rule"))
                .isEqualTo("Reported to the nearest 0.1 % air, ties to even"
                        + " (C231 report clause, as agencies quote it; ASTM C231/C231M)");
    }

    /**
     * By pencil: 5.35 - 0.30 = 5.05, a tie, to the even 5.0; 9.30 - 0.42 = 8.88, above 8 % on the gauge, to half of 0.25 is
     * 8.875; on EN 12350-7 to 8.9.
     */
    @ParameterizedTest
    @CsvSource({
        "5.35, 0.30, 0.1,  astm-c231,  5.05, 5.0",
        "9.30, 0.42, 0.25, astm-c231,  8.88, 8.875",
        "9.30, 0.42, 0.25, en-12350-7, 8.88, 8.9",
    })
    void roundsByTheProfile(
            String reading, String factor, String division, String profile, BigDecimal air, BigDecimal reported) {
        Said said = new Terminal(folder)
                .json("air", "--reading", reading, "--factor", factor, "--division", division, "--profile", profile);
        assertThat(said.json()).containsEntry("airPercent", air).containsEntry("reportedAirPercent", reported);
    }

    @Test
    void keepsAllDigitsOfTheReading() {
        Said said = new Terminal(folder).json("air", "--reading", "5.4000000001", "--factor", "0.3000000000");
        assertThat(said.out()).startsWith("{\"airPercent\":5.1000000001,");
    }

    /** By the formulas of ASTM C231 (recalled): with no stone held and only mortar passing both airs are that of the sieved. */
    @Test
    void nothingHeldLeavesTheAirAsItIs() {
        Said said = new Terminal(folder)
                .json(
                        "air",
                        "--full-mixture",
                        "--air",
                        "6.2",
                        "--vc",
                        "0.7 m3",
                        "--vt",
                        "700 L",
                        "--va",
                        "0 L",
                        "--vm",
                        "0.7 m3");
        assertThat(said.json()).containsOnlyKeys("fullMixturePercent", "mortarPercent", "problems");
        assertThat(((BigDecimal) said.json().get("fullMixturePercent")).doubleValue())
                .isEqualTo(6.2, within(1e-12));
        assertThat(((BigDecimal) said.json().get("mortarPercent")).doubleValue())
                .isEqualTo(6.2, within(1e-12));
    }

    /**
     * By pencil, in ft3: As 6, Vc 20, Vt 25, Va 5, Vm 12: full mixture 100 x 6 x 20 / (2500 - 30) = 4.858; mortar
     * 100 x 6 x 20 / (1200 + 6 x 8) = 9.615.
     */
    @Test
    void saysTheAirOfFullMixtureAndMortarInText() {
        Said said = new Terminal(folder)
                .run(
                        "air",
                        "--full-mixture",
                        "--air",
                        "6",
                        "--vc",
                        "20 ft3",
                        "--vt",
                        "25 ft3",
                        "--va",
                        "5 ft3",
                        "--vm",
                        "12 ft3");
        assertThat(said.status()).isZero();
        assertThat(said.out().lines())
                .containsExactly("Air of the full mixture  4.86  % air", "Air of the mortar        9.62  % air");
    }

    @Test
    void saysTheAirInAlignedText() {
        Said said = new Terminal(folder).run("air", "--reading", "15.4", "--factor", "0.4");
        assertThat(said.out().lines())
                .containsExactly(
                        "Reading                  15.4   % air",
                        "Factor G                  0.4   % air",
                        "Air content              15.0   % air",
                        "Air content as reported  15.00  % air",
                        "Reported to the nearest 0.05 % air, ties to even (C231 report clause: nearest half scale"
                                + " division above 8 %; ASTM C231/C231M)");
    }

    @Test
    void aNegativeFactorIsSaidButNotRefused() {
        Said said = new Terminal(folder).json("air", "--reading", "5", "--factor", "-0.1");
        assertThat(said.status()).isZero();
        assertThat(said.codes()).containsExactly("air.factor-negative");
        assertThat(said.list("problems").get(0))
                .containsOnlyKeys("severity", "field", "code", "message", "file", "line", "column")
                .containsEntry("severity", "warning")
                .containsEntry("field", "factor")
                .containsEntry(
                        "message",
                        "The factor -0.1 % is negative, but a factor is 0 or more. Give the "
                                + "factor of the card, or make new trials.")
                .containsEntry("file", null)
                .containsEntry("line", null)
                .containsEntry("column", null);
    }

    @Test
    void refusesEverythingWrongAtOnce() {
        Said said = new Terminal(folder)
                .json("air", "--reading", "101", "--factor", "0.3", "--division", "0", "--profile", "nobody");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.json()).containsOnlyKeys("problems");
        assertThat(said.codes())
                .containsExactly("profile.unknown", "air.reading-out-of-range", "air.division-out-of-range");
        assertThat(said.list("problems").get(0).get("message"))
                .isEqualTo("There is no profile nobody. Choose one of astm-c231, aashto-t152, en-12350-7, "
                        + "jis-a1128.");
    }

    @Test
    void refusesOnStandardErrorInText() {
        Said said = new Terminal(folder).run("air", "--reading", "101", "--factor", "0.3");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.out()).isEmpty();
        assertThat(said.err().lines())
                .containsExactly("error: Reading 101 % must be from 0 to 100 %. Correct " + "the reading.");
    }

    @Test
    void refusesVolumesThatContradict() {
        Said said = new Terminal(folder)
                .json(
                        "air",
                        "--full-mixture",
                        "--air",
                        "6",
                        "--vc",
                        "20 ft3",
                        "--vt",
                        "20 ft3",
                        "--va",
                        "5 ft3",
                        "--vm",
                        "12 ft3");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("air.volumes-contradict");
    }
}
