package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.distribution.StudentT;

class CriticalRangeTest {
    /** The difference of two standard normals is normal with standard deviation sqrt(2). */
    @Test
    void agreesWithTheNormalPointForAPair() {
        double normal = new StudentT(Double.POSITIVE_INFINITY).coverageFactor(0.95);
        assertThat(CriticalRange.factor(2)).isCloseTo(Math.sqrt(2) * normal, withPercentage(1e-11));
    }

    @Test
    void growsWithTheNumberOfResultsButSlowly() {
        double before = 0;
        for (int n : new int[] {2, 3, 4, 5, 10, 30, 100, 1000, 1_000_000}) {
            double factor = CriticalRange.factor(n);
            assertThat(factor).isGreaterThan(before).isLessThan(12);
            before = factor;
        }
        assertThat(CriticalRange.factor(10)).isEqualTo(CriticalRange.factor(10));
    }

    /** 5.4 - 5.3 is 0.10000000000000053 in binary and 0.5 - 0.4 is 0.09999999999999998; on paper both are 0.1. */
    @Test
    void passesARangeOnTheLimitWhateverTheBinaryDigits() {
        // Printed multiplier for a pair 2.8: 2.8 x 0.0357142857142857 = 0.1.
        double repeatability = 0.1 / 2.8;
        assertThat(CriticalRange.check(0.1, 2, repeatability).passes()).isTrue();
        assertThat(CriticalRange.check(5.4 - 5.3, 2, repeatability).passes()).isTrue();
        assertThat(CriticalRange.check(0.5 - 0.4, 2, repeatability).passes()).isTrue();
        assertThat(CriticalRange.check(0.1000001, 2, repeatability).passes()).isFalse();
        assertThat(CriticalRange.check(0, 2, repeatability).passes()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.25, 1, 1024})
    void doesNotDependOnTheUnit(double unit) {
        assertThat(CriticalRange.check(0.2 * unit, 5, 0.06 * unit).passes()).isTrue();
        assertThat(CriticalRange.check(0.24 * unit, 5, 0.06 * unit).passes()).isFalse();
        assertThat(CriticalRange.check(0.2 * unit, 5, 0.06 * unit).limit())
                .isCloseTo(3.9 * 0.06 * unit, withPercentage(1e-10));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 1})
    void refusesFewerThanTwoResults(int n) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.factor(n))
                .withMessage("n must be at least 2, but is " + n);
        assertThatIllegalArgumentException().isThrownBy(() -> CriticalRange.check(0.1, n, 0.05));
    }

    @Test
    void refusesARangeOrARepeatabilityThatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.check(-0.1, 2, 0.05))
                .withMessage("range must be at least 0, but is -0.1");
        assertThatIllegalArgumentException().isThrownBy(() -> CriticalRange.check(Double.NaN, 2, 0.05));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CriticalRange.check(0.1, 2, 0))
                .withMessage("repeatabilityStandardDeviation must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> CriticalRange.check(0.1, 2, Double.POSITIVE_INFINITY));
    }
}
