package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.comparison.SpreadTest;
import porebench.statistics.distribution.ChiSquare;

/**
 * Against NIST StRD SiRstv (seen), the e-Handbook's gears, printed tables of chi-square, F and the studentised range
 * (recalled), and R 4.2.2.
 */
class PooledDeviationReferenceTest {
    private static List<Summary> sets(String file) {
        return ReferenceFile.read(file).rows().stream()
                .map(row -> Summary.of(row.numbers("values")))
                .toList();
    }

    /** The pooled deviation of groups is the certified residual standard deviation of the one-way analysis of variance. */
    @Test
    void poolsTheCertifiedResistivities() {
        PooledDeviation pooled =
                PooledDeviation.of(sets("strd-anova-sirstv.csv")).orElseThrow();
        assertThat(pooled.sets()).isEqualTo(5);
        assertThat(pooled.degreesOfFreedom()).isEqualTo(20);
        assertThat(pooled.standardDeviation()).isCloseTo(1.04076068334656E-01, withPercentage(1e-10));
    }

    @Test
    void poolsTheGears() {
        PooledDeviation pooled = PooledDeviation.of(sets("anova-gear.csv")).orElseThrow();
        assertThat(pooled.degreesOfFreedom()).isEqualTo(90);
        double within = pooled.standardDeviation() * pooled.standardDeviation() * 90;
        assertThat(within).isCloseTo(0.003174, offset(5e-7));
    }

    @Test
    void computesThePointsOfChiSquareAndItsTails() {
        for (ReferenceFile.Row row : ReferenceFile.read("chi-square-points.csv").rows()) {
            ChiSquare chiSquare = new ChiSquare(row.number("df"));
            String point = row.text("df") + " degrees, " + row.text("probability");
            double quantile = row.number("quantile");
            assertThat(chiSquare.quantile(row.number("probability")))
                    .as(point)
                    .isCloseTo(quantile, withPercentage(1e-7));
            assertThat(chiSquare.lowerTail(quantile))
                    .as(point)
                    .isCloseTo(row.number("probability"), withPercentage(1e-7));
            assertThat(chiSquare.upperTail(quantile)).as(point).isCloseTo(row.number("upper"), withPercentage(1e-7));
        }
    }

    @Test
    void computesTheStudentisedRangeOfAnEstimatedDeviation() {
        for (ReferenceFile.Row row : ReferenceFile.read("studentised-range.csv").rows()) {
            double factor = CriticalRange.factor(row.whole("n"), row.whole("df"), row.number("probability"));
            String point = row.text("n") + " values, " + row.text("df") + " degrees, " + row.text("probability");
            assertThat(factor).as(point).isCloseTo(row.number("factor"), withPercentage(3e-4));
            assertThat(factor).as(point).isCloseTo(row.number("printed"), offset(0.006));
        }
    }

    @Test
    void computesTheTailOfTheVarianceRatio() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("variance-ratio-tails.csv").rows()) {
            SpreadTest test = SpreadTest.of(row.whole("df1"), row.whole("df2"), row.number("ratio"));
            assertThat(test.p()).as(row.cells().toString()).isCloseTo(row.number("upper"), withPercentage(1e-8));
        }
    }
}
