package porebench.statistics.comparison;

import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * What determinations of the same thing differ by, beyond the scatter of their readings.
 *
 * @param standardDeviation in the unit of the readings, at least 0
 * @param degreesOfFreedom of that standard deviation, at least 0.5
 */
public record BetweenSets(double standardDeviation, double degreesOfFreedom) {
    public BetweenSets {
        Require.atLeastZero("standardDeviation", standardDeviation);
        StudentT.requireDegreesOfFreedom("degreesOfFreedom", degreesOfFreedom);
    }
}
