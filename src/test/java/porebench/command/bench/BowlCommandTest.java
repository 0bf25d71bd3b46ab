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

class BowlCommandTest {
    @TempDir
    Path folder;

    private static double number(Said said, String name) {
        return ((BigDecimal) said.json().get(name)).doubleValue();
    }

    /**
     * Source of the densities: the table in ASTM C29 and C138 (recalled): 15.6 C 999.01, 21.1 C 997.97, 29.4 C 995.83 kg/m3;
     * the formula used here agrees within 0.016. By pencil: 7 kg of water fill 7000 / density litres.
     */
    @ParameterizedTest
    @CsvSource({"15.6 C, 999.01", "21.1 C, 997.97", "29.4 C, 995.83", "60 F, 999.01"})
    void dividesTheWaterByItsDensity(String temperature, double density) {
        Said said = new Terminal(folder)
                .json(
                        "bowl",
                        "--empty",
                        "3.500 kg",
                        "--plate",
                        "1200 g",
                        "--full",
                        "11.700 kg",
                        "--water-temp",
                        temperature);
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsOnlyKeys("bowlLitres", "waterDensity", "problems");
        assertThat(number(said, "waterDensity")).isEqualTo(density, within(0.03));
        assertThat(number(said, "bowlLitres")).isEqualTo(7000 / density, within(0.0003));
    }

    /**
     * Source: Iowa DOT I.M. 318 (seen): a vessel of 0.0125 ft3, printed as 354 mL. Filled with water at 70 F, 62.30 lb/ft3 by
     * the handbook (seen), it holds 0.0125 x 62.30 = 0.7788 lb.
     */
    @Test
    void findsTheVesselOfTheInstructionMemorandum() {
        Said said = new Terminal(folder)
                .json("bowl", "--empty", "1 lb", "--plate", "0 lb", "--full", "1.7788 lb", "--water-temp", "70 F");
        assertThat(1000 * number(said, "bowlLitres")).isEqualTo(354, within(0.5));
    }

    /** Source: field-testing study notes (seen): 18.6 lb empty, 54.1 lb full: 35.5 lb net; of water at 70 F 0.570 ft3. */
    @Test
    void saysLitresAndCubicFeetInText() {
        Said said = new Terminal(folder)
                .run("bowl", "--empty", "18.6 lb", "--plate", "0 g", "--full", "54.1 lb", "--water-temp", "70 F");
        assertThat(said.status()).isZero();
        assertThat(said.out().lines().toList().get(1)).matches("Bowl volume +0\\.5698\\d  ft3");
        assertThat(said.out().lines().toList().get(2)).matches("Water density +997\\.9\\d +kg/m3");
    }

    @Test
    void refusesWeighingsThatCannotBe() {
        Said said = new Terminal(folder)
                .json("bowl", "--empty", "0 kg", "--plate", "-1 kg", "--full", "2 kg", "--water-temp", "50 C");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes())
                .containsExactly("bowl.mass-not-positive", "bowl.mass-negative", "water.temperature-out-of-range");
    }

    @Test
    void aFullBowlMustWeighMoreThanAnEmptyOne() {
        Said said = new Terminal(folder)
                .run("bowl", "--empty", "3 kg", "--plate", "1 kg", "--full", "4 kg", "--water-temp", "20 C");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).startsWith("error: The full bowl of 4 kg must weigh more than bowl and plate together");
    }
}
