package porebench.statistics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.uncertainty.UncertaintySum.Contribution;

class UncertaintySumTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;

    /**
     * 3 with 4 degrees of freedom and -2 x 2 with infinitely many: combined 5, effective 5^4 / (3^4 / 4) = 2500 / 81.
     */
    @Test
    void agreesWithThePencil() {
        UncertaintySum sum =
                UncertaintySum.of(Contribution.of("scatter", 3, 4), new Contribution("scale", 2, -2, KNOWN));
        assertThat(sum.contributions()).extracting(Contribution::name).containsExactly("scatter", "scale");
        assertThat(sum.contributions()).extracting(Contribution::size).containsExactly(3.0, 4.0);
        assertThat(sum.combined()).isCloseTo(5, offset(1e-14));
        assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(2500.0 / 81, offset(1e-12));
        assertThat(sum.expanded(0.95))
                .isCloseTo(5 * new StudentT(2500.0 / 81).coverageFactor(0.95), withPercentage(1e-10));
    }

    @Test
    void leavesASinglePartAsItIs() {
        UncertaintySum sum = UncertaintySum.of(Contribution.of("scatter", 0.03, 5));
        assertThat(sum.combined()).isEqualTo(0.03);
        assertThat(sum.effectiveDegreesOfFreedom()).isEqualTo(5);
    }

    @Test
    void hasInfiniteDegreesOfFreedomWhenAllPartsAreKnown() {
        UncertaintySum sum = UncertaintySum.of(Contribution.of("a", 0.3, KNOWN), Contribution.of("b", 0.4, KNOWN));
        assertThat(sum.effectiveDegreesOfFreedom()).isInfinite();
        // 0.5 x 1.959964, the normal point.
        assertThat(sum.expanded(0.95)).isCloseTo(0.979982, offset(1e-6));
    }

    @Test
    void isZeroWhenEveryPartIs() {
        UncertaintySum sum = UncertaintySum.of(Contribution.of("a", 0, 3), new Contribution("b", 1, 0, 3));
        assertThat(sum.combined()).isZero();
        assertThat(sum.effectiveDegreesOfFreedom()).isInfinite();
        assertThat(sum.expanded(0.95)).isZero();
    }

    /** Equal readings have no scatter; the division of the scale still counts: 0.1 / sqrt(12) = 0.0288675. */
    @Test
    void keepsTheResolutionWhenTheScatterIsNone() {
        double resolution = UncertaintySum.resolutionUncertainty(0.1);
        assertThat(resolution).isCloseTo(0.0288675, offset(5e-8));
        UncertaintySum sum =
                UncertaintySum.of(Contribution.of("scatter", 0, 3), Contribution.of("division", resolution, KNOWN));
        assertThat(sum.combined()).isEqualTo(resolution);
        assertThat(sum.effectiveDegreesOfFreedom()).isInfinite();
        assertThat(UncertaintySum.resolutionUncertainty(0)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-300, 1e-100, 1, 1e100, 1e300})
    void doesNotDependOnTheUnitOrTheOrder(double unit) {
        UncertaintySum sum = UncertaintySum.of(
                Contribution.of("b", 4 * unit, 7), Contribution.of("a", 3 * unit, 4), Contribution.of("c", 0, 1));
        assertThat(sum.combined()).isCloseTo(5 * unit, withPercentage(1e-10));
        // 5^4 / (3^4 / 4 + 4^4 / 7) = 625 / (20.25 + 36.571...) by hand.
        assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(625 / (81.0 / 4 + 256.0 / 7), withPercentage(1e-10));
    }

    /** The effective number lies between the smallest single one and the sum of all. */
    @Test
    void keepsTheEffectiveDegreesOfFreedomInBounds() {
        for (double size : new double[] {0.01, 0.5, 1, 2, 100}) {
            double effective = UncertaintySum.of(Contribution.of("a", 1, 3), Contribution.of("b", size, 9))
                    .effectiveDegreesOfFreedom();
            assertThat(effective).isBetween(3 - 1e-9, 12 + 1e-9);
        }
    }

    @Test
    void refusesWhatCannotBeCombined() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UncertaintySum.of(List.of()))
                .withMessage("count of contributions must be at least 1, but is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Contribution.of("a", -1, 3))
                .withMessage("standardUncertainty must be at least 0, but is -1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Contribution.of("a", 1, 0))
                .withMessage("degreesOfFreedom must be at least 0.5, but is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Contribution("a", 1, Double.NaN, 3))
                .withMessage("sensitivity must be a finite number, but is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Contribution.of(" ", 1, 3))
                .withMessageStartingWith("name must not be blank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UncertaintySum.of(new Contribution("a", 1e300, 1e300, 3)))
                .withMessageStartingWith("combined must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UncertaintySum.resolutionUncertainty(-0.1))
                .withMessage("step must be at least 0, but is -0.1");
        UncertaintySum sum = UncertaintySum.of(Contribution.of("a", 1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> sum.expanded(1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new UncertaintySum(sum.contributions(), 1, Double.NaN))
                .withMessageStartingWith("effectiveDegreesOfFreedom must be");
    }
}
