package porebench.statistics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.uncertainty.UncertaintySum.Contribution;

class CorrelationTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;
    private static final long SEED = 20_261_127;

    /** 3 and 4: with 1 they add up to 7, with -1 one is left, with 0.5 9 + 16 + 12 = 37; the third, 12, is apart. */
    @Test
    void addsCovariances() {
        List<Contribution> parts = List.of(
                new Contribution("a", 3, 1, 5), new Contribution("b", 2, -2, 9), new Contribution("c", 12, 1, KNOWN));
        assertThat(of(parts, -1)).isCloseTo(Math.sqrt(49 + 144), offset(1e-9));
        assertThat(of(parts, 1)).isCloseTo(Math.sqrt(1 + 144), offset(1e-9));
        assertThat(of(parts, -0.5)).isCloseTo(Math.sqrt(37 + 144), offset(1e-9));
        assertThat(of(parts, 0)).isCloseTo(13, offset(1e-9));
        UncertaintySum sum = UncertaintySum.of(parts, List.of(new Correlation(0, 1, -0.5)));
        // Both count as one of 37 with five degrees of freedom: 181^2 / (37^2 / 5).
        assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(181.0 * 181 * 5 / (37 * 37), offset(1e-6));
        assertThat(sum.apart()).isCloseTo(13, offset(1e-9));
        assertThat(sum.shareOf(parts.get(1))).isCloseTo(16 / 169.0, offset(1e-12));
    }

    private static double of(List<Contribution> parts, double coefficient) {
        return UncertaintySum.of(parts, List.of(new Correlation(0, 1, coefficient)))
                .combined();
    }

    @Test
    void leavesNothingWhereEqualsCancel() {
        UncertaintySum sum = UncertaintySum.of(
                List.of(new Contribution("a", 0.1, 1, 5), new Contribution("b", 0.1, -1, 5)),
                List.of(new Correlation(0, 1, 1)));
        assertThat(sum.combined()).isZero();
        assertThat(sum.effectiveDegreesOfFreedom()).isInfinite();
    }

    /** One cylinder: the same error twice cancels in a difference and doubles in a sum. */
    @Test
    void drawsOneErrorForBothWhereItIsShared() {
        List<Uncertain> both = List.of(Uncertain.rectangular(1, 2), Uncertain.rectangular(5, 2));
        List<Correlation> shared = List.of(new Correlation(0, 1, 1));
        MonteCarlo difference = MonteCarlo.of(both, shared, in -> in[1] - in[0], 1000, SEED, 0.95);
        assertThat(difference.symmetric().half()).isCloseTo(0, offset(1e-9));
        assertThat(difference.median()).isCloseTo(4, offset(1e-9));
        MonteCarlo opposite =
                MonteCarlo.of(both, List.of(new Correlation(1, 0, -1)), in -> in[1] + in[0], 1000, SEED, 0.95);
        assertThat(opposite.symmetric().half()).isCloseTo(0, offset(1e-9));
        MonteCarlo sum = MonteCarlo.of(both, shared, in -> in[1] + in[0], 100_000, SEED, 0.95);
        // Rectangular from 2 to 10: 95 % of it are 3.8 to either side.
        assertThat(sum.symmetric().half()).isCloseTo(3.8, offset(0.02));
    }

    /** What is not correlated is drawn as if there were no correlations at all. */
    @Test
    void leavesTheOthersAsTheyAre() {
        List<Uncertain> inputs = List.of(Uncertain.normal(0, 1), Uncertain.student(0, 1, 3));
        assertThat(MonteCarlo.of(inputs, List.of(), in -> in[0] + in[1], 5000, SEED, 0.95))
                .isEqualTo(MonteCarlo.of(inputs, in -> in[0] + in[1], 5000, SEED, 0.95));
    }

    /** t of half a degree of freedom up: points of the joint draw are those of t. */
    @Test
    void drawsTOfAnyDegrees() {
        for (double degrees : new double[] {1.5, 4, 30}) {
            List<Uncertain> inputs = List.of(Uncertain.student(0, 1, degrees), Uncertain.student(0, 1, degrees));
            MonteCarlo drawn =
                    MonteCarlo.of(inputs, List.of(new Correlation(0, 1, 0.3)), in -> in[1], 400_000, SEED, 0.95);
            double t = new StudentT(degrees).coverageFactor(0.95);
            assertThat(drawn.symmetric().half()).isCloseTo(t, offset(0.03 * t));
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Correlation(1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Correlation(0, 1, 1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> new Correlation(-1, 1, 0));
        List<Correlation> all = List.of(new Correlation(0, 1, 1), new Correlation(1, 2, 1), new Correlation(0, 2, -1));
        Uncertain normal = Uncertain.normal(0, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(List.of(normal, normal, normal), all, in -> in[0], 1000, SEED, 0.95))
                .withMessageStartingWith("correlations must not contradict one another");
        Contribution one = Contribution.of("a", 1, 3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UncertaintySum.of(
                        List.of(one, new Contribution("b", 1, -1, 3), one),
                        List.of(new Correlation(0, 1, 1), new Correlation(1, 2, 1), new Correlation(0, 2, -1))))
                .withMessageStartingWith("correlations must not contradict one another");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UncertaintySum.of(List.of(one, one), List.of(new Correlation(0, 2, 1))));
        List<Correlation> half = List.of(new Correlation(0, 1, 0.5));
        Uncertain limited = Uncertain.rectangular(0, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(List.of(limited, limited), half, in -> in[0], 1000, SEED, 0.95))
                .withMessage("coefficient of quantities known by limits must be 1 or -1, but is 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(List.of(limited, normal), half, in -> in[0], 1000, SEED, 0.95))
                .withMessageStartingWith("correlated quantities must be of one shape");
    }

    /** Tolerances a tenth as wide take about a hundred times the draws; the same seed draws the same. */
    @Test
    void drawsUntilTheEndsHaveSettled() {
        List<Uncertain> inputs = List.of(Uncertain.normal(0, 1), Uncertain.rectangular(0, 1));
        MonteCarlo rough = settled(inputs, 0.05, 1_000_000);
        MonteCarlo fine = settled(inputs, 0.01, 1_000_000);
        assertThat(rough.settling().orElseThrow().isSettled()).isTrue();
        assertThat(fine.settling().orElseThrow().isSettled()).isTrue();
        assertThat(fine.settling().orElseThrow().reached()).isLessThanOrEqualTo(0.01);
        assertThat(fine.draws()).isGreaterThan(rough.draws());
        assertThat(fine.draws() % MonteCarlo.BLOCK).isZero();
        assertThat(fine).isEqualTo(settled(inputs, 0.01, 2_000_000));
        MonteCarlo stopped = settled(inputs, 1e-6, 25_000);
        assertThat(stopped.draws()).isEqualTo(20_000);
        assertThat(stopped.settling().orElseThrow().isSettled()).isFalse();
        assertThat(MonteCarlo.of(inputs, in -> in[0], 1000, SEED, 0.95).settling())
                .isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> settled(inputs, 0, 100_000));
        assertThatIllegalArgumentException().isThrownBy(() -> settled(inputs, 0.1, 19_999));
    }

    private static MonteCarlo settled(List<Uncertain> inputs, double tolerance, int most) {
        return MonteCarlo.settled(inputs, List.of(), in -> in[0] + in[1], tolerance, most, SEED, 0.95);
    }
}
