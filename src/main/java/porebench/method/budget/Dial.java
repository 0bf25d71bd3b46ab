package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The correction of a Type B dial at the readings in question, as its calibration found it.
 *
 * @param correctionPercent true air less reading, in % air
 * @param standardUncertaintyPercent of the correction, in % air, at least 0
 * @param degreesOfFreedom at least 0.5; infinite when it rests on steps of scales alone
 * @param restsOnBowl whether the true air of the calibration was worked out with the same volume of the bowl: an error of
 *     that volume then changes reading and water withdrawn alike and hardly touches their difference
 */
public record Dial(
        double correctionPercent, double standardUncertaintyPercent, double degreesOfFreedom, boolean restsOnBowl) {
    public Dial {
        Require.finite("correctionPercent", correctionPercent);
        Require.atLeastZero("standardUncertaintyPercent", standardUncertaintyPercent);
    }

    BudgetLine line() {
        return BudgetLine.known(
                Part.DIAL, correctionPercent, standardUncertaintyPercent, 1, degreesOfFreedom, Origin.CALIBRATION);
    }
}
