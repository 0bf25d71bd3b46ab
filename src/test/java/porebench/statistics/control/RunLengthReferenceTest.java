package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.summary.Summary;

/**
 * Run rules, averages and sums on simulated points, against Champ and Woodall (1987) and a reference library: how many
 * points pass, on average, until the first signal. The seeds are fixed.
 */
class RunLengthReferenceTest {
    private static final int RUNS = 3_000;

    @Test
    void firesWhereTheDefinitionsSay() {
        List<ReferenceFile.Row> rows =
                ReferenceFile.read("run-rule-sequences.csv").rows();
        assertThat(rows).hasSize(99);
        for (ReferenceFile.Row row : rows) {
            double[] z = row.numbers("z");
            RunRule rule = rule(row.text("rule"));
            int[] expected = row.text("points").equals("none")
                    ? new int[0]
                    : Arrays.stream(row.numbers("points"))
                            .mapToInt(point -> (int) point)
                            .toArray();
            assertThat(IntStream.range(0, z.length)
                            .filter(i -> rule.firesAt(z, i))
                            .map(i -> i + 1)
                            .toArray())
                    .as("%s on %s", rule.symbol(), row.text("sequence"))
                    .containsExactly(expected);
        }
    }

    @Test
    void runRulesSignalAsSeldomAsPublished() {
        for (ReferenceFile.Row row : ReferenceFile.read("run-rule-lengths.csv").rows()) {
            List<RunRule> rules = Arrays.stream(row.text("rules").split(";", -1))
                    .map(symbol -> rule(symbol))
                    .toList();
            assertLength(row, RUNS, points -> {
                for (int i = 0; i < points.length; i++) {
                    for (RunRule rule : rules) {
                        if (rule.firesAt(points, i)) {
                            return i;
                        }
                    }
                }
                return -1;
            });
        }
    }

    @Test
    void averagesSignalAsSeldomAsPublished() {
        for (ReferenceFile.Row row : ReferenceFile.read("ewma-run-lengths.csv").rows()) {
            double lambda = row.number("lambda");
            double limit = row.number("width") * Math.sqrt(lambda / (2 - lambda));
            ChartTerms terms = ChartTerms.usual().withKnownCentre(0).withKnownSigma(1);
            assertLength(row, runs(row), points -> {
                List<ChartPoint> averages = EwmaChart.of(singles(points), lambda, terms)
                        .meaningful()
                        .orElseThrow()
                        .points();
                return first(points.length, i -> Math.abs(averages.get(i).value()) - limit);
            });
        }
    }

    @Test
    void sumsSignalAsSeldomAsPublished() {
        for (ReferenceFile.Row row : ReferenceFile.read("cusum-run-lengths.csv").rows()) {
            ChartTerms terms =
                    ChartTerms.usual().withKnownCentre(0).withKnownSigma(1).withWidth(row.number("interval"));
            assertLength(row, runs(row), points -> {
                List<CusumChart.Sums> sums = CusumChart.of(singles(points), row.number("slack"), terms)
                        .meaningful()
                        .orElseThrow()
                        .points();
                return first(points.length, i -> sums.get(i).isSignal() ? 1 : 0);
            });
        }
    }

    private static int runs(ReferenceFile.Row row) {
        return row.number("length") > 100 ? RUNS / 5 : RUNS;
    }

    private static int first(int count, IntToDoubleFunction above) {
        return IntStream.range(0, count)
                .filter(i -> above.applyAsDouble(i) > 0)
                .findFirst()
                .orElse(-1);
    }

    private static List<double[]> singles(double[] values) {
        return Arrays.stream(values).mapToObj(value -> new double[] {value}).toList();
    }

    /** Simulates runs until a signal, longer points until there is one, and compares their mean with the published one. */
    private static void assertLength(ReferenceFile.Row row, int runs, ToIntFunction<double[]> firstSignal) {
        Random random = new Random(1987);
        double expected = row.number("length");
        double[] lengths = new double[runs];
        for (int run = 0; run < runs; run++) {
            double[] points = new double[0];
            int signal = -1;
            while (signal < 0) {
                int known = points.length;
                points = Arrays.copyOf(points, Math.max(2 * known, (int) expected + 1));
                for (int i = known; i < points.length; i++) {
                    points[i] = random.nextGaussian() + row.number("shift");
                }
                signal = firstSignal.applyAsInt(points);
            }
            lengths[run] = signal + 1;
        }
        Summary summary = Summary.of(lengths);
        assertThat(summary.mean())
                .as("%s", row.cells())
                .isCloseTo(expected, offset(4 * summary.standardError().orElseThrow()));
    }

    private static RunRule rule(String symbol) {
        return Stream.of(RunRule.values())
                .filter(rule -> rule.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
