package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.ReferenceFile;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class StudyCommandsTest {
    @TempDir
    Path folder;

    private Said study(String rows, String... options) {
        LabFiles.write(folder, "v.csv", "operator,sample,repeat,value\n" + rows);
        return json("gauge-study", options);
    }

    private Said components(String text, String... options) {
        LabFiles.write(folder, "v.csv", text);
        return json("components", options);
    }

    private Said json(String command, String... options) {
        return new Terminal(folder)
                .json(Stream.concat(Stream.of(command, "--values", "v.csv"), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static double number(Map<String, Object> json, String name) {
        return new BigDecimal(json.get(name).toString()).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Map<String, Object> json, String name) {
        return (Map<String, Object>) json.get(name);
    }

    /** Source: AIAG, Measurement Systems Analysis, 4th edition (seen): the study of ten parts. */
    private static String published() {
        StringBuilder rows = new StringBuilder();
        for (ReferenceFile.Row row : ReferenceFile.read("gauge-aiag.csv").rows()) {
            double[] values = row.numbers("values");
            for (int i = 0; i < values.length; i++) {
                rows.append(row.text("operator") + "," + row.text("sample") + "," + (i + 1) + "," + values[i] + "\n");
            }
        }
        return rows.toString();
    }

    /** Printed without interaction: variances 0.0400, 0.0515, 1.086, together 0.0914, 27.9 % of study variation. */
    @Test
    void answersAGaugeStudyWithTheFieldsOfTheContract() {
        Said said = study(published(), "--no-interaction");
        assertThat(said.status()).isZero();
        assertThat(said.codes()).isEmpty();
        assertThat(said.list("anova"))
                .extracting(line -> line.get("source"))
                .containsExactly("sample", "operator", "repeatability", "total");
        assertThat(said.list("anova").get(0)).containsOnlyKeys("source", "df", "ss", "ms", "f", "p");
        assertThat(said.list("anova").get(2)).containsEntry("df", 78).containsEntry("f", null);
        Map<String, Object> components = group(said.json(), "components");
        assertThat(components).containsOnlyKeys("repeatability", "operator", "interaction", "sample");
        assertThat(components).containsEntry("interaction", null);
        assertThat(number(group(components, "repeatability"), "variance")).isEqualTo(0.0400, within(0.00005));
        assertThat(number(group(components, "operator"), "variance")).isEqualTo(0.0515, within(0.00005));
        assertThat(number(group(components, "sample"), "variance")).isEqualTo(1.086, within(0.0005));
        assertThat(group(components, "sample")).containsOnlyKeys("variance", "rawVariance", "low", "high", "share");
        assertThat(number(group(components, "operator"), "low"))
                .isLessThan(number(group(components, "operator"), "variance"));
        Map<String, Object> gauge = group(said.json(), "gauge");
        assertThat(number(gauge, "variance")).isEqualTo(0.0914, within(0.00005));
        assertThat(number(gauge, "studyVariationPercent")).isEqualTo(27.9, within(0.05));
        assertThat(said.json()).containsEntry("distinctCategories", 4);
        assertThat(group(said.json(), "pooling")).containsEntry("suggestsInteraction", false);

        Said whole = study(published());
        assertThat(whole.list("anova"))
                .extracting(line -> line.get("source"))
                .containsExactly("sample", "operator", "interaction", "repeatability", "total");
        Map<String, Object> interaction = group(group(whole.json(), "components"), "interaction");
        assertThat(number(interaction, "variance")).isZero();
        assertThat(number(interaction, "rawVariance")).isEqualTo(-0.0086795884773662, within(1e-12));
    }

    @Test
    void saysAGaugeStudyInWords() {
        study(published());
        assertThat(new Terminal(folder).run("gauge-study", "--values", "v.csv").out())
                .startsWith("Reading makes up 29 % of the spread, which may be enough, depending on its use: samples "
                        + "can be sorted into 4 groups.\n")
                .contains(
                        "Source                df",
                        "Operator with sample: the variance came out below 0, at -0.00867959",
                        "Groups into which samples can be sorted",
                        "it may be pooled, with --no-interaction");
        assertThat(new Terminal(folder)
                        .run("gauge-study", "--values", "v.csv", "--no-interaction")
                        .out())
                .startsWith("Reading makes up 28 % of the spread")
                .contains("so it is pooled with the repeats");
    }

    @Test
    void namesEveryGapOfAStudyAtOnce() {
        Said gaps =
                study("Ada,S1,1,1\nAda,S1,2,2\nAda,S2,1,5\nAda,S2,2,6\nBo,S1,1,2\nBo,S1,2,3\nBo,S3,1,2\nBo,S2,2,1\n");
        assertThat(gaps.status()).isEqualTo(1);
        assertThat(gaps.list("problems"))
                .extracting(problem -> problem.get("message"))
                .containsExactly(
                        "Ada has no reading of sample S3, and every operator must read every sample. Add the "
                                + "reading.",
                        "Bo has no repeat 1 of sample S2, and every cell must have as many readings. Add the "
                                + "reading.",
                        "Bo has no repeat 2 of sample S3, and every cell must have as many readings. Add the "
                                + "reading.");
        Said twice = study("Ada,S1,1,1\nAda,S1,1,2\nBo,S1,1,x\nBo,,1,\n");
        assertThat(twice.codes())
                .containsExactly("csv.not-a-number", "csv.required", "csv.required", "study.repeat-twice");
        assertThat(twice.list("problems").get(3)).containsEntry("line", 3).containsEntry("file", "v.csv");
        assertThat(study("Ada,S1,1,1\nAda,S1,2,2\n").codes()).containsExactly("study.one-operator", "study.one-sample");
        assertThat(study("Ada,S1,1,1\nAda,S2,1,2\nBo,S1,1,1\nBo,S2,1,2\n").codes())
                .containsExactly("study.one-repeat");
        assertThat(study("").codes()).containsExactly("study.no-row");
        assertThat(study("Ada,S1,1,1\nAda,S1,2,1\nAda,S2,3,2\nAda,S2,4,2\nBo,S1,5,1\nBo,S1,6,1\nBo,S2,7,1\n")
                        .codes())
                .containsExactly("study.cell-uneven");
        assertThat(components("operator,value\nAda,1\n", "--division", "0").codes())
                .containsExactly("command.not-positive", "study.too-few-rows");
    }

    /** Repeats that never differ by more than the 0.1 of the dial, and readings that are all equal. */
    @Test
    void withholdsWhatADialDoesNotTell() {
        Said still = study("A,1,1,0.4\nA,1,2,0.4\nA,2,1,0.4\nA,2,2,0.4\nB,1,1,0.4\nB,1,2,0.4\nB,2,1,0.4\nB,2,2,0.4\n");
        assertThat(still.status()).isZero();
        assertThat(still.codes()).containsExactly("command.repeatability-within-division");
        assertThat(still.json()).containsEntry("distinctCategories", null);
        assertThat((String) still.json().get("verdict")).startsWith("All readings are equal");
        Said exact = study("A,1,1,0.4\nA,1,2,0.4\nA,2,1,0.6\nA,2,2,0.6\nB,1,1,0.4\nB,1,2,0.4\nB,2,1,0.6\nB,2,2,0.6\n");
        assertThat(exact.list("anova").get(0)).containsEntry("f", null).containsEntry("p", null);
        assertThat((String) exact.json().get("verdict")).startsWith("Repeats and operators never differ");
        Said alike = study("A,1,1,1\nA,1,2,2\nA,2,1,1\nA,2,2,2\nB,1,1,2\nB,1,2,1\nB,2,1,2\nB,2,2,1\n");
        assertThat((String) alike.json().get("verdict")).startsWith("The samples differ by no more");
    }

    /** Reading that makes up 2 %, and 100 %, of the spread, and an interaction that is plain to see. */
    @Test
    void findsItsWordsForEverySize() {
        Said small = study("A,1,1,1\nA,1,2,1.1\nA,2,1,9\nA,2,2,9.1\nB,1,1,1.1\nB,1,2,1\nB,2,1,9\nB,2,2,9\n");
        assertThat((String) small.json().get("verdict")).contains("which is little");
        Said large = study("A,1,1,1\nA,1,2,2\nA,2,1,3\nA,2,2,2.5\nB,1,1,1.5\nB,1,2,1\nB,2,1,2\nB,2,2,3\n");
        assertThat((String) large.json().get("verdict")).contains("too much for most uses");
        String crossing = "A,1,1,1\nA,1,2,1.1\nA,2,1,9\nA,2,2,9.1\nB,1,1,4.1\nB,1,2,4\nB,2,1,3\nB,2,2,3.1\n";
        assertThat(group(study(crossing).json(), "pooling")).containsEntry("suggestsInteraction", true);
        assertThat(new Terminal(folder).run("gauge-study", "--values", "v.csv").out())
                .contains("is right");
        assertThat(new Terminal(folder)
                        .run("gauge-study", "--values", "v.csv", "--no-interaction")
                        .out())
                .contains("run it without --no-interaction");
    }

    /** Source: R package lme4 1.1-31, Pastes: 1.6573, 8.4337 and 0.6780. */
    @Test
    void answersComponentsWithTheFieldsOfTheContract() {
        StringBuilder rows = new StringBuilder("batch,cask,value\n");
        for (ReferenceFile.Row row : ReferenceFile.read("layers-data.csv").rows()) {
            if (row.text("set").equals("pastes")) {
                for (double value : row.numbers("values")) {
                    rows.append(row.text("path").replace(';', ','))
                            .append(',')
                            .append(value)
                            .append('\n');
                }
            }
        }
        Said said = components(rows.toString());
        assertThat(said.status()).isZero();
        assertThat(said.list("components"))
                .extracting(layer -> layer.get("level"))
                .containsExactly("batch", "cask");
        assertThat(said.list("components").get(0))
                .containsOnlyKeys("level", "groups", "variance", "low", "high", "share", "anovaVariance");
        assertThat(number(said.list("components").get(0), "variance")).isEqualTo(1.6573, within(0.00005));
        assertThat(number(said.list("components").get(1), "variance")).isEqualTo(8.4337, within(0.00005));
        assertThat(number(group(said.json(), "residual"), "variance")).isEqualTo(0.6780, within(0.00005));
        assertThat(said.json()).containsEntry("method", "REML").containsEntry("balanced", true);
        assertThat((String) said.json().get("verdict"))
                .isEqualTo("Most of the variance, 78 %, is between the groups of \"cask\".");
        assertThat(new Terminal(folder).run("components", "--values", "v.csv").out())
                .contains("Most of the variance", "By mean squares", "Its standard uncertainty");
    }

    @Test
    void saysWhyALayerIsNotEstimated() {
        Said said = components("day,operator,value\n1,Ada,1\n1,Ada,2\n2,Bo,5\n2,Bo,6\n");
        assertThat((String) said.list("components").get(1).get("reason")).contains("cannot tell it apart");
        assertThat(said.list("components").get(1)).containsEntry("variance", null);
        Said single = components("day,value\n1,1\n2,2\n3,6\n");
        assertThat((String) group(single.json(), "residual").get("reason")).contains("one value");
        assertThat((String) single.json().get("verdict")).startsWith("What varies most is not known");
        Said still = components("day,value\n1,0.4\n1,0.4\n2,0.6\n2,0.6\n");
        assertThat(still.codes()).containsExactly("command.repeatability-within-division");
        assertThat((String) group(still.json(), "residual").get("reason")).contains("are all alike");
        Said equal = components("day,value\n1,0.4\n1,0.4\n");
        assertThat(equal.status()).isZero();
        assertThat(equal.list("components")).isEmpty();
        assertThat(equal.json()).containsEntry("residual", null);
        assertThat(new Terminal(folder).run("components", "--values", "v.csv").out())
                .startsWith("All values are equal");
        Said zero = components("day,value\n1,1\n1,3\n2,1.9\n2,2.1\n");
        assertThat((String) zero.list("components").get(0).get("reason")).contains("at its bound, 0");
        assertThat((String) zero.json().get("verdict")).contains("within the innermost groups");
    }

    @Test
    void refusesFilesThatAreNoLayers() {
        assertThat(components("value\n1\n2\n").codes()).containsExactly("study.no-layer");
        assertThat(components("day,operator\n1,Ada\n").codes()).containsExactly("csv.column-missing");
        assertThat(components("a,b,c,d,e,f,g,value\n1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,2\n")
                        .codes())
                .containsExactly("study.too-many-layers");
        assertThat(components("day,value\n1,x\n,2\n").codes()).isEqualTo(List.of("csv.not-a-number", "csv.required"));
    }

    /** Source: the data set Penicillin of R package lme4, and the variances that lme4 finds, as printed by its author. */
    @Test
    void dividesUpLayersThatCross() {
        StringBuilder rows = new StringBuilder("plate,sample,value\n");
        for (ReferenceFile.Row row : ReferenceFile.read("crossed-data.csv").rows()) {
            if (row.text("set").equals("penicillin")) {
                rows.append(row.text("groups").replace(';', ',') + "," + row.text("values") + "\n");
            }
        }
        Said said = components(rows.toString(), "--crossed");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("crossed", true).containsEntry("count", 144);
        assertThat(said.list("components"))
                .extracting(line -> line.get("level"), line -> line.get("groups"))
                .containsExactly(tuple("plate", 24), tuple("sample", 6));
        assertThat(Math.sqrt(number(said.list("components").get(0), "variance")))
                .isEqualTo(0.84671, within(0.00001));
        assertThat(Math.sqrt(number(said.list("components").get(1), "variance")))
                .isEqualTo(1.93157, within(0.00002));
        assertThat(Math.sqrt(number(group(said.json(), "residual"), "variance")))
                .isEqualTo(0.54992, within(0.00001));
        assertThat(said.json())
                .containsEntry("verdict", "Most of the variance, 79 %, is between the groups of \"sample\".");
        assertThat(new Terminal(folder)
                        .run("components", "--values", "v.csv", "--crossed")
                        .out())
                .contains("What is left", "0.808573");
    }

    @Test
    void refusesLayersThatCannotBeToldApartWhereTheyCross() {
        String text = "operator,meter,value\nAda,M-1,5.1\nAda,M-1,5.2\nBo,M-2,5.4\nBo,M-2,5.3\n";
        Said said = components(text, "--crossed");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("study.layers-alike");
        assertThat(components(text).status()).isZero();
    }

    @Test
    void saysThatLayersWhichCrossExplainEverything() {
        Said said = components(
                "operator,meter,value\nAda,M-1,5.1\nAda,M-2,5.2\nBo,M-1,5.3\nBo,M-2,5.4\nBo,M-2,5.4\n", "--crossed");
        assertThat((String) said.json().get("verdict")).startsWith("The layers explain every value");
        assertThat((String) components(
                                "operator,meter,value\nAda,M-1,5\nAda,M-2,5\nBo,M-1,5\nBo,M-2,5\nBo,M-2,5\n",
                                "--crossed")
                        .json()
                        .get("verdict"))
                .startsWith("All values are equal");
    }

    /** The laboratory chooses from which p on it pools; the usual level is that of textbooks (recalled). */
    @Test
    void theLevelOfPoolingCanBeChosen() {
        String crossing = "A,1,1,1\nA,1,2,1.1\nA,2,1,9\nA,2,2,9.1\nB,1,1,1.15\nB,1,2,1.1\nB,2,1,9\nB,2,2,9.05\n";
        Map<String, Object> usual = group(study(crossing).json(), "pooling");
        assertThat(((Number) usual.get("level")).doubleValue()).isEqualTo(0.25);
        double p = ((Number) usual.get("p")).doubleValue();
        assertThat(p).isBetween(0.02, 0.9);
        Terminal terminal = new Terminal(folder);
        for (boolean isBelow : new boolean[] {true, false}) {
            String level = Double.toString(isBelow ? p + 0.01 : p - 0.01);
            Said said = terminal.json("gauge-study", "--values", "v.csv", "--pooling-level", level);
            assertThat(group(said.json(), "pooling")).containsEntry("suggestsInteraction", isBelow);
        }
        for (String wrong : new String[] {"0", "1", "-0.1"}) {
            Said said = terminal.json("gauge-study", "--values", "v.csv", "--pooling-level", wrong);
            assertThat(said.status()).isEqualTo(1);
            assertThat(said.codes()).contains("command.level-outside");
        }
        assertThat(terminal.run("gauge-study", "--values", "v.csv", "--pooling-level", "0.3")
                        .out())
                .contains("0.3");
    }
}
