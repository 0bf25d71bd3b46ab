package porebench.statistics.uncertainty;

import porebench.quantity.Require;

/**
 * How well the ends of a drawn interval have settled.
 *
 * @param tolerance what was asked for, in the unit of the result, at least 0
 * @param reached twice the standard deviation of the less settled end, in the unit of the result, at least 0
 * @param isSettled whether the drawing ended because that was small enough, and not because it was long enough
 */
public record Settling(double tolerance, double reached, boolean isSettled) {
    public Settling {
        Require.atLeastZero("tolerance", tolerance);
        Require.atLeastZero("reached", reached);
    }
}
