package porebench.statistics.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTTest {
    private static final double[] TAILS = {0.4999, 0.3, 0.1, 0.025, 0.005, 1e-6, 1e-12, 1e-30};

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.3, 2, 3, 4.68263, 9, 16.74, 64, 65, 200, 9999, 99_999.5, 1e5, 1e7, 1e15, 1.0 / 0})
    void givesBackTheTailOfItsOwnPointAndIsSymmetric(double degreesOfFreedom) {
        StudentT t = new StudentT(degreesOfFreedom);
        double inner = 0;
        for (double tail : TAILS) {
            double point = t.upperPoint(tail);
            assertThat(t.upperTail(point)).isCloseTo(tail, withPercentage(1e-8));
            assertThat(t.quantile(tail)).isEqualTo(-point);
            assertThat(t.upperTail(-point)).isEqualTo(1 - t.upperTail(point));
            assertThat(point).isGreaterThan(inner);
            inner = point;
        }
        assertThat(t.quantile(0.975)).isCloseTo(t.coverageFactor(0.95), withPercentage(1e-10));
        assertThat(t.upperPoint(0.975)).isCloseTo(-t.coverageFactor(0.95), withPercentage(1e-10));
        assertThat(t.quantile(0.5)).isZero();
        assertThat(t.upperTail(0)).isEqualTo(0.5);
        assertThat(t.upperTail(Double.POSITIVE_INFINITY)).isZero();
        assertThat(t.upperTail(Double.NEGATIVE_INFINITY)).isEqualTo(1);
    }

    @Test
    void fallsTowardsTheNormalPointAsDegreesOfFreedomGrow() {
        double before = Double.POSITIVE_INFINITY;
        for (double degrees :
                new double[] {0.5, 1, 1.5, 2, 5, 30, 63.9, 64, 64.1, 500, 99_999, 100_000, 1e6, 1.0 / 0}) {
            double factor = new StudentT(degrees).coverageFactor(0.95);
            assertThat(factor).isLessThan(before);
            before = factor;
        }
        // Normal point for 95 %, two-sided: 1.959963984540054 (recalled; every table prints 1.960).
        assertThat(before).isCloseTo(1.959963984540054, offset(1e-14));
    }

    /** The series takes over at 100 000 degrees of freedom; 99 999.999 are computed the other way. */
    @Test
    void meetsTheSeriesWithoutAStep() {
        for (double tail : new double[] {0.3, 0.025, 1e-6, 1e-12}) {
            double below = new StudentT(99_999.999).upperPoint(tail);
            double above = new StudentT(100_000).upperPoint(tail);
            assertThat(above).isCloseTo(below, withPercentage(1e-8));
        }
        assertThat(new StudentT(1e6).upperTail(41)).isZero();
        assertThat(new StudentT(1e6).upperTail(37)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, -1, 0, 0.49})
    void refusesTooFewDegreesOfFreedom(double degreesOfFreedom) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StudentT(degreesOfFreedom))
                .withMessage("degreesOfFreedom must be at least 0.5, but is " + degreesOfFreedom);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, 0, 1, 1.5, 9e-31, Double.POSITIVE_INFINITY})
    void refusesAProbabilityOutsideZeroToOne(double probability) {
        StudentT t = new StudentT(4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> t.quantile(probability))
                .withMessage("probability must be at least 1e-30 and less than 1, but is " + probability);
        assertThatIllegalArgumentException().isThrownBy(() -> t.upperPoint(probability));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> t.coverageFactor(probability))
                .withMessageStartingWith("confidence must be");
    }

    @Test
    void refusesNoNumberForT() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StudentT(4).upperTail(Double.NaN))
                .withMessage("t must be a number, but is NaN");
    }
}
