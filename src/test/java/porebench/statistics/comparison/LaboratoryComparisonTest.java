package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryComparison.Cell;
import porebench.statistics.outlier.CochranTest;
import porebench.statistics.outlier.Suspicion;
import porebench.statistics.summary.Summary;

class LaboratoryComparisonTest {
    private static final double DIVISION = 0.1;

    private static LaboratoryComparison compare(double[]... laboratories) {
        return LaboratoryComparison.of(DIVISION, cells(laboratories));
    }

    private static List<Cell> cells(double[]... laboratories) {
        List<Cell> cells = new ArrayList<>();
        for (double[] results : laboratories) {
            cells.add(Cell.of("L" + (cells.size() + 1), results));
        }
        return cells;
    }

    /**
     * Three laboratories of two: 1, 3 | 4, 6 | 9, 7. Variances 2 each, so s_r^2 = 2. Means 2, 5, 8 about 5: s_d^2 = 2 (9 + 0 + 9)
     * / 2 = 18, s_L^2 = (18 - 2) / 2 = 8, s_R^2 = 10. h = -1, 0, 1. k = 1 each. C = 1 / 3.
     */
    @Test
    void agreesWithThePencil() {
        LaboratoryComparison comparison = compare(new double[] {1, 3}, new double[] {4, 6}, new double[] {9, 7});
        assertThat(comparison.count()).isEqualTo(6);
        assertThat(comparison.mean()).isCloseTo(5, offset(1e-12));
        assertThat(comparison.repeatability().meaningful().orElseThrow()).isCloseTo(Math.sqrt(2), offset(1e-12));
        assertThat(comparison.betweenVariance().meaningful().orElseThrow()).isCloseTo(8, offset(1e-12));
        assertThat(comparison.reproducibility().meaningful().orElseThrow()).isCloseTo(Math.sqrt(10), offset(1e-12));
        assertThat(comparison.reproducibilityLimit().meaningful().orElseThrow())
                .isCloseTo(2.8 * Math.sqrt(10), offset(1e-12));
        assertThat(comparison.isBetweenNegative()).isFalse();
        assertThat(comparison.h().meaningful().orElseThrow())
                .extracting(Mandel::statistic)
                .containsExactly(-1.0, 0.0, 1.0);
        assertThat(comparison.k().meaningful().orElseThrow())
                .allSatisfy(k -> assertThat(k.orElseThrow().statistic()).isCloseTo(1, offset(1e-12)));
        CochranTest cochran = comparison.cochran().meaningful().orElseThrow();
        assertThat(cochran.statistic()).isCloseTo(1.0 / 3, offset(1e-12));
        assertThat(cochran.isSizeShared()).isTrue();
        assertThat(cochran.suspicion()).isEqualTo(Suspicion.NONE);
        assertThat(comparison.grubbs().whyWithheld()).contains(Judged.Reason.TOO_FEW);
    }

    /** 1, 5 | 2, 4: variances 8 and 2, s_r^2 = 5; equal means 3: s_d^2 = 0, s_L^2 = -5 / 2, so s_R = s_r. */
    @Test
    void countsANegativeVarianceAsNoneAndSaysSo() {
        LaboratoryComparison comparison = compare(new double[] {1, 5}, new double[] {2, 4});
        assertThat(comparison.betweenVariance().meaningful().orElseThrow()).isCloseTo(-2.5, offset(1e-12));
        assertThat(comparison.isBetweenNegative()).isTrue();
        assertThat(comparison.reproducibility()).isEqualTo(comparison.repeatability());
    }

    /** 0.4, 0.4 | 0.4, 0.4 | 0.4, 0.5: both mean squares are 0.005 / 3 by the pencil, and not a rounding error apart. */
    @Test
    void takesEqualMeanSquaresAsEqual() {
        double[] same = {0.4, 0.4};
        LaboratoryComparison comparison = compare(same, same, new double[] {0.4, 0.5});
        assertThat(comparison.betweenVariance().meaningful()).contains(0.0);
        assertThat(comparison.isBetweenNegative()).isFalse();
    }

    /** Of two laboratories h is always 0.7071, which tells nothing. */
    @Test
    void withholdsHOfTwoLaboratories() {
        LaboratoryComparison comparison = compare(new double[] {1, 3}, new double[] {40, 60});
        assertThat(comparison.h()).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW));
        assertThat(comparison.k().meaningful()).isPresent();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mandel.criticalH(2, 0.05))
                .withMessage("laboratories must be at least 3, but is 2");
    }

    @Test
    void withholdsWhatEqualReadingsCannotTell() {
        LaboratoryComparison still = compare(new double[] {0.4, 0.4}, new double[] {0.4, 0.4}, new double[] {0.4, 0.4});
        assertThat(still.repeatability().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(still.reproducibility().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(still.repeatabilityLimit().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(still.h().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(still.k().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(still.cochran().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        LaboratoryComparison apart = compare(new double[] {0.4, 0.4}, new double[] {0.6, 0.6}, new double[] {0.9, 0.9});
        assertThat(apart.repeatability().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        // Means 0.4, 0.6, 0.9: their standard deviation is sqrt(0.19 / 3).
        assertThat(apart.reproducibility().meaningful().orElseThrow()).isCloseTo(Math.sqrt(0.19 / 3), offset(1e-12));
        assertThat(apart.h().meaningful()).isPresent();
    }

    /** One laboratory of five that once saw the next mark: 0.005 / (0.005 + 4 * 0.0025), by the scale alone. */
    @Test
    void withholdsVariancesThatAreOneDivisionOfOneLaboratory() {
        double[] same = {0.4, 0.4};
        LaboratoryComparison comparison = compare(same, same, same, same, new double[] {0.4, 0.5});
        assertThat(comparison.cochran()).isInstanceOfSatisfying(Judged.Withheld.class, withheld -> {
            assertThat(withheld.reason()).isEqualTo(Judged.Reason.SCALE_TOO_COARSE);
            assertThat(withheld.statistic().getAsDouble()).isCloseTo(1.0 / 3, offset(1e-12));
        });
        assertThat(comparison.k().whyWithheld()).contains(Judged.Reason.SCALE_TOO_COARSE);
        assertThat(comparison.h().whyWithheld()).contains(Judged.Reason.WITHIN_ONE_DIVISION);
        assertThat(comparison.grubbs().whyWithheld()).contains(Judged.Reason.WITHIN_ONE_DIVISION);
    }

    /** Variances 0.005 of every pair are a pooled 0.0707, above half of 0.1 and below half of 0.15. */
    @Test
    void asksForHalfADivisionOfSpread() {
        double[][] pairs = {{0.4, 0.5}, {0.5, 0.6}, {0.4, 0.5}};
        assertThat(LaboratoryComparison.of(0.1, cells(pairs)).k().meaningful()).isPresent();
        assertThat(LaboratoryComparison.of(0.15, cells(pairs)).k().whyWithheld())
                .contains(Judged.Reason.SCALE_TOO_COARSE);
        // Two results 0.2 apart scatter by exactly the root of 0.02; half of a division of twice that is not less.
        assertThat(LaboratoryComparison.of(2 * Math.sqrt(0.02), cells(new double[] {1, 1.2}, new double[] {2, 2.2}))
                        .k()
                        .meaningful())
                .isPresent();
    }

    @Test
    void takesLaboratoriesWithOneResult() {
        LaboratoryComparison mixed = compare(new double[] {1}, new double[] {2, 4}, new double[] {3, 5});
        assertThat(mixed.repeatability().meaningful().orElseThrow()).isCloseTo(Math.sqrt(2), offset(1e-12));
        assertThat(mixed.k().meaningful().orElseThrow().get(0)).isEqualTo(Optional.empty());
        assertThat(mixed.cochran().meaningful().orElseThrow().groups()).isEqualTo(2);
        LaboratoryComparison singles = compare(new double[] {1}, new double[] {2}, new double[] {6});
        assertThat(singles.repeatability().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(singles.betweenVariance().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(singles.cochran().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(singles.k().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        // 1, 2, 6 about 3: (4 + 1 + 9) / 2.
        assertThat(singles.reproducibility().meaningful().orElseThrow()).isCloseTo(Math.sqrt(7), offset(1e-12));
        LaboratoryComparison alone = compare(new double[] {1, 2, 3});
        assertThat(alone.repeatability().meaningful().orElseThrow()).isCloseTo(1, offset(1e-12));
        assertThat(alone.reproducibility().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(alone.betweenVariance().whyWithheld()).contains(Judged.Reason.TOO_FEW);
    }

    /** Four laboratories of 2, 2, 3, 3 results: both sizes are as common, the smaller one has the larger critical value. */
    @Test
    void testsUnequalGroupsByTheMostCommonSize() {
        CochranTest cochran = compare(
                        new double[] {1, 2}, new double[] {1, 3}, new double[] {1, 2, 3}, new double[] {4, 5, 6})
                .cochran()
                .meaningful()
                .orElseThrow();
        assertThat(cochran.size()).isEqualTo(2);
        assertThat(cochran.isSizeShared()).isFalse();
        assertThat(cochran.index()).isEqualTo(1);
        assertThat(cochran.critical5()).isEqualTo(CochranTest.critical(4, 2, 0.05));
    }

    /** The bounds (p - 1) / sqrt(p) and sqrt(p) are reached by one laboratory apart from equal others; h is free of scale and place. */
    @Test
    void staysWithinItsBounds() {
        double[] others = {1, 1, 1};
        List<Mandel> h = compare(others, others, others, new double[] {7, 7, 8})
                .h()
                .meaningful()
                .orElseThrow();
        assertThat(h.get(3).statistic()).isCloseTo(3 / Math.sqrt(4), offset(1e-9));
        assertThat(h.get(3).suspicion()).isEqualTo(Suspicion.OUTLIER);
        assertThat(LaboratoryComparison.of(0, cells(others, others, others, new double[] {7, 7, 8}))
                        .k()
                        .meaningful()
                        .orElseThrow()
                        .get(3)
                        .orElseThrow()
                        .statistic())
                .isCloseTo(2, offset(1e-9));
        double far = 1e9;
        List<Mandel> moved = LaboratoryComparison.of(
                        0, cells(new double[] {far + 1, far + 3}, new double[] {far + 4, far + 6}, new double[] {
                            far + 9, far + 7
                        }))
                .h()
                .meaningful()
                .orElseThrow();
        assertThat(moved.get(2).statistic()).isCloseTo(1, offset(1e-9));
        LaboratoryComparison shifted = LaboratoryComparison.of(
                0,
                cells(new double[] {far + 1, far + 3}, new double[] {far + 4, far + 6}, new double[] {far + 9, far + 7
                }));
        assertThat(shifted.reproducibility().meaningful().orElseThrow()).isCloseTo(Math.sqrt(10), offset(1e-9));
    }

    /**
     * Honest laboratories read to a division: Cochran's test and k call no more of them out than their level. 600 comparisons a
     * cell have a standard error of 0.9 % at 5 % and of 0.4 % at 1 %; four of them are allowed.
     */
    @Test
    void doesNotAlarmOnHonestReadingsOfACoarseScale() {
        Random random = new Random(20_260_701);
        for (int laboratories : new int[] {2, 3, 10}) {
            for (int readings : new int[] {2, 4}) {
                for (double division : new double[] {0.01, 0.05, 0.1}) {
                    for (double sigma : new double[] {0.02, 0.05, 0.15}) {
                        honest(random, laboratories, readings, division, sigma);
                    }
                }
            }
        }
    }

    private static void honest(Random random, int laboratories, int readings, double division, double sigma) {
        int cases = 600;
        double[] cochran = {
            CochranTest.critical(laboratories, readings, 0.05), CochranTest.critical(laboratories, readings, 0.01)
        };
        double[] k = {Mandel.criticalK(laboratories, readings, 0.05), Mandel.criticalK(laboratories, readings, 0.01)};
        double[] cochranAlarms = new double[2];
        double[] kAlarms = new double[2];
        for (int i = 0; i < cases; i++) {
            List<Summary> all = new ArrayList<>();
            for (int laboratory = 0; laboratory < laboratories; laboratory++) {
                double level = random.nextDouble();
                double[] results = new double[readings];
                for (int j = 0; j < readings; j++) {
                    results[j] = Math.rint((level + sigma * random.nextGaussian()) / division) * division;
                }
                all.add(Summary.of(results));
            }
            if (CochranTest.sumOfVariances(all) == 0 || CochranTest.isTooCoarse(division, all)) {
                continue;
            }
            double[] shares = all.stream()
                    .mapToDouble(group -> CochranTest.share(division, group, all))
                    .toArray();
            double largest = Arrays.stream(shares).max().orElseThrow();
            for (int level = 0; level < 2; level++) {
                int at = level;
                cochranAlarms[level] += largest > cochran[level] ? 1.0 / cases : 0;
                kAlarms[level] += Arrays.stream(shares)
                                .filter(share -> Math.sqrt(laboratories * share) > k[at])
                                .count()
                        / (double) cases
                        / laboratories;
            }
        }
        String cell = laboratories + " of " + readings + ", division " + division + ", sigma " + sigma;
        for (double[] alarms : List.of(cochranAlarms, kAlarms)) {
            assertThat(alarms[0]).as(cell).isLessThan(0.05 + 4 * 0.009);
            assertThat(alarms[1]).as(cell).isLessThan(0.01 + 4 * 0.004);
        }
    }

    /** Two laboratories of two, one pair alike: 0.5, 0.9 | 0.4, 0.4. C was 1; the alike pair may hide a variance of up to 0.005 and
     * counts as half of it, so that C is 0.08 / (0.08 + 0.0025) = 0.970, below the 5 % value of 0.9985 (recalled, printed tables). */
    @Test
    void makesNoOutlierOfALaboratoryBecauseAnotherReadTheSameTwice() {
        LaboratoryComparison comparison = compare(new double[] {0.5, 0.9}, new double[] {0.4, 0.4});
        CochranTest cochran = comparison.cochran().meaningful().orElseThrow();
        assertThat(cochran.statistic()).isCloseTo(0.08 / 0.0825, offset(1e-12));
        assertThat(cochran.suspicion()).isEqualTo(Suspicion.NONE);
        assertThat(comparison
                        .k()
                        .meaningful()
                        .orElseThrow()
                        .get(0)
                        .orElseThrow()
                        .statistic())
                .isCloseTo(Math.sqrt(2 * 0.08 / 0.0825), offset(1e-12));
        assertThat(comparison
                        .k()
                        .meaningful()
                        .orElseThrow()
                        .get(0)
                        .orElseThrow()
                        .suspicion())
                .isEqualTo(Suspicion.NONE);
    }

    /** Of three equal readings two may lie at one end of the mark and one at the other: variance d^2 / 3, half of it counts. */
    @Test
    void countsWhatThreeEqualReadingsMayHide() {
        LaboratoryComparison comparison = compare(new double[] {1, 2, 3}, new double[] {4, 4, 4});
        assertThat(comparison.cochran().meaningful().orElseThrow().statistic())
                .isCloseTo(1 / (1 + 0.01 / 6), offset(1e-12));
    }

    @Test
    void namesThingsByTheStandardsTwoLevels() {
        assertThat(Suspicion.ofProbability(0.05)).isEqualTo(Suspicion.NONE);
        assertThat(Suspicion.ofProbability(0.0499)).isEqualTo(Suspicion.STRAGGLER);
        assertThat(Suspicion.ofProbability(0.01)).isEqualTo(Suspicion.STRAGGLER);
        assertThat(Suspicion.ofProbability(0.0099)).isEqualTo(Suspicion.OUTLIER);
        assertThat(new Mandel(-2, 1.7, 2.1).suspicion()).isEqualTo(Suspicion.STRAGGLER);
        assertThat(new Mandel(1.7, 1.7, 2.1).suspicion()).isEqualTo(Suspicion.NONE);
    }

    @Test
    void refusesWhatCannotBeCompared() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LaboratoryComparison.of(0.1, List.of()))
                .withMessage("count of cells must be at least 1, but is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LaboratoryComparison.of(-1, cells(new double[] {1})))
                .withMessage("division must be at least 0, but is -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Cell.of(" ", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Cell.of("L1"));
        assertThatIllegalArgumentException().isThrownBy(() -> Cell.of("L1", Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> CochranTest.critical(1, 2, 0.05));
        assertThatIllegalArgumentException().isThrownBy(() -> CochranTest.critical(2, 1, 0.05));
        assertThatIllegalArgumentException().isThrownBy(() -> CochranTest.critical(2, 2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Mandel.criticalK(3, 1, 0.05));
    }
}
