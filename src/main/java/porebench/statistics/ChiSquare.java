package porebench.statistics;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;

/**
 * The chi-square distribution, each tail from its own side so that a small one keeps its digits.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.4.19 (the tail as an incomplete gamma
 * function); recalled. Differences from the source: none.
 *
 * @param degreesOfFreedom greater than 0
 */
record ChiSquare(double degreesOfFreedom) {
    private static final int POLISHING_STEPS = 4;

    ChiSquare {
        Require.positive("degreesOfFreedom", degreesOfFreedom);
    }

    /** Returns the probability of a value above x, which is at least 0. */
    double upperTail(double x) {
        return Gamma.regularizedGammaQ(degreesOfFreedom / 2, x / 2);
    }

    /** Returns the value that is exceeded with a probability, to a relative error of about 1e-12. */
    double upperPoint(double probability) {
        StudentT.requireProbability("probability", probability);
        ChiSquaredDistribution rough = new ChiSquaredDistribution(null, degreesOfFreedom);
        double x = rough.inverseCumulativeProbability(1 - probability);
        // Commons Math's own inverse stops at an absolute error of about 1e-9.
        for (int step = 0; step < POLISHING_STEPS; step++) {
            double away = probability > 0.5
                    ? 1 - probability - Gamma.regularizedGammaP(degreesOfFreedom / 2, x / 2)
                    : upperTail(x) - probability;
            x += away / rough.density(x);
        }
        return x;
    }
}
