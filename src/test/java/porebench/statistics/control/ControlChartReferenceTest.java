package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against NIST/SEMATECH e-Handbook 6.3.2 (seen), Montgomery (recalled) and reference libraries. */
class ControlChartReferenceTest {
    private static final Map<String, Function<ChartConstants, Double>> CONSTANTS = Map.of(
            "d2", ChartConstants::d2,
            "d3", ChartConstants::d3,
            "c4", ChartConstants::c4,
            "A2", ChartConstants::a2,
            "A3", ChartConstants::a3,
            "B3", ChartConstants::b3,
            "B4", ChartConstants::b4,
            "D3", ChartConstants::lowD3,
            "D4", ChartConstants::highD4,
            "E2", ChartConstants::e2);

    @Test
    void computesTheConstants() {
        ReferenceFile table = ReferenceFile.read("chart-constants.csv");
        assertThat(table.rows()).hasSize(24);
        for (ReferenceFile.Row row : table.rows()) {
            ChartConstants constants = ChartConstants.of(row.whole("n"));
            CONSTANTS.forEach((name, constant) -> assertThat(constant.apply(constants))
                    .as("%s of n = %s", name, row.text("n"))
                    .isCloseTo(row.number(name), offset(1e-9)));
        }
    }

    @Test
    void chartsTheFlowRate() {
        ReferenceFile.Row row = ReferenceFile.read("chart-flow-rate.csv").rows().get(0);
        ShewhartChart chart = ShewhartChart.individuals(row.numbers("values"), ChartTerms.usual())
                .meaningful()
                .orElseThrow();
        assertThat(chart.centre()).isCloseTo(row.number("mean"), withPercentage(1e-10));
        assertThat(chart.meanSpread()).isCloseTo(row.number("meanMovingRange"), withPercentage(1e-10));
        assertThat(chart.meanSpread()).isCloseTo(row.number("printedMovingRange"), offset(0.00005));
        assertThat(chart.sigma()).isCloseTo(row.number("sigma"), withPercentage(1e-9));
        assertThat(chart.level()).hasSize(10).allSatisfy(point -> {
            assertThat(point.low()).isCloseTo(row.number("low"), withPercentage(1e-9));
            assertThat(point.high()).isCloseTo(row.number("high"), withPercentage(1e-9));
            // The handbook rounds d2 to 1.128.
            assertThat(point.centre()
                            + (point.high() - point.centre())
                                    * ChartConstants.of(2).d2()
                                    / 1.128)
                    .isCloseTo(row.number("printedHigh"), offset(0.00005));
            assertThat(point.centre()
                            - (point.centre() - point.low())
                                    * ChartConstants.of(2).d2()
                                    / 1.128)
                    .isCloseTo(row.number("printedLow"), offset(0.00005));
            assertThat(point.signals()).isEmpty();
        });
        double[] ranges = row.numbers("movingRanges");
        for (int i = 0; i < ranges.length; i++) {
            assertThat(chart.spread().get(i).value()).isCloseTo(ranges[i], offset(1e-9));
        }
    }

    @Test
    void chartsThePistonRings() {
        List<double[]> groups = ReferenceFile.read("chart-piston-rings.csv").rows().stream()
                .map(row -> row.numbers("values"))
                .toList();
        Map<String, Double> limits = ReferenceFile.read("chart-piston-rings-limits.csv").rows().stream()
                .collect(Collectors.toMap(row -> row.text("key"), row -> row.number("value")));
        ShewhartChart range =
                ShewhartChart.meanRange(groups, ChartTerms.usual()).meaningful().orElseThrow();
        assertThat(range.centre()).isCloseTo(limits.get("xbarbar"), withPercentage(1e-10));
        assertThat(range.meanSpread()).isCloseTo(limits.get("Rbar"), withPercentage(1e-7));
        assertThat(range.sigma()).isCloseTo(limits.get("sigma_R"), withPercentage(1e-7));
        assertLimits(range.level(), limits, "XR");
        assertLimits(range.spread(), limits, "R");
        ShewhartChart deviation = ShewhartChart.meanDeviation(groups, ChartTerms.usual())
                .meaningful()
                .orElseThrow();
        assertThat(deviation.meanSpread()).isCloseTo(limits.get("Sbar"), withPercentage(1e-7));
        assertThat(deviation.sigma()).isCloseTo(limits.get("sigma_S"), withPercentage(1e-7));
        assertLimits(deviation.level(), limits, "XS");
        assertLimits(deviation.spread(), limits, "S");
        // Montgomery, recalled: 74.001, 73.988 and 74.014.
        assertThat(range.level().get(0).low()).isCloseTo(73.988, offset(0.0005));
        assertThat(range.level().get(0).high()).isCloseTo(74.014, offset(0.0005));
    }

    private static void assertLimits(List<ChartPoint> points, Map<String, Double> limits, String chart) {
        assertThat(points).hasSize(25).allSatisfy(point -> {
            assertThat(point.low()).isCloseTo(limits.get(chart + ".LCL"), offset(1e-9));
            assertThat(point.high()).isCloseTo(limits.get(chart + ".UCL"), offset(1e-9));
            assertThat(point.signals()).isEmpty();
        });
    }

    @Test
    void averagesExponentially() {
        List<ReferenceFile.Row> rows = ReferenceFile.read("chart-ewma.csv").rows();
        EwmaChart chart = EwmaChart.of(
                        singles(rows.stream()
                                .mapToDouble(row -> row.number("value"))
                                .toArray()),
                        0.3,
                        ChartTerms.usual().withKnownCentre(50).withKnownSigma(2.0539))
                .meaningful()
                .orElseThrow();
        for (int i = 0; i < rows.size(); i++) {
            assertThat(chart.points().get(i).value()).isCloseTo(rows.get(i).number("average"), withPercentage(1e-8));
            assertThat(chart.points().get(i).signals()).isEmpty();
        }
        for (ReferenceFile.Row row : ReferenceFile.read("chart-ewma-limits.csv").rows()) {
            boolean isFinal = row.text("index").equals("final");
            ChartPoint point = chart.points().get(isFinal ? 19 : row.whole("index") - 1);
            // After 20 points the limits are 2e-6 short of the final ones.
            assertThat(point.low()).isCloseTo(row.number("low"), offset(isFinal ? 2e-6 : 1e-9));
            assertThat(point.high()).isCloseTo(row.number("high"), offset(isFinal ? 2e-6 : 1e-9));
        }
    }

    @Test
    void addsDeviationsUp() {
        List<ReferenceFile.Row> rows = ReferenceFile.read("chart-cusum.csv").rows();
        // k = 0.3175 and h = 4.1959 are half of, and 6.608 times, a standard deviation of 0.635.
        CusumChart chart = CusumChart.of(
                        singles(rows.stream()
                                .mapToDouble(row -> row.number("mean"))
                                .toArray()),
                        0.5,
                        ChartTerms.usual()
                                .withKnownCentre(325)
                                .withKnownSigma(0.635)
                                .withWidth(4.1959 / 0.635))
                .meaningful()
                .orElseThrow();
        assertThat(chart.slack()).isCloseTo(0.3175, offset(1e-12));
        assertThat(chart.interval()).isCloseTo(4.1959, offset(1e-12));
        for (int i = 0; i < rows.size(); i++) {
            assertThat(chart.points().get(i).high()).isCloseTo(rows.get(i).number("high"), offset(1e-9));
            assertThat(chart.points().get(i).low()).isCloseTo(rows.get(i).number("low"), offset(1e-9));
        }
        assertThat(chart.points().stream().filter(CusumChart.Sums::isSignal).map(sums -> sums.index() + 1))
                .containsExactly(14, 15, 16, 17, 18, 19, 20);
    }

    private static List<double[]> singles(double[] values) {
        return Arrays.stream(values).mapToObj(value -> new double[] {value}).toList();
    }
}
