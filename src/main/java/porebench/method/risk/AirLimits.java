package porebench.method.risk;

import porebench.quantity.Require;

/**
 * The limits that the air of a load must keep to.
 *
 * @param targetPercent the middle, in % air
 * @param tolerancePercent how far it may lie from there to either side, in % air, greater than 0
 */
public record AirLimits(double targetPercent, double tolerancePercent) {
    public AirLimits {
        Require.finite("targetPercent", targetPercent);
        Require.positive("tolerancePercent", tolerancePercent);
    }

    double lowPercent() {
        return targetPercent - tolerancePercent;
    }

    double highPercent() {
        return targetPercent + tolerancePercent;
    }

    /** Returns whether an air keeps to them; a limit itself does. */
    boolean hold(double airPercent) {
        return airPercent >= lowPercent() && airPercent <= highPercent();
    }
}
