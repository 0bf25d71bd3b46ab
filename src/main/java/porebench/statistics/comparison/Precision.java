package porebench.statistics.comparison;

import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * How well a difference is known.
 *
 * @param standardError in the unit of the difference, greater than 0
 * @param degreesOfFreedom of the standard error, at least 0.5; infinite when it is known exactly
 */
record Precision(double standardError, double degreesOfFreedom) {
    Precision {
        Require.positive("standardError", standardError);
        StudentT.requireDegreesOfFreedom("degreesOfFreedom", degreesOfFreedom);
    }

    /** Returns the value that t exceeds with a probability. */
    double factor(double tail) {
        return new StudentT(degreesOfFreedom).upperPoint(tail);
    }
}
