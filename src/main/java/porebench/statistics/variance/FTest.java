package porebench.statistics.variance;

import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.FRatio;

/**
 * Fisher's test of whether one mean square exceeds another by more than chance.
 *
 * @param statistic the one over the other, F, at least 0
 * @param numerator degrees of freedom of the one
 * @param denominator degrees of freedom of the other
 * @param p the probability of so large an F where both estimate the same variance
 */
public record FTest(double statistic, double numerator, double denominator, double p) {
    public FTest {
        Require.atLeastZero("statistic", statistic);
        Require.positive("numerator", numerator);
        Require.positive("denominator", denominator);
        Require.within("p", p, 0, 1);
    }

    /**
     * Tests one mean square against another.
     *
     * @return the test; withheld as too few where a mean square has no degrees of freedom, and as without spread where
     *     the other one is 0, since no ratio to nothing tells anything
     */
    static Judged<FTest> of(MeanSquare one, MeanSquare other) {
        if (one.degreesOfFreedom() < 1 || other.degreesOfFreedom() < 1) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double ratio = one.meanSquare().orElseThrow() / other.meanSquare().orElseThrow();
        if (!Double.isFinite(ratio)) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        FRatio chance = new FRatio(one.degreesOfFreedom(), other.degreesOfFreedom());
        return new Judged.Meaningful<>(
                new FTest(ratio, chance.numerator(), chance.denominator(), chance.upperTail(ratio)));
    }
}
