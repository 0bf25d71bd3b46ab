package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
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

class ChartCommandTest {
    @TempDir
    Path folder;

    private Said chart(String rows, String... options) {
        LabFiles.write(folder, "values.csv", "subgroup,value\n" + rows);
        return new Terminal(folder)
                .json(Stream.concat(Stream.of("chart", "--values", "values.csv"), Stream.of(options))
                        .toArray(String[]::new));
    }

    /** Source: NIST/SEMATECH e-Handbook, 6.3.2.2, flow rate of ten batches (seen). */
    private static String flowRate() {
        return numbered(ReferenceFile.read("chart-flow-rate.csv").rows().get(0).numbers("values"));
    }

    private static String numbered(double... values) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            rows.append(i + 1).append(',').append(values[i]).append('\n');
        }
        return rows.toString();
    }

    private static double number(Map<String, Object> json, String name) {
        return new BigDecimal(json.get(name).toString()).doubleValue();
    }

    /** With the exact d2 = 2 / sqrt(pi) the limits are 55.8024 and 45.8176, where the handbook rounds d2 to 1.128. */
    @Test
    @SuppressWarnings("unchecked")
    void answersWithTheFieldsOfTheContract() {
        Said said = chart(flowRate(), "--kind", "individuals");
        assertThat(said.status()).isZero();
        assertThat(said.codes()).containsExactly("command.base-provisional");
        assertThat(number(said.json(), "centre")).isEqualTo(50.81, within(1e-9));
        assertThat(said.json()).containsEntry("kind", "individuals").containsEntry("baseCount", 10);
        assertThat(said.list("points")).hasSize(10).allSatisfy(point -> {
            assertThat(point).containsOnlyKeys("subgroup", "value", "low", "high", "signals");
            assertThat(number(point, "low")).isEqualTo(45.8175883199495, within(1e-9));
            assertThat(number(point, "high")).isEqualTo(55.8024116800505, within(1e-9));
            assertThat(point).containsEntry("signals", List.of());
        });
        assertThat(said.list("points").get(1)).containsEntry("subgroup", "2");
        Map<String, Object> spread = (Map<String, Object>) said.json().get("spread");
        assertThat(number(spread, "centre")).isEqualTo(1.87777777777778, within(1e-9));
        assertThat((List<Map<String, Object>>) spread.get("points"))
                .hasSize(9)
                .first()
                .satisfies(point -> assertThat(point).containsEntry("subgroup", "2"));
        assertThat(said.list("constants")).hasSize(1);
        assertThat(said.list("constants").get(0))
                .containsOnlyKeys("n", "d2", "d3", "c4", "A2", "A3", "B3", "B4", "D3", "D4", "E2")
                .containsEntry("n", 2);
    }

    /** Source: D. C. Montgomery, piston rings (recalled), limits by qcc 2.7: 73.98805 and 74.01430, with s 73.98799 and 74.01436. */
    @Test
    void chartsMeansWithRangesOrStandardDeviations() {
        StringBuilder rings = new StringBuilder();
        for (ReferenceFile.Row row :
                ReferenceFile.read("chart-piston-rings.csv").rows()) {
            for (double diameter : row.numbers("values")) {
                rings.append(row.text("subgroup")).append(',').append(diameter).append('\n');
            }
        }
        Said range = chart(rings.toString(), "--kind", "mean-range");
        assertThat(range.codes()).isEmpty();
        assertThat(number(range.list("points").get(0), "low")).isEqualTo(73.9880475919562, within(1e-8));
        assertThat(number(range.list("points").get(0), "high")).isEqualTo(74.0143044080438, within(1e-8));
        Said deviation = chart(rings.toString(), "--kind", "mean-sd");
        assertThat(number(deviation.list("points").get(0), "low")).isEqualTo(73.987987702291, within(1e-8));
        assertThat(deviation.list("points")).hasSize(25);
        Said based = chart(rings.toString(), "--kind", "mean-sd", "--base-count", "10");
        assertThat(based.json()).containsEntry("baseCount", 10);
        assertThat(based.list("points")).hasSize(25);
        assertThat(based.codes()).containsExactly("command.base-provisional");
    }

    /** Source: NIST/SEMATECH e-Handbook, 6.3.2.4 (seen): lambda 0.3, target 50, s 2.0539, averages printed to 0.01, no signal. */
    @Test
    void chartsAveragesWithKnownCentreAndSigma() {
        ReferenceFile reference = ReferenceFile.read("chart-ewma.csv");
        Said said = chart(
                numbered(reference.column("value")),
                "--kind",
                "ewma",
                "--lambda",
                "0.3",
                "--centre",
                "50",
                "--sigma",
                "2.0539");
        assertThat(said.codes()).isEmpty();
        double[] averages = reference.column("average");
        for (int i = 0; i < averages.length; i++) {
            assertThat(number(said.list("points").get(i), "value")).isEqualTo(averages[i], within(1e-9));
        }
        assertThat(said.list("points"))
                .allSatisfy(point ->
                        assertThat(point).containsEntry("signals", List.of()).containsKey("mean"));
        assertThat(number(said.json(), "lambda")).isEqualTo(0.3);
        assertThat(said.json()).containsEntry("spread", null);
    }

    /** Source: NIST/SEMATECH e-Handbook, 6.3.2.3 (seen): groups 14 to 20 are out. */
    @Test
    void chartsSums() {
        Said said = chart(
                numbered(ReferenceFile.read("chart-cusum.csv").column("mean")),
                "--kind",
                "cusum",
                "--centre",
                "325",
                "--sigma",
                "0.635",
                "--width",
                "6.60771653543307");
        assertThat(said.list("points").stream()
                        .filter(point -> point.get("signals").equals(List.of("beyond-limits")))
                        .map(point -> point.get("subgroup")))
                .containsExactly("14", "15", "16", "17", "18", "19", "20");
        assertThat(number(said.json(), "slack")).isEqualTo(0.3175, within(1e-12));
        assertThat(number(said.list("points").get(3), "value")).isEqualTo(-0.3325, within(1e-9));
        assertThat(number(said.list("points").get(19), "highSum")).isEqualTo(19.035, within(1e-9));
    }

    @Test
    void signalsWhatItIsAskedFor() {
        String rows = numbered(1, 2, 1, 2, 1, 2, 3, 4, 5, 6, 7, 8);
        Said said =
                chart(rows, "--kind", "individuals", "--base-count", "6", "--rules", "six-in-a-trend,beyond-limits");
        assertThat(said.list("points").get(9)).containsEntry("signals", List.of("beyond-limits", "six-in-a-trend"));
        assertThat(chart(rows, "--kind", "individuals").status()).isZero();
        assertThat(new Terminal(folder)
                        .run("chart", "--values", "values.csv", "--kind", "individuals", "--base-count", "6")
                        .out())
                .contains("Centre", "Spread", "beyond the limits");
    }

    /** Means 0.4 and 0.5 in turn, moving ranges 0.1: sigma 0.1 sqrt(pi) / 2 of a mean, and 0.45 in the middle. */
    @Test
    @SuppressWarnings("unchecked")
    void chartsDeterminationsAndSaysHowOftenTheyErr() {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 20; i++) {
            String value = i % 2 == 0 ? "0.4" : "0.5";
            rows.append(i).append(',').append(value).append('\n');
            rows.append(i).append(',').append(value).append('\n');
        }
        Said said = chart(rows.toString(), "--kind", "means", "--rules", "beyond-limits,nine-on-one-side");
        assertThat(said.status()).isZero();
        assertThat(number(said.json(), "sigma")).isEqualTo(0.05 * Math.sqrt(Math.PI), within(1e-9));
        assertThat(number(said.list("points").get(0), "high"))
                .isEqualTo(0.45 + 0.15 * Math.sqrt(Math.PI), within(1e-9));
        Map<String, Object> alarms = (Map<String, Object>) said.json().get("falseAlarms");
        assertThat(alarms)
                .containsOnlyKeys("pointsPerAlarm", "rarerThan", "shareOfChartsWithOne", "charts", "seed")
                .containsEntry("seed", 1987)
                .containsEntry("rarerThan", null);
        assertThat(number(alarms, "pointsPerAlarm")).isBetween(25.0, 90.0);
        assertThat(number(alarms, "shareOfChartsWithOne")).isBetween(0.05, 0.3);
        assertThat(new Terminal(folder)
                        .run("chart", "--values", "values.csv", "--kind", "means")
                        .out())
                .contains("By chance alone about one false alarm in", "seed 1987");
        assertThat(chart(rows.toString(), "--kind", "means", "--sigma", "0.1", "--centre", "0.4")
                        .codes())
                .containsExactly("command.option-not-used", "command.option-not-used");
        assertThat(chart("a,0.4\na,0.5\n", "--kind", "means").codes()).containsExactly("command.base-too-short");
    }

    /** By limits that are known, one point in 370 lies beyond 3 standard deviations; the moving range adds its own. */
    @Test
    @SuppressWarnings("unchecked")
    void knownLimitsErrAsTheBooksSay() {
        Said said = chart(
                numbered(0.31, -0.52, 0.13),
                "--kind",
                "individuals",
                "--centre",
                "0",
                "--sigma",
                "1",
                "--rules",
                "beyond-limits");
        Map<String, Object> alarms = (Map<String, Object>) said.json().get("falseAlarms");
        assertThat(number(alarms, "pointsPerAlarm")).isBetween(75.0, 135.0);
    }

    /** The same width on the page and here. */
    @Test
    void averagesHaveTheirUsualWidth() {
        Said said = chart(numbered(0, 0, 0), "--kind", "ewma", "--centre", "0", "--sigma", "1", "--division", "0.01");
        assertThat(number(said.json(), "width")).isEqualTo(3);
        assertThat(number(said.list("points").get(0), "high")).isEqualTo(0.6, within(1e-12));
        Said sums = chart(numbered(0, 0, 0), "--kind", "cusum", "--centre", "0", "--sigma", "1", "--division", "0.01");
        assertThat(number(sums.json(), "interval")).isEqualTo(5, within(1e-12));
    }

    /** Equal readings of a 0.1 scale: limits of the division, and a word about it. */
    @Test
    void takesTheDivisionWhereTheReadingStoodStill() {
        Said said = chart(numbered(0.4, 0.4, 0.4), "--kind", "individuals");
        assertThat(number(said.json(), "sigma")).isEqualTo(0.1 / Math.sqrt(12), within(1e-12));
        assertThat(said.codes()).containsExactly("command.base-provisional", "command.base-within-division");
        assertThat(number(
                        chart(numbered(4, 4), "--kind", "ewma", "--division", "0.5")
                                .json(),
                        "sigma"))
                .isEqualTo(0.5 / Math.sqrt(12), within(1e-12));
    }

    @Test
    void refusesSubgroupsThatDoNotFitTheKind() {
        String mixed = "a,1\nb,1\nb,2\n";
        assertThat(chart(mixed, "--kind", "individuals").codes()).containsExactly("command.subgroup-not-single");
        assertThat(chart(mixed, "--kind", "individuals").list("problems").get(0))
                .containsEntry("line", 3);
        assertThat(chart(mixed, "--kind", "mean-range").codes()).containsExactly("command.subgroup-single");
        assertThat(chart(mixed, "--kind", "mean-sd").codes()).containsExactly("command.subgroup-single");
        assertThat(chart(mixed, "--kind", "cusum").status()).isZero();
        assertThat(chart(mixed, "--kind", "ewma").status()).isZero();
        assertThat(chart("a,1\n", "--kind", "individuals").codes()).containsExactly("command.base-too-short");
        assertThat(chart("", "--kind", "individuals").codes()).containsExactly("command.no-number");
        assertThat(chart("a,x\n,2\n", "--kind", "individuals").codes())
                .containsExactly("csv.not-a-number", "csv.required");
    }

    @Test
    void refusesOptionsThatDoNotFit() {
        String rows = flowRate();
        assertThat(chart(rows, "--kind", "individuals", "--lambda", "0.2", "--slack", "1")
                        .codes())
                .containsExactly("command.option-not-used", "command.option-not-used");
        assertThat(chart(rows, "--kind", "ewma", "--lambda", "1.5", "--rules", "beyond-limits")
                        .codes())
                .containsExactly("command.lambda-out-of-range", "command.option-not-used");
        assertThat(chart(rows, "--kind", "cusum", "--slack", "-1", "--width", "0")
                        .codes())
                .containsExactly("command.not-positive", "command.slack-negative");
        assertThat(chart(rows, "--kind", "ewma", "--base-count", "0", "--division", "0", "--sigma", "0")
                        .codes())
                .containsOnly("command.not-positive")
                .hasSize(3);
        Said kind = new Terminal(folder).run("chart", "--values", "values.csv", "--kind", "pie");
        assertThat(kind.status()).isEqualTo(2);
        assertThat(kind.err()).contains("\"pie\" must be one of individuals, means, mean-range, mean-sd, ewma, cusum");
        Said rule = new Terminal(folder)
                .run("chart", "--values", "values.csv", "--kind", "individuals", "--rules", "seven");
        assertThat(rule.status()).isEqualTo(2);
    }
}
