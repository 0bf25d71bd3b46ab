package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryComparison.Cell;
import porebench.statistics.variance.VarianceInterval;

class LaboratoryBiasTest {
    private static LaboratoryComparison level(double[]... laboratories) {
        List<Cell> cells = new ArrayList<>();
        for (double[] results : laboratories) {
            cells.add(Cell.of("L" + (cells.size() + 1), results));
        }
        return LaboratoryComparison.of(0, cells);
    }

    private static final LaboratoryComparison ONE =
            level(new double[] {1, 3}, new double[] {4, 6}, new double[] {9, 7});

    /**
     * 1, 3 | 4, 6 | 9, 7: means 2, 5, 8, s_r^2 = 2 with 3 degrees. L1 against 5 and 8: 2 - 6.5 = -4.5; own 2 / 2 = 1, others
     * 4.5 / 2 = 2.25, so u^2 = 3.25 with 3.25^2 / (1 / 3 + 2.25^2 / 1) = 1.957529 degrees. U: t(3) x 1 = 3.182446 and t(1) x 1.5 =
     * 12.706205 x 1.5 = 19.059307 (t table, recalled), root of squares 19.323177.
     */
    @Test
    void agreesWithThePencil() {
        List<LaboratoryBias> biases =
                LaboratoryBias.of(List.of(ONE), 0).meaningful().orElseThrow();
        assertThat(biases).extracting(LaboratoryBias::bias).containsExactly(-4.5, 0.0, 4.5);
        LaboratoryBias first = biases.get(0);
        assertThat(first.standardUncertainty()).isCloseTo(Math.sqrt(3.25), within(1e-12));
        assertThat(first.degreesOfFreedom()).isCloseTo(1.957529, within(1e-6));
        assertThat(first.expanded()).isCloseTo(19.323177, within(1e-5));
        assertThat(first.levels()).isEqualTo(1);
        assertThat(first.isSeen()).isFalse();
        // The rounding of a mean to a division of 1.2 adds 1.44 / 12.
        assertThat(LaboratoryBias.of(List.of(ONE), 1.2)
                        .meaningful()
                        .orElseThrow()
                        .get(0)
                        .standardUncertainty())
                .isCloseTo(Math.sqrt(3.25 + 0.12), within(1e-12));
    }

    /**
     * Twice the same level has the same biases; the own part is 2 * 1 / 4 = 0.5, the others' means are the same: u^2 = 2.75,
     * with 2.75^2 / (2 * 0.25^2 / 3 + 2.25^2) = 1.481633 degrees.
     */
    @Test
    void poolsLevels() {
        LaboratoryBias first = LaboratoryBias.of(List.of(ONE, ONE), 0)
                .meaningful()
                .orElseThrow()
                .get(0);
        assertThat(first.bias()).isEqualTo(-4.5);
        assertThat(first.levels()).isEqualTo(2);
        assertThat(first.standardUncertainty()).isCloseTo(Math.sqrt(2.75), within(1e-12));
        assertThat(first.degreesOfFreedom()).isCloseTo(1.481633, within(1e-6));
    }

    @Test
    void saysNothingOfTwoLaboratoriesOrWithoutRepeats() {
        assertThat(LaboratoryBias.of(List.of(level(new double[] {1, 2}, new double[] {3, 4})), 0)
                        .whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        assertThat(LaboratoryBias.of(List.of(level(new double[] {1}, new double[] {3}, new double[] {4})), 0)
                        .whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        // A laboratory that is absent from a level is not compared, and two are left.
        assertThat(LaboratoryBias.of(List.of(ONE, level(new double[] {1, 2}, new double[] {3, 4})), 0)
                        .whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        double[] still = {0.4, 0.4};
        assertThat(LaboratoryBias.of(List.of(level(still, still, still)), 0).whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
        assertThatIllegalArgumentException().isThrownBy(() -> LaboratoryBias.of(List.of(), 0));
    }

    /**
     * s_r^2 = 2 with 3 degrees lies from 6 / 9.348404 to 6 / 0.2157953 (points of chi-square, recalled; every table prints
     * 9.348 and 0.216).
     */
    @Test
    void givesIntervalsOfRepeatabilityAndReproducibility() {
        VarianceInterval repeatability = ONE.repeatabilityInterval(0.95).orElseThrow();
        assertThat(repeatability.low()).isCloseTo(Math.sqrt(6 / 9.348404), within(1e-6));
        assertThat(repeatability.high()).isCloseTo(Math.sqrt(6 / 0.2157953), within(1e-5));
        VarianceInterval reproducibility = ONE.reproducibilityInterval(0.95).orElseThrow();
        assertThat(reproducibility.low()).isLessThan(Math.sqrt(10)).isGreaterThan(repeatability.low());
        assertThat(reproducibility.high()).isGreaterThan(Math.sqrt(10));
        assertThat(level(new double[] {1}, new double[] {3}).repeatabilityInterval(0.95))
                .isEmpty();
        assertThat(level(new double[] {1, 2}).reproducibilityInterval(0.95)).isEmpty();
    }

    /** 2000 comparisons have a standard error of 0.5 % at 95 %; half a percentage point and three of them are allowed. */
    @Test
    void coversTheTruthAboutAsOftenAsItSays() {
        Random random = new Random(20_261_127);
        int cases = 2000;
        double biases = 0;
        double roots = 0;
        double largerRoots = 0;
        for (int i = 0; i < cases; i++) {
            double[][] results = new double[6][3];
            double[] truth = new double[6];
            for (int laboratory = 0; laboratory < 6; laboratory++) {
                truth[laboratory] = 0.1 * random.nextGaussian();
                for (int j = 0; j < 3; j++) {
                    results[laboratory][j] = truth[laboratory] + 0.08 * random.nextGaussian();
                }
            }
            LaboratoryComparison comparison = level(results);
            LaboratoryBias first = LaboratoryBias.of(List.of(comparison), 0)
                    .meaningful()
                    .orElseThrow()
                    .get(0);
            // The others are a sample of all laboratories, whose mean is 0.
            biases += Math.abs(first.bias() - truth[0]) <= first.expanded() ? 1.0 / cases : 0;
            roots += holds(comparison.repeatabilityInterval(0.95).orElseThrow(), 0.08) / cases;
            largerRoots += holds(comparison.reproducibilityInterval(0.95).orElseThrow(), Math.hypot(0.1, 0.08)) / cases;
        }
        assertThat(biases).isGreaterThan(0.95 - 0.005 - 3 * 0.005);
        assertThat(roots).isBetween(0.95 - 0.015, 0.95 + 0.015);
        assertThat(largerRoots).isGreaterThan(0.95 - 0.005 - 3 * 0.005);
    }

    private static double holds(VarianceInterval interval, double truth) {
        return interval.low() <= truth && truth <= interval.high() ? 1 : 0;
    }
}
