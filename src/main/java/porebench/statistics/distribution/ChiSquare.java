package porebench.statistics.distribution;

import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;

/**
 * The chi-square distribution: how the squared scatter of normal values varies from sample to sample.
 *
 * <p>With a standard deviation s of some degrees of freedom, df s^2 / sigma^2 has this distribution. Each tail is computed
 * from its own side, so that a small one keeps its digits; points are found to a relative error below 1e-9, for tails from
 * 1e-30 to 1 less 1e-15.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.4.19 with 6.5 (the incomplete gamma
 * function); recalled. Differences from the source: none.
 *
 * @param degreesOfFreedom from 0.5 to a million, whole or not
 */
public record ChiSquare(double degreesOfFreedom) {
    static final double LEAST_DEGREES = 0.5;
    public static final double MOST_DEGREES = 1e6;

    public ChiSquare {
        Require.within("degreesOfFreedom", degreesOfFreedom, LEAST_DEGREES, MOST_DEGREES);
    }

    /** Returns the probability of a value below x; 0 for an x below 0. */
    public double lowerTail(double x) {
        return x <= 0 ? 0 : Math.min(1, Gamma.regularizedGammaP(degreesOfFreedom / 2, x / 2));
    }

    /** Returns the probability of a value above x; 1 for an x below 0. */
    public double upperTail(double x) {
        return x <= 0 ? 1 : Math.min(1, Gamma.regularizedGammaQ(degreesOfFreedom / 2, x / 2));
    }

    /**
     * Returns the value that lies above the given share of all.
     *
     * @param probability at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double quantile(double probability) {
        StudentT.requireProbability("probability", probability);
        return probability > 0.5 ? withUpperTail(1 - probability) : withLowerTail(probability);
    }

    /**
     * Returns the value that is exceeded with a probability.
     *
     * @param probability at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double upperPoint(double probability) {
        StudentT.requireProbability("probability", probability);
        return probability > 0.5 ? withLowerTail(1 - probability) : withUpperTail(probability);
    }

    private double withLowerTail(double tail) {
        return TailPoint.of(this::lowerTail, tail, degreesOfFreedom);
    }

    private double withUpperTail(double tail) {
        return TailPoint.of(this::upperTail, tail, degreesOfFreedom);
    }
}
