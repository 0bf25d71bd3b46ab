package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.outlier.CochranTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.outlier.Suspicion;

/** Against ISO 5725-2:1994 (recalled) and R 4.2.2. */
class LaboratoryComparisonReferenceTest {
    private static final List<ReferenceFile.Row> CELLS =
            ReferenceFile.read("laboratories-coal.csv").rows();

    private static List<ReferenceFile.Row> cells(ReferenceFile.Row level) {
        return CELLS.stream()
                .filter(row -> row.text("level").equals(level.text("level")))
                .toList();
    }

    private static LaboratoryComparison compare(ReferenceFile.Row level) {
        List<LaboratoryComparison.Cell> cells = new ArrayList<>();
        for (ReferenceFile.Row row : cells(level)) {
            cells.add(LaboratoryComparison.Cell.of(row.text("laboratory"), row.numbers("values")));
        }
        return LaboratoryComparison.of(0, cells);
    }

    @Test
    void findsRepeatabilityAndReproducibilityOfTheCoal() {
        List<ReferenceFile.Row> levels =
                ReferenceFile.read("laboratories-coal-levels.csv").rows();
        assertThat(levels).hasSize(4);
        for (ReferenceFile.Row level : levels) {
            LaboratoryComparison comparison = compare(level);
            double sr = comparison.repeatability().meaningful().orElseThrow();
            double sR = comparison.reproducibility().meaningful().orElseThrow();
            assertThat(comparison.mean()).isCloseTo(level.number("mean"), withPercentage(1e-7));
            assertThat(sr).isCloseTo(level.number("sr"), withPercentage(1e-7));
            assertThat(sR).isCloseTo(level.number("sR"), withPercentage(1e-7));
            assertThat(Math.sqrt(comparison.betweenVariance().meaningful().orElseThrow()))
                    .isCloseTo(level.number("sL"), withPercentage(1e-7));
            assertThat(comparison.mean()).isCloseTo(level.number("printedMean"), offset(0.0005));
            assertThat(sr).isCloseTo(level.number("printedSr"), offset(0.0005));
            assertThat(sR).isCloseTo(level.number("printedSR"), offset(0.0005));
            assertThat(comparison.repeatabilityLimit().meaningful().orElseThrow())
                    .isCloseTo(2.8 * level.number("sr"), withPercentage(1e-7));
            assertThat(comparison.reproducibilityLimit().meaningful().orElseThrow())
                    .isCloseTo(2.8 * level.number("sR"), withPercentage(1e-7));
        }
    }

    @Test
    void findsTheStatisticsOfTheOutlierTests() {
        for (ReferenceFile.Row level :
                ReferenceFile.read("laboratories-coal-levels.csv").rows()) {
            LaboratoryComparison comparison = compare(level);
            CochranTest cochran = comparison.cochran().meaningful().orElseThrow();
            assertThat(cochran.statistic())
                    .isCloseTo(level.number("cochran"), withPercentage(1e-7))
                    .isCloseTo(level.number("printedCochran"), offset(0.02));
            assertThat(cochran.size()).isEqualTo(3);
            assertThat(cochran.isSizeShared()).isFalse();
            GrubbsTest grubbs = comparison.grubbs().meaningful().orElseThrow();
            assertThat(grubbs.statistic())
                    .isCloseTo(Math.max(level.number("grubbsLow"), level.number("grubbsHigh")), withPercentage(1e-7))
                    .isCloseTo(
                            Math.max(level.number("printedGrubbsLow"), level.number("printedGrubbsHigh")),
                            offset(0.02));
            assertThat(comparison.grubbsTwo().meaningful().orElseThrow().statistic())
                    .isCloseTo(Math.min(level.number("pairLow"), level.number("pairHigh")), withPercentage(1e-7));
        }
    }

    /** The standard finds laboratory 1 of level 3 a straggler; C is above the 5 % value 0.516 and below that of 1 %, 0.615. */
    @Test
    void callsTheLargestVarianceOfLevelThreeAStraggler() {
        ReferenceFile.Row third =
                ReferenceFile.read("laboratories-coal-levels.csv").rows().get(2);
        CochranTest cochran = compare(third).cochran().meaningful().orElseThrow();
        assertThat(cochran.critical5()).isCloseTo(0.516, offset(0.0005));
        assertThat(cochran.critical1()).isCloseTo(0.615, offset(0.0005));
        assertThat(cochran.suspicion()).isEqualTo(Suspicion.STRAGGLER);
        assertThat(cochran.p()).isBetween(0.01, 0.05);
        assertThat(cochran.index()).isEqualTo(4);
    }

    @Test
    void findsMandelsStatistics() {
        for (ReferenceFile.Row level :
                ReferenceFile.read("laboratories-coal-levels.csv").rows()) {
            LaboratoryComparison comparison = compare(level);
            List<Mandel> h = comparison.h().meaningful().orElseThrow();
            List<Mandel> k = comparison.k().meaningful().orElseThrow().stream()
                    .map(one -> one.orElseThrow())
                    .toList();
            List<ReferenceFile.Row> cells = cells(level);
            assertThat(cells).hasSize(8);
            for (int i = 0; i < cells.size(); i++) {
                assertThat(h.get(i).statistic()).isCloseTo(cells.get(i).number("h"), offset(1e-9));
                assertThat(k.get(i).statistic()).isCloseTo(cells.get(i).number("k"), offset(1e-9));
                assertThat(h.get(i).critical1()).isCloseTo(2.06489017450058, withPercentage(1e-8));
                assertThat(h.get(i).critical5()).isCloseTo(1.7490784053906, withPercentage(1e-8));
            }
            // Laboratory 2 gave three results, laboratory 1 four, laboratory 5 five (level 2: four).
            assertThat(k.get(1).critical1()).isCloseTo(1.9637770384173, withPercentage(1e-8));
            assertThat(k.get(1).critical5()).isCloseTo(1.66892457620148, withPercentage(1e-8));
            assertThat(k.get(0).critical1()).isCloseTo(1.812135, offset(6e-7));
        }
    }

    @Test
    void computesCochransCriticalValues() {
        List<ReferenceFile.Row> rows =
                ReferenceFile.read("cochran-critical.csv").rows();
        assertThat(rows).hasSizeGreaterThan(150);
        for (ReferenceFile.Row row : rows) {
            int p = row.whole("p");
            int n = row.whole("n");
            assertThat(CochranTest.critical(p, n, 0.05)).isCloseTo(row.number("C05"), offset(6e-7));
            assertThat(CochranTest.critical(p, n, 0.01)).isCloseTo(row.number("C01"), offset(6e-7));
        }
    }

    @Test
    void computesMandelsCriticalValues() {
        List<ReferenceFile.Row> rows = ReferenceFile.read("mandel-critical.csv").rows();
        assertThat(rows).hasSize(28);
        for (ReferenceFile.Row row : rows) {
            int p = row.whole("p");
            for (String significance : List.of("0.05", "0.01", "0.005")) {
                double a = Double.parseDouble(significance);
                assertThat(Mandel.criticalH(p, a)).isCloseTo(row.number("h" + significance), offset(6e-7));
                for (int n = 2; n <= 5; n++) {
                    assertThat(Mandel.criticalK(p, n, a))
                            .isCloseTo(row.number("k_n" + n + "_" + significance), offset(6e-7));
                }
            }
        }
        // ASTM E691, table 5, recalled: 8 laboratories, 3 results, 0.5 %.
        assertThat(Mandel.criticalH(8, 0.005)).isCloseTo(2.15, offset(0.005));
        assertThat(Mandel.criticalK(8, 3, 0.005)).isCloseTo(2.06, offset(0.005));
    }
}
