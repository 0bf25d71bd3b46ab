package porebench.statistics.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against the table of the NIST/SEMATECH e-Handbook 1.3.6.7.2 (seen) and a reference library. */
class StudentTReferenceTest {
    @Test
    void roundsToThePublishedTable() {
        ReferenceFile table = ReferenceFile.read("t-table.csv");
        for (ReferenceFile.Row row : table.rows()) {
            StudentT t = new StudentT(row.number("degreesOfFreedom"));
            for (String tail : table.columns().subList(1, table.columns().size())) {
                assertThat(t.upperPoint(Double.parseDouble(tail)))
                        .as("%s degrees of freedom, tail %s", row.text("degreesOfFreedom"), tail)
                        .isCloseTo(row.number(tail), within(0.0005));
            }
        }
    }

    @Test
    void agreesWithAReferenceLibraryForWholeAndOtherDegreesOfFreedom() {
        for (ReferenceFile.Row row : ReferenceFile.read("t-points.csv").rows()) {
            StudentT t = new StudentT(row.number("degreesOfFreedom"));
            double tail = row.number("upperTail");
            assertThat(t.upperPoint(tail)).isCloseTo(row.number("point"), withPercentage(1e-8));
            assertThat(t.coverageFactor(1 - 2 * tail)).isCloseTo(row.number("point"), withPercentage(1e-8));
            assertThat(t.upperTail(row.number("point"))).isCloseTo(tail, withPercentage(1e-7));
        }
    }

    /**
     * For 1 degree of freedom the upper point is cot(pi q); for 2 it is (1 - 2q) / sqrt(2q (1 - q)). Elementary
     * integrals; any textbook, no source needed.
     */
    @Test
    void agreesWithTheClosedFormsForOneAndTwoDegreesOfFreedom() {
        for (double tail : new double[] {0.4, 0.25, 0.1, 0.025, 1e-3, 1e-6, 1e-9, 1e-12, 1e-20}) {
            assertThat(new StudentT(1).upperPoint(tail)).isCloseTo(1 / Math.tan(Math.PI * tail), withPercentage(1e-10));
            assertThat(new StudentT(2).upperPoint(tail))
                    .isCloseTo((1 - 2 * tail) / Math.sqrt(2 * tail * (1 - tail)), withPercentage(1e-10));
        }
    }
}
