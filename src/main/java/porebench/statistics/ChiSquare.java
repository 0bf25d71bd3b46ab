package porebench.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;

/**
 * The chi-square distribution: how the squared scatter of normal values varies from sample to sample.
 *
 * <p>With a standard deviation s of some degrees of freedom, df s^2 / sigma^2 has this distribution. Each tail is computed
 * from its own side, so that a small one keeps its digits; points are found to a relative error below 1e-10.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.4.19 with 6.5 (the incomplete gamma
 * function); recalled. Differences from the source: none.
 *
 * @param degreesOfFreedom greater than 0, whole or not
 */
public record ChiSquare(double degreesOfFreedom) {
    private static final double NEARLY_NOTHING = 1e-15;

    public ChiSquare {
        Require.positive("degreesOfFreedom", degreesOfFreedom);
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
     * @param probability greater than 0 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double quantile(double probability) {
        Require.within("probability", probability, NEARLY_NOTHING, 1 - NEARLY_NOTHING);
        return whereZero(x -> lowerTail(x) - probability);
    }

    /**
     * Returns the value that is exceeded with a probability, however small.
     *
     * @param probability at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double upperPoint(double probability) {
        StudentT.requireProbability("probability", probability);
        return whereZero(x -> probability - upperTail(x));
    }

    /** Solves for the logarithm, which keeps the relative error of points near 0; few degrees of freedom have many. */
    private double whereZero(DoubleUnaryOperator rising) {
        double high = degreesOfFreedom;
        while (rising.applyAsDouble(high) < 0) {
            high *= 2;
        }
        double low = Math.log(high);
        while (rising.applyAsDouble(Math.exp(low)) > 0) {
            low -= 10;
        }
        return Math.exp(new BrentSolver(1e-13, 1e-13)
                .solve(400, logarithm -> rising.applyAsDouble(Math.exp(logarithm)), low, Math.log(high)));
    }
}
