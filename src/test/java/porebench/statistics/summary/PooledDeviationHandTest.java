package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;
import porebench.statistics.comparison.SpreadTest;
import porebench.statistics.distribution.ChiSquare;

/** Pooled scatter by pencil, and what a dial of 0.1 % makes of it. */
class PooledDeviationHandTest {
    private static final double DIVISION = 0.1;

    /** 0.1 / sqrt(12). */
    private static final double OF_THE_DIVISION = 0.0288675;

    private static PooledDeviation pooled(int sets, int degrees, double s) {
        return new PooledDeviation(sets, degrees, s);
    }

    /**
     * Sets {0.3, 0.5}, {0.4, 0.4, 0.7}, {0.5}: squares about their means 0.02, 0.06, nothing; degrees 1, 2, none.
     *
     * <pre>
     * s = sqrt(0.08 / 3) = 0.163299
     * </pre>
     */
    @Test
    void poolsSetsOfDifferentSizeAndLeavesOutWhatHasNoScatter() {
        PooledDeviation pooled = PooledDeviation.of(
                        List.of(Summary.of(0.3, 0.5), Summary.of(0.4, 0.4, 0.7), Summary.of(0.5)))
                .orElseThrow();
        assertThat(pooled.sets()).isEqualTo(2);
        assertThat(pooled.degreesOfFreedom()).isEqualTo(3);
        assertThat(pooled.standardDeviation()).isCloseTo(0.163299, offset(5e-7));
        assertThat(PooledDeviation.of(List.of(Summary.of(0.3), Summary.of(0.4))))
                .isEmpty();
        assertThat(PooledDeviation.of(List.of())).isEmpty();
    }

    /** s 0.1 of 10 degrees: 0.1 sqrt(10 / 20.483) = 0.06987 to 0.1 sqrt(10 / 3.247) = 0.17549 (chi-square table, recalled). */
    @Test
    void boundsTheTrueDeviationByChiSquare() {
        PooledDeviation.Interval interval = pooled(5, 10, 0.1).interval(0.95, 10);
        assertThat(interval.low()).isCloseTo(0.06987, offset(0.00001));
        assertThat(interval.high()).isCloseTo(0.17549, offset(0.00001));
        assertThat(pooled(5, 10, 0).interval(0.95, 10).high()).isZero();
    }

    /** Of 4000 intervals at 95 % from five sets of three, 4 sqrt(0.95 x 0.05 / 4000) = 1.4 % is chance. */
    @Test
    void coversTheTrueDeviationAsOftenAsItSays() {
        SplittableRandom random = new SplittableRandom(20_260_611L);
        int covered = 0;
        for (int i = 0; i < 4000; i++) {
            List<Summary> sets = java.util.stream.IntStream.range(0, 5)
                    .mapToObj(set -> Summary.of(normal(random), normal(random), normal(random)))
                    .toList();
            PooledDeviation.Interval interval =
                    PooledDeviation.of(sets).orElseThrow().interval(0.95, 10);
            covered += interval.low() <= 1 && 1 <= interval.high() ? 1 : 0;
        }
        assertThat(covered / 4000.0).isCloseTo(0.95, offset(0.014));
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** Variances 0.02 on 1 degree over 0.01 on 10: F = 2; t = sqrt(2) on 10 degrees has 0.1877 outside (R 4.2.2). */
    @Test
    void comparesTheScatterWithThePooledOne() {
        SpreadTest test = SpreadTest.judge(DIVISION, OF_THE_DIVISION, pooled(5, 10, 0.1), 0.3, 0.5)
                .meaningful()
                .orElseThrow();
        assertThat(test.statistic()).isCloseTo(2, offset(1e-9));
        assertThat(test.p()).isCloseTo(0.18767, offset(0.00001));
        assertThat(test.degreesOfFreedom()).isEqualTo(1);
        assertThat(test.pooledDegreesOfFreedom()).isEqualTo(10);
    }

    @Test
    void givesNoProbabilityForWhatTheDialAloneMakes() {
        PooledDeviation usual = pooled(5, 10, 0.08);
        assertThat(SpreadTest.judge(DIVISION, OF_THE_DIVISION, usual, 0.4).whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        assertThat(SpreadTest.judge(DIVISION, OF_THE_DIVISION, usual, 0.4, 0.4, 0.4)
                        .whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
        // 0.5 - 0.4 is less than 0.1 in binary fractions, and 5.4 - 5.3 is more.
        assertThat(SpreadTest.judge(DIVISION, OF_THE_DIVISION, usual, 0.4, 0.5).whyWithheld())
                .contains(Judged.Reason.WITHIN_ONE_DIVISION);
        assertThat(SpreadTest.judge(DIVISION, OF_THE_DIVISION, usual, 5.4, 5.3).whyWithheld())
                .contains(Judged.Reason.WITHIN_ONE_DIVISION);
        assertThat(SpreadTest.judge(DIVISION, OF_THE_DIVISION, usual, 0.4, 0.61).meaningful())
                .isPresent();
    }

    /** All earlier sets stood still: their scatter counts as the dial's, so 0.0141421 / 0.0288675 squared x 100 = 24. */
    @Test
    void takesAPooledDeviationTheDialCannotShowAsTheDials() {
        SpreadTest test = SpreadTest.judge(DIVISION, OF_THE_DIVISION, pooled(5, 10, 0), 0.3, 0.5)
                .meaningful()
                .orElseThrow();
        assertThat(test.statistic()).isCloseTo(24, offset(0.001));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SpreadTest.judge(0, 0, pooled(5, 10, 0), 0.3, 0.5))
                .withMessage("usual deviation must be greater than 0, but is 0.0");
    }

    /** Two results, s 0.05 of 20 degrees: 4.02 (studentised range, 1 %, recalled) x 0.05 = 0.201. */
    @ParameterizedTest
    @CsvSource({"0.200, true", "0.202, false"})
    void checksARangeAgainstThePooledDeviation(double range, boolean passes) {
        CriticalRange.RangeCheck verdict =
                CriticalRange.check(range, 2, pooled(10, 20, 0.05), DIVISION, OF_THE_DIVISION);
        assertThat(verdict.limit()).isCloseTo(0.2012, offset(0.0003));
        assertThat(verdict.passes()).isEqualTo(passes);
    }

    /** 4.02 x 0.01 = 0.04 is less than one division, which readings of one and the same sample may differ by. */
    @Test
    void neverAsksForLessThanOneDivision() {
        CriticalRange.RangeCheck verdict = CriticalRange.check(5.4 - 5.3, 2, pooled(10, 20, 0), DIVISION, 0.01);
        assertThat(verdict.limit()).isEqualTo(DIVISION);
        assertThat(verdict.passes()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 10})
    void asksForMoreTheFewerDegreesThereAre(int n) {
        double before = Double.POSITIVE_INFINITY;
        for (int degrees : new int[] {2, 3, 5, 10, 50, 1000}) {
            double factor = CriticalRange.factor(n, degrees, 0.95);
            assertThat(factor).isLessThan(before);
            before = factor;
        }
        assertThat(before).isCloseTo(CriticalRange.factor(n), offset(0.02)).isGreaterThan(CriticalRange.factor(n));
        assertThat(StudentisedRange.probabilityWithin(CriticalRange.factor(n, 10, 0.95), n, 10))
                .isCloseTo(0.95, offset(1e-9));
    }

    @Test
    void refusesWhatIsOutsideItsBounds() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.factor(2, 1, 0.95))
                .withMessage("degreesOfFreedom must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.factor(1, 5, 0.95))
                .withMessage("n must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.factor(2, 5, 1))
                .withMessage("probability must be from 0.5 to 0.999, but is 1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PooledDeviation(3, 2, 0.1))
                .withMessage("degreesOfFreedom must be at least 3, but is 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ChiSquare(0))
                .withMessage("degreesOfFreedom must be from 0.5 to 1000000.0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new ChiSquare(3).quantile(1));
        assertThatIllegalArgumentException().isThrownBy(() -> pooled(1, 1, 0.1).interval(1, 1));
        assertThat(new ChiSquare(3).lowerTail(-1)).isZero();
        assertThat(new ChiSquare(3).upperTail(-1)).isEqualTo(1);
    }
}
