package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;

class GrubbsTestTest {
    /**
     * 1 2 3 6: mean 3, squares 4 + 1 + 0 + 9 = 14, s = sqrt(14/3), G = 3 / s = 1.38873. The others have mean 2 and s
     * 1, so T = 4 sqrt(3/4) = sqrt(12). With 2 degrees of freedom P(t > T) = (1 - T / sqrt(2 + T^2)) / 2 = (1 -
     * sqrt(12/14)) / 2 and the bound is 8 times that.
     */
    @Test
    void agreesWithThePencil() {
        GrubbsTest test = GrubbsTest.of(1, 6, 3, 2).orElseThrow();
        assertThat(test.count()).isEqualTo(4);
        assertThat(test.statistic()).isCloseTo(3 / Math.sqrt(14.0 / 3), offset(1e-14));
        assertThat(test.p()).isCloseTo(4 * (1 - Math.sqrt(12.0 / 14)), offset(1e-13));
        assertThat(test.index()).isEqualTo(1);
        assertThat(test.distance()).isCloseTo(3, offset(1e-14));
        assertThat(test.isOutlier(0.05, 0.1)).isFalse();
    }

    /** G has its critical value exactly where the two-sided bound has the significance. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 8, 10, 30})
    void boundsPAtTheSignificanceOfTheCriticalValue(int n) {
        double g = GrubbsTest.oneSidedCritical(n, 0.05 / 2);
        // Values with that G: one at distance d, the others in two equal heaps either side of their mean.
        double[] values = withStatistic(n, g);
        GrubbsTest test = GrubbsTest.of(values).orElseThrow();
        assertThat(test.statistic()).isCloseTo(g, withPercentage(1e-9));
        assertThat(test.p()).isCloseTo(0.05, withPercentage(1e-6));
        assertThat(GrubbsTest.of(withStatistic(n, g + 0.002)).orElseThrow().isOutlier(0.05, 0.001))
                .isTrue();
        assertThat(GrubbsTest.of(withStatistic(n, g - 0.002)).orElseThrow().isOutlier(0.05, 0.001))
                .isFalse();
    }

    /**
     * The others at +-1 (and one at 0 when their number is odd) about 0 with sum of squares q, the one at x: distance
     * x (n - 1) / n, sum of squares q + x^2 (n - 1) / n, so G^2 = (n - 1) x^2 (n - 1)^2 / n^2 / (q + x^2 (n - 1) /
     * n); solved for x.
     */
    private static double[] withStatistic(int n, double g) {
        double[] values = new double[n];
        int heap = (n - 1) / 2;
        for (int i = 0; i < heap; i++) {
            values[2 * i] = 1;
            values[2 * i + 1] = -1;
        }
        double q = 2 * heap;
        double share = (n - 1.0) / n;
        values[n - 1] = Math.sqrt(g * g * q / (share * ((n - 1) * share - g * g)));
        return values;
    }

    @Test
    void isNotDefinedForFewerThanThreeOrForEqualValues() {
        assertThat(GrubbsTest.of(0.4)).isEmpty();
        assertThat(GrubbsTest.of(0.4, 0.5)).isEmpty();
        assertThat(GrubbsTest.of(0.4, 0.4, 0.4, 0.4, 0.4)).isEmpty();
    }

    /**
     * All others equal: G is (n - 1) / sqrt(n) = 4 / sqrt(5) = 1.78885 however small the step, past the critical
     * 1.715.
     */
    @Test
    void doesNotTakeOneStepOfTheScaleForAnOutlier() {
        GrubbsTest test = GrubbsTest.of(0.4, 0.4, 0.5, 0.4, 0.4).orElseThrow();
        assertThat(test.statistic()).isCloseTo(4 / Math.sqrt(5), offset(1e-12));
        assertThat(test.statistic()).isGreaterThan(GrubbsTest.oneSidedCritical(5, 0.025));
        assertThat(test.p()).isZero();
        assertThat(test.index()).isEqualTo(2);
        assertThat(test.isOutlier(0.05, 0.1)).isFalse();
        assertThat(test.isOutlier(0.05, 0)).isTrue();
        assertThat(GrubbsTest.of(0.4, 0.4, 0.6, 0.4, 0.4).orElseThrow().isOutlier(0.05, 0.1))
                .isTrue();
    }

    /**
     * Two equal readings and any third reach 2 / sqrt(3) = 1.1547, past the critical 1.1543: three values are not
     * judged.
     */
    @Test
    void doesNotJudgeThreeValues() {
        GrubbsTest test = GrubbsTest.of(0.3, 0.3, 0.9).orElseThrow();
        assertThat(test.statistic()).isCloseTo(2 / Math.sqrt(3), offset(1e-12));
        assertThat(test.statistic()).isGreaterThan(GrubbsTest.oneSidedCritical(3, 0.025));
        assertThat(test.p()).isZero();
        assertThat(test.isOutlier(0.05, 0.1)).isFalse();
    }

    @Test
    void saysWhyItJudgesNothing() {
        assertThat(GrubbsTest.judge(0.1, 0.4, 0.4, 0.4, 0.4)).isEqualTo(Judged.withheld(Judged.Reason.NO_SPREAD));
        assertThat(GrubbsTest.judge(0.1, 0.4)).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW));
        assertThat(GrubbsTest.judge(0.1, 0.3, 0.3, 0.9).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(GrubbsTest.judge(0.1, 0.4, 0.4, 0.5, 0.4, 0.4).whyWithheld())
                .contains(Judged.Reason.WITHIN_ONE_DIVISION);
        assertThat(GrubbsTest.judge(0.1, 0.4, 0.4, 0.6, 0.4, 0.4).meaningful()).isPresent();
        assertThat(GrubbsTest.judge(0, 0.4, 0.4, 0.5, 0.4, 0.4).meaningful()).isPresent();
        assertThatIllegalArgumentException().isThrownBy(() -> GrubbsTest.judge(-1, 1, 2, 3, 4));
    }

    @Test
    void namesTheFirstOfValuesAsFarOut() {
        assertThat(GrubbsTest.of(0.4, 0.3, 0.5, 0.4).orElseThrow().index()).isEqualTo(1);
        assertThat(GrubbsTest.of(0.4, 0.5, 0.3, 0.4).orElseThrow().index()).isEqualTo(1);
    }

    /** Two heaps at equal distance: G = sqrt(3) / 2 for n = 4, the least there is; 8 P(t > T) exceeds 1. */
    @Test
    void neverReportsAProbabilityAboveOne() {
        assertThat(GrubbsTest.of(1, 1, 2, 2).orElseThrow().statistic()).isCloseTo(Math.sqrt(3) / 2, offset(1e-14));
        assertThat(GrubbsTest.of(1, 1, 2, 2).orElseThrow().p()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void followsTranslationScaleAndOrder(long seed) {
        Random random = new Random(seed);
        int count = 4 + random.nextInt(20);
        double[] values = random.doubles(count, 0, 1).toArray();
        double[] changed = new double[count];
        for (int i = 0; i < count; i++) {
            changed[count - 1 - i] = 64 - 8 * values[i];
        }
        GrubbsTest test = GrubbsTest.of(values).orElseThrow();
        GrubbsTest other = GrubbsTest.of(changed).orElseThrow();
        assertThat(other.statistic()).isCloseTo(test.statistic(), offset(1e-11));
        assertThat(other.p()).isCloseTo(test.p(), offset(1e-10));
        assertThat(other.distance()).isCloseTo(8 * test.distance(), offset(1e-11));
        assertThat(other.index()).isEqualTo(count - 1 - test.index());
        assertThat(test.statistic()).isLessThanOrEqualTo((count - 1) / Math.sqrt(count));
    }

    @Test
    void refusesWhatCannotBeTested() {
        assertThatIllegalArgumentException().isThrownBy(() -> GrubbsTest.of());
        assertThatIllegalArgumentException().isThrownBy(() -> GrubbsTest.of(1, 2, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GrubbsTest.oneSidedCritical(2, 0.05))
                .withMessage("n must be at least 3, but is 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GrubbsTest.oneSidedCritical(5, 1))
                .withMessageStartingWith("significance must be");
        GrubbsTest test = GrubbsTest.of(1, 2, 3, 6).orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> test.isOutlier(-0.1, 0))
                .withMessageStartingWith("significance must be from 0.0 to 1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> test.isOutlier(0.05, -1))
                .withMessage("division must be at least 0, but is -1.0");
    }
}
