package porebench.statistics.distribution;

import org.apache.commons.math3.special.Beta;
import porebench.quantity.Require;

/**
 * The distribution of the ratio of two independent mean squares, Fisher's F.
 *
 * <p>Each tail comes from its own side, so that a small one keeps its digits; points are found to a relative error below
 * 1e-9, for tails from 1e-30 to 1 less 1e-15.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.6.2 (the tail as an incomplete beta
 * function); recalled. Differences from the source: none.
 *
 * @param numerator degrees of freedom of the numerator, from 0.5 to a million
 * @param denominator degrees of freedom of the denominator, from 0.5 to a million
 */
public record FRatio(double numerator, double denominator) {

    public FRatio {
        Require.within("numerator", numerator, ChiSquare.LEAST_DEGREES, ChiSquare.MOST_DEGREES);
        Require.within("denominator", denominator, ChiSquare.LEAST_DEGREES, ChiSquare.MOST_DEGREES);
    }

    /**
     * Returns the probability of a ratio above f.
     *
     * @param f at least 0
     * @throws IllegalArgumentException if f is negative or not finite
     */
    public double upperTail(double f) {
        Require.atLeastZero("f", f);
        double scaled = numerator * f;
        double tail = Beta.regularizedBeta(denominator / (denominator + scaled), denominator / 2, numerator / 2);
        // A continued fraction may end one last digit outside.
        return Math.min(1, Math.max(0, tail));
    }

    /** Returns the probability of a ratio below f. */
    private double lowerTail(double f) {
        double scaled = numerator * f;
        return Beta.regularizedBeta(scaled / (denominator + scaled), numerator / 2, denominator / 2);
    }

    /**
     * Returns the ratio that is exceeded with a probability.
     *
     * @param probability of the upper tail, at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double upperPoint(double probability) {
        StudentT.requireProbability("probability", probability);
        return probability > 0.5
                ? TailPoint.of(this::lowerTail, 1 - probability, 1)
                : TailPoint.of(this::upperTail, probability, 1);
    }
}
