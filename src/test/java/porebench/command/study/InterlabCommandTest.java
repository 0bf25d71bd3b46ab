package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.ReferenceFile;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class InterlabCommandTest {
    @TempDir
    Path folder;

    private Said compare(String rows, String... options) {
        LabFiles.write(folder, "values.csv", "laboratory,level,value\n" + rows);
        return new Terminal(folder)
                .json(Stream.concat(Stream.of("interlab", "--values", "values.csv"), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static String coal() {
        StringBuilder rows = new StringBuilder();
        for (ReferenceFile.Row row : ReferenceFile.read("laboratories-coal.csv").rows()) {
            for (double value : row.numbers("values")) {
                rows.append(row.text("laboratory"))
                        .append(',')
                        .append(row.text("level"))
                        .append(',')
                        .append(value)
                        .append('\n');
            }
        }
        return rows.toString();
    }

    private static double number(Object value) {
        return new BigDecimal(value.toString()).doubleValue();
    }

    /** Source: ISO 5725-2:1994, B.1 (recalled), level 3: m 1.667, s_r 0.017, s_R 0.035. */
    @Test
    @SuppressWarnings("unchecked")
    void answersWithTheFieldsOfTheContract() {
        Said said = compare(coal());
        assertThat(said.status()).isZero();
        assertThat(said.codes()).isEmpty();
        assertThat(said.list("levels")).hasSize(4);
        Map<String, Object> third = said.list("levels").get(2);
        assertThat(third)
                .containsEntry("level", "3")
                .containsEntry("count", 27)
                .containsKeys("sr", "sR", "r", "R", "h", "k", "cochran", "laboratories", "betweenVariance")
                .doesNotContainKeys("srReason", "hReason", "kReason");
        assertThat(number(third.get("mean"))).isEqualTo(1.667, within(0.0005));
        assertThat(number(third.get("sr"))).isEqualTo(0.0170782512765993, within(1e-12));
        assertThat(number(third.get("sR"))).isEqualTo(0.0347675168991896, within(1e-12));
        assertThat(number(third.get("r"))).isEqualTo(2.8 * 0.0170782512765993, within(1e-12));
        assertThat(number(third.get("R"))).isEqualTo(2.8 * 0.0347675168991896, within(1e-12));
        assertThat((List<Object>) third.get("h")).hasSize(8);
        assertThat(number(((List<Object>) third.get("h")).get(2))).isEqualTo(-1.66857879338382, within(1e-9));
        assertThat(number(((List<Object>) third.get("k")).get(4))).isEqualTo(2.15352760823266, within(1e-9));
        assertThat(number(third.get("cochran"))).isEqualTo(0.579710144927535, within(1e-9));
        Map<String, Object> cochran = (Map<String, Object>) third.get("cochranTest");
        assertThat(cochran)
                .containsEntry("laboratory", "5")
                .containsEntry("verdict", "straggler")
                .containsEntry("size", 3);
        assertThat(number(cochran.get("critical5"))).isEqualTo(0.515687457036501, within(1e-9));
        assertThat((Map<String, Object>) third.get("grubbs")).containsEntry("verdict", "none");
        List<Map<String, Object>> laboratories = (List<Map<String, Object>>) third.get("laboratories");
        assertThat(laboratories).hasSize(8);
        assertThat(laboratories.get(4)).containsEntry("laboratory", "5").containsEntry("count", 5);
        assertThat((Map<String, Object>) laboratories.get(4).get("k")).containsEntry("verdict", "outlier");
        assertThat(number(((Map<String, Object>) laboratories.get(4).get("k")).get("critical1")))
                .isEqualTo(1.715554, within(6e-7));
        assertThat((Map<String, Object>) laboratories.get(0).get("h")).containsEntry("verdict", "none");
    }

    @Test
    void saysInWordsWhatStandsOut() {
        LabFiles.write(folder, "values.csv", "laboratory,level,value\n" + coal());
        String out =
                new Terminal(folder).run("interlab", "--values", "values.csv").out();
        assertThat(out)
                .contains("Level 1")
                .contains("Repeatability standard deviation s_r")
                .contains("for the most common n = 3")
                .contains("laboratory 5, C = 0.580")
                .contains("straggler")
                .contains("statistical outlier")
                .contains("not above the 5 % critical value")
                .contains("Of these 64 values of h and k about 3 are above their 5 % critical value by chance")
                .contains("All results are in the figures.");
        assertThat(Arrays.stream(out.split("\n")).filter(line -> line.startsWith("         5  5  1.65 ")))
                .singleElement()
                .asString()
                .endsWith("statistical outlier");
    }

    /** 1, 3 | 4, 6 | 9, 7 in whole divisions: 2 - 6.5 = -4.5; u^2 = 1 + 2.25 and a rounding of 1 / 12 (LaboratoryBiasTest). */
    @Test
    void saysHowFarEachLaboratoryLiesFromTheOthers() {
        Said said = compare("a,1,1\na,1,3\nb,1,4\nb,1,6\nc,1,9\nc,1,7\n");
        Map<String, Object> first = said.list("biases").get(0);
        assertThat(first).containsEntry("laboratory", "a");
        assertThat(number(first.get("bias"))).isCloseTo(-4.5, within(1e-9));
        assertThat(number(first.get("standardUncertainty"))).isCloseTo(Math.sqrt(3.25 + 1.0 / 12), within(1e-9));
        assertThat(said.json()).doesNotContainKey("biasesReason");
        Said two = compare("a,1,1\na,1,3\nb,1,4\nb,1,6\n");
        assertThat(two.list("biases")).isEmpty();
        assertThat(two.json()).containsKey("biasesReason");
    }

    @Test
    @SuppressWarnings("unchecked")
    void withholdsWhatMeansNothingWithTheReason() {
        Said two = compare("a,1,0.4\na,1,0.5\nb,1,0.9\nb,1,1.2\n");
        assertThat(two.status()).isZero();
        assertThat(two.codes()).containsExactly("study.two-laboratories");
        Map<String, Object> level = two.list("levels").get(0);
        assertThat((List<Object>) level.get("h")).containsExactly(null, null);
        assertThat(level.get("hReason")).asString().contains("It takes three laboratories");
        assertThat(number(level.get("sR"))).isPositive();

        Said still = compare("a,1,0.4\na,1,0.4\nb,1,0.4\nb,1,0.4\nc,1,0.4\nc,1,0.5\n");
        level = still.list("levels").get(0);
        assertThat((List<Object>) level.get("k")).containsExactly(null, null, null);
        assertThat(level.get("kReason")).asString().contains("too little for this test");
        assertThat(number(level.get("cochran"))).isCloseTo(0.5, within(1e-12));
        assertThat((Map<String, Object>) level.get("cochranTest")).containsOnlyKeys("reason");

        Said equal = compare("a,1,0.4\na,1,0.4\nb,1,0.4\nb,1,0.4\nc,1,0.4\nc,1,0.4\n");
        level = equal.list("levels").get(0);
        assertThat(level).containsEntry("sr", null).containsEntry("sR", null).containsEntry("cochran", null);
        assertThat(level.get("srReason")).asString().contains("All results are equal");
        String out =
                new Terminal(folder).run("interlab", "--values", "values.csv").out();
        assertThat(out)
                .contains("h is not shown: All results are equal")
                .contains("Cochran is not tested")
                .contains("Grubbs, one mean, is not tested")
                .contains("Grubbs, two means, is not tested");
    }

    @Test
    void saysWhatIsDoubtful() {
        Said said = compare("a,1,1\na,1,5\nb,1,2\nb,1,4\nc,1,3\na,2,1\na,3,1\na,3,2\nb,3,7\n");
        assertThat(said.status()).isZero();
        assertThat(said.codes())
                .containsExactly(
                        "study.between-negative",
                        "study.one-laboratory",
                        "study.laboratories-absent",
                        "study.two-laboratories",
                        "study.laboratories-absent");
        assertThat(said.list("problems").get(1)).containsEntry("line", 7);
        assertThat(said.list("problems").get(2).get("message"))
                .asString()
                .contains("level 2")
                .contains("b, c");
        String out =
                new Terminal(folder).run("interlab", "--values", "values.csv").out();
        assertThat(out).contains("of two it is 0.71 whatever they find");
    }

    /** A file read to 0.01 is judged by its own last place, or by the division given. */
    @Test
    void takesTheDivisionOfTheFileUnlessOneIsGiven() {
        String rows = "a,1,0.41\na,1,0.45\nb,1,0.52\nb,1,0.55\nc,1,0.43\nc,1,0.49\n";
        assertThat(compare(rows).list("levels").get(0)).doesNotContainKey("kReason");
        assertThat(number(compare(rows).json().get("division"))).isEqualTo(0.01);
        assertThat(compare(rows, "--division", "0.1").list("levels").get(0)).containsKey("kReason");
    }

    @Test
    void refusesWhatItCannotRead() {
        assertThat(compare("").codes()).containsExactly("study.no-row");
        assertThat(compare("a,1,x\n,1,2\n").codes()).containsExactly("csv.not-a-number", "csv.required");
        assertThat(compare("a,1,2\n", "--division", "0").codes()).containsExactly("command.not-positive");
        LabFiles.write(folder, "other.csv", "lab,value\na,1\n");
        assertThat(new Terminal(folder)
                        .json("interlab", "--values", "other.csv")
                        .status())
                .isEqualTo(1);
    }
}
