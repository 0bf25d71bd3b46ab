package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against lme4 1.1-31 in R 4.2.2, REML, and the figures their authors print. */
class VarianceLayersReferenceTest {
    private static final ReferenceFile DATA = ReferenceFile.read("layers-data.csv");
    private static final ReferenceFile EXPECTED = ReferenceFile.read("layers-reml.csv");

    static VarianceLayers layers(String set) {
        List<List<String>> paths = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (ReferenceFile.Row row : DATA.rows()) {
            if (row.text("set").equals(set)) {
                for (double value : row.numbers("values")) {
                    paths.add(List.of(row.text("path").split(";")));
                    values.add(value);
                }
            }
        }
        return VarianceLayers.of(
                        paths,
                        0.95,
                        values.stream().mapToDouble(Double::doubleValue).toArray())
                .meaningful()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"dyestuff", "dyestuff2", "bulls", "oxide", "oxide-unbalanced", "pastes", "four-layers"})
    void agreesWithReml(String set) {
        ReferenceFile.Row expected = EXPECTED.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
        VarianceLayers found = layers(set);
        List<VarianceLayers.Layer> lines = new ArrayList<>(found.layers());
        lines.add(found.values());
        double[] variances = expected.numbers("variances");
        double[] low = expected.numbers("low95");
        double[] high = expected.numbers("high95");
        assertThat(lines).hasSameSizeAs(variances);
        for (int i = 0; i < variances.length; i++) {
            VarianceLayers.Layer line = lines.get(i);
            assertThat(line.variance().orElseThrow()).isCloseTo(variances[i], withPercentage(1e-3));
            assertThat(line.standing())
                    .isEqualTo(variances[i] == 0 ? VarianceLayers.Standing.AT_ZERO : VarianceLayers.Standing.ESTIMATED);
            VarianceInterval interval = line.interval().orElseThrow();
            assertThat(interval.low()).isCloseTo(low[i], withPercentage(1e-3));
            assertThat(interval.high()).isCloseTo(high[i], withPercentage(1e-3));
        }
        if (!expected.text("byAnova").isEmpty()) {
            double[] byAnova = expected.numbers("byAnova");
            for (int i = 0; i < byAnova.length; i++) {
                assertThat(lines.get(i).byAnova().orElseThrow()).isCloseTo(byAnova[i], withPercentage(1e-6));
            }
        }
        assertThat(found.mean()).isCloseTo(expected.number("mean"), within(1e-7 * expected.number("mean")));
        assertThat(Math.sqrt(found.meanVariance())).isCloseTo(expected.number("standardError"), withPercentage(1e-3));
    }
}
