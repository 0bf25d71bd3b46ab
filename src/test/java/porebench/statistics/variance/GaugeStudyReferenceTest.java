package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.ReferenceFile;

/** Against two published crossed gauge studies, and R 4.2.2 for all their digits. */
class GaugeStudyReferenceTest {
    private static final long SEED = 20261125;

    private static double[][][] readings(ReferenceFile file) {
        Map<String, List<double[]>> operators = new LinkedHashMap<>();
        for (ReferenceFile.Row row : file.rows()) {
            operators
                    .computeIfAbsent(row.text("operator"), name -> new ArrayList<>())
                    .add(row.numbers("values"));
        }
        return operators.values().stream()
                .map(samples -> samples.toArray(double[][]::new))
                .toArray(double[][][]::new);
    }

    static double[][][] readings(String study) {
        return readings(
                study.equals("aiag")
                        ? ReferenceFile.read("gauge-aiag.csv")
                        : ReferenceFile.read("gauge-montgomery.csv"));
    }

    @ParameterizedTest
    @CsvSource({"aiag,full", "aiag,pooled", "montgomery,full", "montgomery,pooled"})
    void agreesWithThePublishedStudies(String name, String model) {
        GaugeStudy study = GaugeStudy.of(readings(name), model.equals("full"), 0.95, SEED);
        int compared = 0;
        for (ReferenceFile.Row row : ReferenceFile.read("gauge-expected.csv").rows()) {
            String key = row.text("key");
            boolean isOfModel = key.startsWith(model + ".") || (model.equals("full") && !key.contains("."));
            if (!row.text("study").equals(name) || !isOfModel) {
                continue;
            }
            double value = figure(study, key.replace(model + ".", ""));
            assertThat(value).as(key).isCloseTo(row.number("value"), withPercentage(1e-6));
            if (!row.text("printed").isEmpty()) {
                String printed = row.text("printed");
                double unit = Math.pow(10, -(printed.length() - 1 - printed.indexOf('.')));
                double shown = key.contains("pct_grr_sv") ? Math.abs(value) : value;
                assertThat(shown).as(key + " printed").isCloseTo(Double.parseDouble(printed), within(unit / 2 + 1e-9));
            }
            compared++;
        }
        assertThat(compared).isGreaterThan(4);
    }

    private static double figure(GaugeStudy study, String key) {
        return switch (key) {
            case "ss_sample" -> study.sampleSquares().sumOfSquares();
            case "df_sample" -> study.sampleSquares().degreesOfFreedom();
            case "ms_sample" -> study.sampleSquares().meanSquare().orElseThrow();
            case "ss_operator" -> study.operatorSquares().sumOfSquares();
            case "df_operator" -> study.operatorSquares().degreesOfFreedom();
            case "ms_operator" -> study.operatorSquares().meanSquare().orElseThrow();
            case "ss_interaction" -> study.interactionSquares().orElseThrow().sumOfSquares();
            case "df_interaction" -> study.interactionSquares().orElseThrow().degreesOfFreedom();
            case "ms_interaction" ->
                study.interactionSquares().orElseThrow().meanSquare().orElseThrow();
            case "ss_repeatability" -> study.repeatabilitySquares().sumOfSquares();
            case "df_repeatability" -> study.repeatabilitySquares().degreesOfFreedom();
            case "ms_repeatability" -> study.repeatabilitySquares().meanSquare().orElseThrow();
            case "F_sample" -> study.sampleTest().meaningful().orElseThrow().statistic();
            case "F_operator" -> study.operatorTest().meaningful().orElseThrow().statistic();
            case "F_interaction" ->
                study.interactionTest().meaningful().orElseThrow().statistic();
            case "p_interaction" ->
                study.interactionTest().meaningful().orElseThrow().p();
            case "v_repeatability_raw" -> study.repeatability().raw();
            case "v_operator_raw" -> study.operator().raw();
            case "v_interaction_raw" -> study.interaction().orElseThrow().raw();
            case "v_sample_raw" -> study.sample().raw();
            case "v_grr" -> study.gauge();
            case "v_total" -> study.total();
            case "pct_grr_sv" -> 100 * study.gaugeShareOfVariation().orElseThrow();
            case "pct_grr_contrib" -> 100 * study.share(study.gauge()).orElseThrow();
            // The reference takes 1.41 as it stands.
            case "ndc_unrounded" -> study.categories().orElseThrow();
            default -> throw new IllegalArgumentException("no figure " + key);
        };
    }

    /** Both studies have less interaction than chance would give: their authors pool it. */
    @Test
    void suggestsPoolingWhereTheAuthorsPool() {
        for (String name : List.of("aiag", "montgomery")) {
            GaugeStudy study = GaugeStudy.of(readings(name), true, 0.95, SEED);
            assertThat(study.suggestsInteraction(GaugeStudy.POOLING_LEVEL)).isFalse();
            assertThat(study.interaction().orElseThrow().isAtZero()).isTrue();
            assertThat(study.interaction().orElseThrow().variance()).isZero();
            assertThat(study.distinctCategories()).contains(4);
        }
    }

    /** With 60 degrees of freedom, by qchisq of R 4.2.2: 60 x 0.0459822 / 83.29767 and / 40.48175. */
    @Test
    void givesTheChiSquareIntervalOfRepeatability() {
        VarianceInterval interval = GaugeStudy.of(readings("aiag"), true, 0.95, SEED)
                .repeatability()
                .interval();
        assertThat(interval.low()).isCloseTo(2.75893333333333 / 83.2976748726, withPercentage(1e-6));
        assertThat(interval.high()).isCloseTo(2.75893333333333 / 40.4817480417, withPercentage(1e-6));
        assertThat(OptionalDouble.of(interval.confidence())).hasValue(0.95);
    }
}
