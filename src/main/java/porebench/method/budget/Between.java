package porebench.method.budget;

import porebench.quantity.Require;

/**
 * How the mean of a determination would differ on other days, by other operators or on other meters, beyond the scatter of its
 * trials.
 *
 * @param standardUncertaintyPercent in % air, at least 0; 0 when the lab book shows nothing of it
 * @param degreesOfFreedom at least 0.5
 */
public record Between(double standardUncertaintyPercent, double degreesOfFreedom) {
    public Between {
        Require.atLeastZero("standardUncertaintyPercent", standardUncertaintyPercent);
    }

    BudgetLine line() {
        return BudgetLine.known(
                BudgetPart.OCCASIONS, 0, standardUncertaintyPercent, 1, degreesOfFreedom, Origin.OTHER_TRIALS);
    }
}
