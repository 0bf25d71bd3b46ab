package porebench.statistics.variance;

import java.util.OptionalDouble;
import porebench.quantity.Require;

/**
 * One line of an analysis of variance: a sum of squares and how many independent deviations make it up.
 *
 * @param degreesOfFreedom how many, at least 0
 * @param sumOfSquares in the square of the unit of the values, at least 0
 */
public record MeanSquare(int degreesOfFreedom, double sumOfSquares) {
    public MeanSquare {
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 0);
        Require.atLeastZero("sumOfSquares", sumOfSquares);
    }

    /** Returns the sum of squares over the degrees of freedom; empty where there are none. */
    public OptionalDouble meanSquare() {
        return degreesOfFreedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(sumOfSquares / degreesOfFreedom);
    }

    /** Returns this one and another as one. */
    MeanSquare with(MeanSquare other) {
        return new MeanSquare(degreesOfFreedom + other.degreesOfFreedom, sumOfSquares + other.sumOfSquares);
    }
}
