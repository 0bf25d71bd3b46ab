package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against ASTM E178 and the tables of Dixon and Rorabacher (recalled), a reference library and a simulation. */
class DixonTestReferenceTest {
    @Test
    void findsTheRatios() {
        for (ReferenceFile.Row row : ReferenceFile.read("dixon-samples.csv").rows()) {
            DixonTest test = DixonTest.of(row.numbers("values")).orElseThrow();
            assertThat(test.statistic())
                    .as(row.text("sample"))
                    .isCloseTo(row.number("statistic"), withPercentage(1e-7));
            assertThat(test.ratio().name()).isEqualTo(row.text("ratio"));
            assertThat(test.index()).isEqualTo(row.whole("index"));
        }
    }

    @Test
    void agreesWithTheSimulatedAndThePrintedCriticalValues() {
        for (Map.Entry<String, Double> file : Map.of("dixon-simulated.csv", 0.0015, "dixon-printed.csv", 0.006)
                .entrySet()) {
            ReferenceFile table = ReferenceFile.read(file.getKey());
            for (ReferenceFile.Row row : table.rows()) {
                for (String significance :
                        table.columns().subList(2, table.columns().size())) {
                    int n = row.whole("n");
                    double alpha = Double.parseDouble(significance);
                    assertThat(DixonTest.Ratio.of(n).name()).isEqualToIgnoringCase(row.text("ratio"));
                    assertThat(DixonTest.oneSided(n, row.number(significance) - file.getValue()))
                            .as("%s, n = %s, %s", file.getKey(), n, alpha)
                            .isGreaterThan(alpha);
                    assertThat(DixonTest.oneSided(n, Math.min(1, row.number(significance) + file.getValue())))
                            .as("%s, n = %s, %s", file.getKey(), n, alpha)
                            .isLessThan(alpha);
                }
            }
        }
    }

    /** R. D. Dean and W. B. Dixon, Analytical Chemistry 23 (1951), recalled: the 5 % point of n = 5, both ends, is 0.710. */
    @Test
    void decidesNearThePrintedPoint() {
        assertThat(DixonTest.of(0, 1, 2, 2.9, 10).orElseThrow().p()).isCloseTo(0.05, offset(0.003));
    }
}
