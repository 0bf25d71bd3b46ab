package porebench.statistics;

import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.special.Beta;
import porebench.quantity.Require;

/**
 * The distribution of the ratio of two independent mean squares, Fisher's F.
 *
 * <p>Each tail comes from its own side, so that a small one keeps its digits.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.6.2 (the tail as an incomplete beta
 * function); recalled. Differences from the source: none.
 *
 * @param numerator degrees of freedom of the numerator, greater than 0
 * @param denominator degrees of freedom of the denominator, greater than 0
 */
public record FRatio(double numerator, double denominator) {
    private static final int POLISHING_STEPS = 4;

    public FRatio {
        Require.positive("numerator", numerator);
        Require.positive("denominator", denominator);
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
     * Returns the ratio that is exceeded with a probability, to a relative error of about 1e-11.
     *
     * @param probability of the upper tail, at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double upperPoint(double probability) {
        StudentT.requireProbability("probability", probability);
        FDistribution rough = new FDistribution(null, numerator, denominator);
        double f = rough.inverseCumulativeProbability(1 - probability);
        // Commons Math's own inverse stops at an absolute error of about 1e-9.
        for (int step = 0; step < POLISHING_STEPS; step++) {
            double away = probability > 0.5 ? 1 - probability - lowerTail(f) : upperTail(f) - probability;
            f += away / rough.density(f);
        }
        return f;
    }
}
