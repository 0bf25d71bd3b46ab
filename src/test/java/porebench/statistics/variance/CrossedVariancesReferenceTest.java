package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against lme4 1.1-31 in R 4.2.2, REML with crossed effects, and for penicillin the figures its author prints. */
class CrossedVariancesReferenceTest {
    private static final ReferenceFile DATA = ReferenceFile.read("crossed-data.csv");
    private static final ReferenceFile EXPECTED = ReferenceFile.read("crossed-reml.csv");

    private static CrossedVariances found(String set) {
        List<List<String>> names = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (ReferenceFile.Row row : DATA.rows()) {
            if (row.text("set").equals(set)) {
                for (double value : row.numbers("values")) {
                    names.add(List.of(row.text("groups").split(";")));
                    values.add(value);
                }
            }
        }
        return CrossedVariances.of(
                        names,
                        0.95,
                        values.stream().mapToDouble(Double::doubleValue).toArray())
                .meaningful()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"penicillin", "uneven", "uneven-4", "one-at-0"})
    void agreesWithReml(String set) {
        ReferenceFile.Row expected = EXPECTED.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
        CrossedVariances found = found(set);
        List<CrossedVariances.Layer> lines = new ArrayList<>(found.layers());
        lines.add(found.values());
        double[] variances = expected.numbers("variances");
        double[] low = expected.numbers("low95");
        double[] high = expected.numbers("high95");
        assertThat(lines).hasSameSizeAs(variances);
        for (int i = 0; i < variances.length; i++) {
            CrossedVariances.Layer line = lines.get(i);
            assertThat(line.variance()).isCloseTo(variances[i], withPercentage(1e-3));
            assertThat(line.interval().low()).isCloseTo(low[i], withPercentage(1e-3));
            assertThat(line.interval().high()).isCloseTo(high[i], withPercentage(1e-3));
        }
        assertThat(found.mean()).isCloseTo(expected.number("mean"), within(1e-7 * expected.number("mean")));
        assertThat(Math.sqrt(found.meanVariance())).isCloseTo(expected.number("standardError"), withPercentage(1e-3));
    }
}
