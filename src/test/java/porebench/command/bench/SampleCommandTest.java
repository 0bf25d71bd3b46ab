package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class SampleCommandTest {
    private static final double KILOGRAMS_A_POUND = 0.45359237;

    @TempDir
    Path folder;

    private static double number(Map<String, Object> json, String name) {
        return ((BigDecimal) json.get(name)).doubleValue();
    }

    private Said sample(String mixes, String mixId, String... more) {
        LabFiles.write(folder, "mix.csv", mixes);
        List<String> arguments =
                new java.util.ArrayList<>(List.of("sample", "--mix", "mix.csv", "--mix-id", mixId, "--bowl", "7.00 L"));
        arguments.addAll(List.of(more));
        return new Terminal(folder).json(arguments.toArray(String[]::new));
    }

    /**
     * Source of the mix: NAVEDTRA 14070 Engineering Aid, chapter 17 (seen): a cubic yard with 305 lb water, 610 lb cement,
     * 1735 lb coarse, 1152 lb fine, 5 % air, relative densities 3.15, 2.65, 2.60. The masses in a bowl of 0.250 ft3 are derived:
     * 1152 x 0.250 / 27 = 10.667 lb and 1735 x 0.250 / 27 = 16.065 lb.
     */
    @Test
    void takesTheShareOfTheBowlFromTheTrainingManualsMix() {
        LabFiles.write(
                folder,
                "mix.csv",
                LabFiles.MIX_COLUMNS
                        + "NAV,Training manual,1,yd3,5,cement,cement,,610,lb,ssd,,,3.15,\n"
                        + "NAV,,,,,water,water,,305,lb,ssd,,,1,\n"
                        + "NAV,,,,,sand,fine,S-1,1152,lb,ssd,,,2.65,\n"
                        + "NAV,,,,,stone,coarse,S-2,1735,lb,ssd,,,2.60,\n");
        Terminal terminal = new Terminal(folder);
        Said said = terminal.json("sample", "--mix", "mix.csv", "--mix-id", "NAV", "--bowl", "0.250 ft3");
        assertThat(said.status()).isZero();
        assertThat(number(said.json(), "fineKilograms") / KILOGRAMS_A_POUND).isEqualTo(10.667, within(0.0005));
        assertThat(number(said.json(), "coarseKilograms") / KILOGRAMS_A_POUND).isEqualTo(16.065, within(0.0005));
        Said text = terminal.run("sample", "--mix", "mix.csv", "--mix-id", "NAV", "--bowl", "0.250 ft3");
        assertThat(text.status()).isZero();
        assertThat(text.out())
                .contains("S-1     sand      fine        10.667")
                .contains("Coarse aggregate                           16.065   lb");
        assertThat(text.err()).contains("warning: sand: its absorption is missing");
    }

    /**
     * Source: Iowa DOT I.M. 318 (seen): a vessel of 0.0125 ft3, 354 mL, is 5.10 % of a bowl of 0.245 ft3. Backwards: to
     * withdraw 5.102 %, the exact value, from that bowl takes 354 mL.
     */
    @Test
    void withdrawsTheVesselOfTheInstructionMemorandum() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX.replace(",1,m3,5,", ",1,m3,5.102,"));
        Said said = new Terminal(folder).json("sample", "--mix", "mix.csv", "--mix-id", "M-1", "--bowl", "0.245 ft3");
        assertThat(number(said.json(), "withdrawMillilitres")).isEqualTo(354, within(0.5));
    }

    @Test
    void namesThePlantWhereTheMixDoes() {
        String[] lines = LabFiles.PLAIN_MIX.split("\n");
        lines[0] += ",plant";
        lines[1] += ",Quay plant";
        for (int line = 2; line < lines.length; line++) {
            lines[line] += ",";
        }
        assertThat(sample(String.join("\n", lines) + "\n", "M-1").json()).containsEntry("plant", "Quay plant");
        assertThat(sample(LabFiles.PLAIN_MIX, "M-1").json()).doesNotContainKey("plant");
    }

    /** By pencil: 7 L of a cubic metre: 4.9 kg of sand and 7.35 kg of stone; 5 % of 7 L are 350 mL. */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = sample(LabFiles.PLAIN_MIX, "M-1");
        assertThat(said.status()).isZero();
        Map<String, Object> json = said.json();
        assertThat(json)
                .containsKeys(
                        "fineKilograms",
                        "coarseKilograms",
                        "components",
                        "batchVolumeCubicMetres",
                        "inundationWaterLitres",
                        "withdrawMillilitres",
                        "problems");
        assertThat(number(json, "fineKilograms")).isEqualTo(4.9, within(1e-12));
        assertThat(number(json, "coarseKilograms")).isEqualTo(7.35, within(1e-12));
        assertThat(number(json, "batchVolumeCubicMetres")).isEqualTo(1.0, within(1e-15));
        assertThat(number(json, "withdrawMillilitres")).isEqualTo(350, within(1e-9));
        // 7 - 4.9 / 2.65 - 7.35 / 2.70 = 2.4287 L
        assertThat(number(json, "inundationWaterLitres")).isEqualTo(2.4287, within(0.00005));
        assertThat(number(json, "startWaterLitres")).isEqualTo(7.0 / 3, within(1e-12));
        Map<String, Object> sand = said.list("components").get(0);
        assertThat(sand).containsEntry("source", "S-1").containsEntry("role", "fine");
        assertThat(number(sand, "kilograms")).isEqualTo(4.9, within(1e-12));
        assertThat(number(sand, "ovenDryKilograms")).isEqualTo(4.9 / 1.01, within(1e-12));
        assertThat(said.list("problems")).isEmpty();
    }

    /** By pencil: three trials and a tenth more: 4.9 x 3.3 = 16.17 kg; 1 % of 4.9 kg are 49 g. */
    @Test
    void listsWhatToWeighAndToFetch() {
        Said said = sample(LabFiles.PLAIN_MIX, "M-1", "--trials", "3", "--spare", "10");
        Map<String, Object> sand = said.list("weighOut").get(0);
        assertThat(number(sand, "eachKilograms")).isEqualTo(4.9, within(1e-12));
        assertThat(number(sand, "lowestKilograms")).isEqualTo(4.851, within(1e-12));
        assertThat(number(sand, "highestKilograms")).isEqualTo(4.949, within(1e-12));
        assertThat(number(sand, "totalKilograms")).isEqualTo(16.17, within(1e-12));
    }

    /** Half of the stone is held on 37.5 mm and left out, and the bowl then holds more of the sand. */
    @Test
    void leavesBigStoneOutWhenAsked() {
        String mix = LabFiles.PLAIN_MIX.replace("0.5,,2.70,", "0.5,,2.70,50");
        double sand = number(sample(mix, "M-1").json(), "fineKilograms");
        Said sieved = sample(mix, "M-1", "--wet-sieved");
        assertThat(sieved.json()).containsEntry("wetSieved", true);
        assertThat(number(sieved.json(), "fineKilograms")).isGreaterThan(sand);
        assertThat(sieved.codes()).isEmpty();
        assertThat(sample(mix, "M-1").codes()).containsExactly("mix.consider-wet-sieving");
    }

    @Test
    void whatIsNotKnownIsNull() {
        Said said = sample(LabFiles.PLAIN_MIX.replace("1.0,,2.65,", ",,,"), "M-1");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("inundationWaterLitres", null);
        assertThat(said.list("components").get(0)).containsEntry("ovenDryKilograms", null);
    }

    @Test
    void refusesAMixThatIsNotInTheFile() {
        Said said = sample(LabFiles.PLAIN_MIX, "M-2");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.json()).containsOnlyKeys("problems");
        assertThat(said.codes()).containsExactly("command.mix-not-in-file");
    }

    @Test
    void refusesABadMixWithLineAndColumn() {
        Said said = sample(LabFiles.PLAIN_MIX.replace(",700,kg,", ",seven,kg,"), "M-1");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.list("problems"))
                .anySatisfy(problem -> assertThat(problem)
                        .containsEntry("severity", "error")
                        .containsEntry("code", "csv.not-a-number")
                        .containsEntry("file", "mix.csv")
                        .containsEntry("line", 4)
                        .containsEntry("column", 9));
    }

    @Test
    void aBadMixDoesNotRefuseAnotherButIsListed() {
        Said said = sample(LabFiles.PLAIN_MIX + "M-2,Bad,1,m3,5,sand,fine,S-1,seven,kg,ssd,1.0,,2.65,\n", "M-1");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsKey("fineKilograms");
        assertThat(said.list("problems").get(0))
                .containsEntry("severity", "error")
                .containsEntry("line", 6);
    }

    @Test
    void refusesAFileThatIsNotThere() {
        Said said = new Terminal(folder).json("sample", "--mix", "no.csv", "--mix-id", "M-1", "--bowl", "7 L");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).contains("csv.file-missing");
    }

    @Test
    void refusesABowlOfNothingAndImpossibleNumbers() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX);
        Said said = new Terminal(folder)
                .json(
                        "sample",
                        "--mix",
                        "mix.csv",
                        "--mix-id",
                        "M-1",
                        "--bowl",
                        "-7 L",
                        "--trials",
                        "0",
                        "--spare",
                        "-1",
                        "--profile",
                        "x");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes())
                .containsExactly(
                        "command.trials-out-of-range",
                        "command.spare-out-of-range",
                        "profile.unknown",
                        "sample.bowl-not-positive");
    }

    @Test
    void refusesAMixThatCannotBe() {
        Said said = sample(LabFiles.PLAIN_MIX.replace(",1,m3,5,", ",0.5,m3,5,"), "M-1");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("csv.left-out", "mix.volumes-do-not-fit", "command.mix-not-in-file");
    }
}
