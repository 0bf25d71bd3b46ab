package porebench.statistics.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against R's nnls and scipy. */
class NonNegativeLeastSquaresReferenceTest {
    private static final ReferenceFile CASES = ReferenceFile.read("nnls-cases.csv");
    private static final ReferenceFile EXPECTED = ReferenceFile.read("nnls-expected.csv");

    @ParameterizedTest
    @ValueSource(strings = {"quad", "rosetta", "decreasing", "neg"})
    void agreesWithTheReferenceLibraries(String set) {
        List<ReferenceFile.Row> rows =
                CASES.rows().stream().filter(row -> row.text("set").equals(set)).toList();
        ReferenceFile.Row expected = EXPECTED.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
        double[] values = rows.stream().mapToDouble(row -> row.number("b")).toArray();
        double[] wanted = expected.numbers("shares");
        double[][] columns = new double[wanted.length][values.length];
        for (int i = 0; i < values.length; i++) {
            double[] row = rows.get(i).numbers("columns");
            for (int j = 0; j < wanted.length; j++) {
                columns[j][i] = row[j];
            }
        }
        double[] found = NonNegativeLeastSquares.of(values, columns);
        double left = 0;
        for (int i = 0; i < values.length; i++) {
            double rest = values[i];
            for (int j = 0; j < wanted.length; j++) {
                rest -= found[j] * columns[j][i];
            }
            left += rest * rest;
        }
        for (int j = 0; j < wanted.length; j++) {
            assertThat(found[j]).isCloseTo(wanted[j], within(1e-10));
        }
        assertThat(Math.sqrt(left)).isCloseTo(expected.number("residual"), within(1e-10));
    }
}
