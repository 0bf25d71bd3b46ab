package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against NIST/SEMATECH e-Handbook 1.3.5.17.1 (seen), ASTM E178 (recalled) and a reference library. */
class GrubbsTestReferenceTest {
    @Test
    void findsThePublishedStatistics() {
        for (ReferenceFile.Row row : ReferenceFile.read("grubbs-samples.csv").rows()) {
            GrubbsTest test = GrubbsTest.of(row.numbers("values")).orElseThrow();
            assertThat(test.statistic())
                    .as(row.text("sample"))
                    .isCloseTo(row.number("statistic"), withPercentage(1e-7));
            assertThat(test.index()).as(row.text("sample")).isEqualTo(row.whole("index"));
        }
    }

    /**
     * NIST/SEMATECH e-Handbook 1.3.5.17.1, uranium isotopes; seen: G 2.4687 (cut, not rounded), one-sided critical
     * value 2.032 at 5 %, 245.57 is an outlier. p of one side from R 4.2.2: 1.50131934103568e-7; both sides twice
     * that.
     */
    @Test
    void decidesTheUraniumExample() {
        double[] uranium = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
        GrubbsTest test = GrubbsTest.of(uranium).orElseThrow();
        assertThat(test.statistic()).isBetween(2.4687, 2.4688);
        assertThat(GrubbsTest.oneSidedCritical(8, 0.05)).isCloseTo(2.032, offset(0.0005));
        assertThat(test.p()).isCloseTo(2 * 1.50131934103568e-07, withPercentage(1e-8));
        assertThat(uranium[test.index()]).isEqualTo(245.57);
        assertThat(test.isOutlier(0.05, 0.01)).isTrue();
    }

    @Test
    void computesTheCriticalValues() {
        ReferenceFile table = ReferenceFile.read("grubbs-critical.csv");
        for (ReferenceFile.Row row : table.rows()) {
            for (String significance :
                    table.columns().subList(1, table.columns().size())) {
                assertThat(GrubbsTest.oneSidedCritical(row.whole("n"), Double.parseDouble(significance)))
                        .as("n = %s, %s", row.text("n"), significance)
                        .isCloseTo(row.number(significance), withPercentage(1e-8));
            }
        }
    }

    @Test
    void liesWithinTheRoughnessOfThePrintedTable() {
        ReferenceFile table = ReferenceFile.read("grubbs-printed.csv");
        for (ReferenceFile.Row row : table.rows()) {
            for (String significance :
                    table.columns().subList(1, table.columns().size())) {
                assertThat(GrubbsTest.oneSidedCritical(row.whole("n"), Double.parseDouble(significance)))
                        .as("n = %s, %s", row.text("n"), significance)
                        .isCloseTo(row.number(significance), offset(0.0015));
            }
        }
    }
}
