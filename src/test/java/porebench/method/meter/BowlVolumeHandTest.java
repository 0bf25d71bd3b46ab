package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Said;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Temperature;
import porebench.quantity.VolumeUnit;

/** Bowl volumes by pencil; V = (full - empty - plate) / rho as in JIS A 1128, clause 5.1 (seen). */
class BowlVolumeHandTest {
    private static Answer<BowlVolume> bowl(double empty, double plate, double full, double celsius) {
        return BowlVolume.of(new Mass(empty), new Mass(plate), new Mass(full), new Temperature(celsius));
    }

    /**
     * Bowl 3.500 kg, plate 0.800 kg, full 11.287 kg at 20 C: 6.987 kg of water of 998.20675 kg/m3.
     *
     * <pre>
     * 6.987 / 998.20675 = 0.006999552 m3 = 6.99955 L
     * </pre>
     */
    @Test
    void dividesTheWaterByItsDensity() {
        BowlVolume bowl = bowl(3.5, 0.8, 11.287, 20).value().orElseThrow();
        assertThat(bowl.volume().in(VolumeUnit.LITRE)).isCloseTo(6.99955, offset(0.000005));
        assertThat(bowl.waterDensity().kilogramsPerCubicMetre()).isCloseTo(998.20675, offset(0.00002));
        assertThat(bowl(3.5, 0.8, 11.287, 20).problems()).isEmpty();
    }

    /**
     * In pounds at 70 F: 15.6 lb of water at 62.30 lb/ft3 (handbook, seen) are 0.2504 ft3.
     */
    @Test
    void agreesWithAHandbooksWaterInPounds() {
        BowlVolume bowl = BowlVolume.of(
                        Mass.of(7.2, MassUnit.POUND),
                        Mass.of(1.8, MassUnit.POUND),
                        Mass.of(24.6, MassUnit.POUND),
                        new Temperature((70 - 32) / 1.8))
                .value()
                .orElseThrow();
        assertThat(bowl.volume().in(VolumeUnit.CUBIC_FOOT)).isCloseTo(15.6 / 62.30, offset(0.00002));
    }

    /** 0.01 to 50 L is what a bowl or a calibration vessel holds at all (common practice, no source); 998.20675 kg/m3 at 20 C. */
    @Test
    void refusesAVesselThatNobodyHas() {
        // 0.0099821 kg is 0.010000 L; 0.0099820 kg is 0.0099999 L.
        assertThat(bowl(3.5, 0, 3.5099821, 20).value()).isPresent();
        assertThat(bowl(3.5, 0, 3.5099820, 20).problems())
                .extracting(Problem::code)
                .containsExactly("bowl.vessel-impossible");
        // 49.9103 kg is 49.99996 L; 0.1 g more is beyond 50 L.
        assertThat(bowl(3.5, 0, 53.4103, 20).value()).isPresent();
        assertThat(bowl(3.5, 0, 53.4104, 20).problems())
                .extracting(Problem::field)
                .containsExactly("full");
    }

    /** A bowl may be filled without a plate. */
    @Test
    void takesAPlateOfNoMass() {
        assertThat(bowl(3.5, 0, 10.487, 20).value().orElseThrow().volume().in(VolumeUnit.LITRE))
                .isCloseTo(6.99955, offset(0.000005));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.8, 11, 20, empty, bowl.mass-not-positive, 'The mass of the empty bowl, 0 kg, must be greater than "
                + "0. Weigh again, or correct the mass.'",
        "-1, 0.8, 11, 20, empty, bowl.mass-not-positive, 'The mass of the empty bowl, -1 kg, must be greater "
                + "than 0. Weigh again, or correct the mass.'",
        "3.5, 0.8, 0, 20, full, bowl.mass-not-positive, 'The mass of the full bowl, 0 kg, must be greater than "
                + "0. Weigh again, or correct the mass.'",
        "3.5, -0.1, 11, 20, plate, bowl.mass-negative, 'The mass of the glass plate, -0.1 kg, must not be "
                + "negative. Weigh again, or correct the mass.'",
        "3.5, 0.8, 4.3, 20, full, bowl.full-too-light, 'The full bowl of 4.3 kg must weigh more than bowl and "
                + "plate together, 4.3 kg. Correct one of the masses.'",
        "3.5, 0.8, 4.2, 20, full, bowl.full-too-light, 'The full bowl of 4.2 kg must weigh more than bowl and "
                + "plate together, 4.3 kg. Correct one of the masses.'",
        "3.5, 0.8, 11, 40.1, waterTemperature, water.temperature-out-of-range, 'Water temperature 40.1 C must be "
                + "from 0 to 40 C. Correct the temperature.'",
        "3.5, 0.8, 11, -0.1, waterTemperature, water.temperature-out-of-range, 'Water temperature -0.1 C must be "
                + "from 0 to 40 C. Correct the temperature.'"
    })
    void refusesWeighingsThatCannotBe(
            double empty, double plate, double full, double celsius, String field, String code, String words) {
        Answer<BowlVolume> answer = bowl(empty, plate, full, celsius);
        assertThat(answer.value()).isEmpty();
        assertThat(Said.codes(answer.problems())).containsExactly(code);
        assertThat(answer.problems().get(0).field()).isEqualTo(field);
        assertThat(Said.text(answer.problems().get(0))).isEqualTo(words);
    }

    /** 2 - 1 - 1 is 0 in binary too: not a drop of water in the bowl. */
    @Test
    void refusesABowlWithNothingInIt() {
        assertThat(Said.codes(bowl(1, 1, 2, 20).problems())).containsExactly("bowl.full-too-light");
    }

    @Test
    void takesBothEndsOfTheTemperaturesAndKnowsAGramOfWaterForNoBowl() {
        assertThat(bowl(3.5, 0.8, 11, 0).value()).isPresent();
        assertThat(bowl(3.5, 0.8, 11, 40).value()).isPresent();
        assertThat(Said.codes(bowl(3.5, 0.8, 4.301, 20).problems())).containsExactly("bowl.vessel-impossible");
    }

    @Test
    void saysEverythingAtOnce() {
        List<Problem> problems = bowl(0, -1, 0, 99).problems();
        assertThat(problems.stream().map(Problem::field)).containsExactly("empty", "full", "plate", "waterTemperature");
    }
}
