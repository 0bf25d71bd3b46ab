package porebench.method.budget;

import porebench.quantity.Require;
import porebench.statistics.uncertainty.Uncertain;
import porebench.statistics.uncertainty.UncertaintySum;

/**
 * One line of an uncertainty budget.
 *
 * @param part what the uncertainty comes from
 * @param value what the quantity was taken to be, in the unit of the part
 * @param standardUncertainty of the value, in the unit of the part, at least 0
 * @param sensitivity by how much the result moves for one unit of the part, in % air
 * @param degreesOfFreedom at least 0.5; infinite when the uncertainty is taken as known
 * @param origin where the figure was taken from
 * @param distribution the values the quantity may have, for drawing
 */
public record BudgetLine(
        BudgetPart part,
        double value,
        double standardUncertainty,
        double sensitivity,
        double degreesOfFreedom,
        Origin origin,
        Uncertain distribution) {
    public BudgetLine {
        Require.finite("value", value);
        Require.atLeastZero("standardUncertainty", standardUncertainty);
        Require.finite("sensitivity", sensitivity);
    }

    /** Returns a line known by a standard uncertainty and its degrees of freedom. */
    static BudgetLine known(
            BudgetPart part, double value, double u, double sensitivity, double degrees, Origin origin) {
        return new BudgetLine(part, value, u, sensitivity, degrees, origin, Uncertain.student(value, u, degrees));
    }

    /** Returns a line known by how far the value may lie from what it was taken to be: half width / sqrt(3). */
    static BudgetLine limited(BudgetPart part, double value, double halfWidth, double sensitivity, Origin origin) {
        return new BudgetLine(
                part,
                value,
                halfWidth / Math.sqrt(3),
                sensitivity,
                Double.POSITIVE_INFINITY,
                origin,
                Uncertain.rectangular(value, halfWidth));
    }

    /** Returns a line known by the step of a scale or of the last digit: step / sqrt(12). */
    static BudgetLine stepped(BudgetPart part, double value, double step, double sensitivity, Origin origin) {
        return limited(part, value, step / 2, sensitivity, origin);
    }

    /** Returns the contribution to the result's uncertainty, in % air, at least 0. */
    public double sizePercent() {
        return contribution().size();
    }

    UncertaintySum.Contribution contribution() {
        return new UncertaintySum.Contribution(part.symbol(), standardUncertainty, sensitivity, degreesOfFreedom);
    }
}
