package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against ASTM E178, ISO 5725-2 (recalled), a reference library and a simulation. */
class GrubbsPairTestReferenceTest {
    @Test
    void findsTheStatistics() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("grubbs-pair-samples.csv").rows()) {
            double[] values = row.numbers("values");
            GrubbsPairTest test = GrubbsPairTest.of(values).orElseThrow();
            boolean isHigh = row.text("side").equals("high");
            if (test.isHigh() == isHigh) {
                assertThat(test.statistic()).isCloseTo(row.number("statistic"), withPercentage(1e-7));
            } else {
                // The other end is the one that stands out more.
                assertThat(test.statistic()).isLessThan(row.number("statistic"));
            }
        }
    }

    /** ASTM E178 example 1 (recalled): the pair is far out, although the single test and Dixon's do not agree on one. */
    @Test
    void findsTheMaskedPairOfTheWire() {
        double[] wire = {568, 570, 570, 570, 572, 572, 572, 578, 584, 596};
        GrubbsPairTest test = GrubbsPairTest.judge(1, wire).meaningful().orElseThrow();
        assertThat(test.isHigh()).isTrue();
        assertThat(test.statistic()).isLessThan(PairDistribution.of(10).lowerPoint(0.005));
        assertThat(test.p()).isBetween(1e-5, 0.01);
        assertThat(DixonTest.of(wire).orElseThrow().p()).isGreaterThan(0.05);
    }

    @Test
    void agreesWithTheSimulatedAndThePrintedCriticalValues() {
        for (String name : List.of("grubbs-pair-simulated.csv", "grubbs-pair-printed.csv")) {
            ReferenceFile table = ReferenceFile.read(name);
            for (ReferenceFile.Row row : table.rows()) {
                for (String significance :
                        table.columns().subList(1, table.columns().size())) {
                    assertThat(PairDistribution.of(row.whole("n")).lowerPoint(Double.parseDouble(significance)))
                            .as("%s, n = %s, %s", name, row.text("n"), significance)
                            .isCloseTo(row.number(significance), offset(0.00081));
                }
            }
        }
    }
}
