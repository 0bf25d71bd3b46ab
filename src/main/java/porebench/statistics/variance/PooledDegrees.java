package porebench.statistics.variance;

import java.util.stream.IntStream;
import porebench.statistics.regression.PositiveMatrix;

/**
 * How well the variance of a prediction is known, in degrees of freedom: 2 v^2 over the variance of v, which follows from the curve
 * of the likelihood at its top. Variances at their bound 0 are taken as known.
 *
 * <p>Source: F. E. Satterthwaite, Biometrics Bulletin 2 (1946), in the form of R's lmerTest; recalled.
 */
final class PooledDegrees {
    private final PooledLayers layers;
    private final double[][] wide;
    private final double[][][] slopes;
    private final int[] free;
    private final double[][] covariance;

    PooledDegrees(
            Jet minusTwiceLog,
            PooledProducts products,
            PooledLayers layers,
            double[] variances,
            PooledSolution solution) {
        this.layers = layers;
        wide = solution.wide();
        slopes = IntStream.range(0, variances.length)
                .mapToObj(k -> products.products(1 + k))
                .toArray(double[][][]::new);
        free = IntStream.range(0, variances.length)
                .filter(k -> variances[k] > 0)
                .toArray();
        covariance = covariance(minusTwiceLog);
    }

    /** Returns the covariance of the free variances; empty where the likelihood is not curved enough to tell it. */
    private double[][] covariance(Jet minusTwiceLog) {
        double[][] half = new double[free.length][free.length];
        for (int i = 0; i < free.length; i++) {
            for (int j = 0; j < free.length; j++) {
                half[i][j] = minusTwiceLog.curve(free[i], free[j]) / 2;
            }
        }
        try {
            return PositiveMatrix.of(half).inverse();
        } catch (ArithmeticException notCurved) {
            return new double[0][];
        }
    }

    /**
     * Returns the degrees of freedom of a prediction's variance.
     *
     * @param amounts of the regressors taken in
     * @param values of how many values a mean is foretold
     * @param variance of the prediction
     * @return infinite where nothing of the variance is uncertain
     */
    double of(double[] amounts, int values, double variance) {
        if (covariance.length == 0) {
            return 1;
        }
        double[] turned = new double[amounts.length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = PooledSolution.dot(wide[i], amounts);
        }
        double[] slope = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            slope[i] = -PooledSolution.quadratic(slopes[free[i]], turned) + ofMean(free[i], values);
        }
        return 2 * variance * variance / PooledSolution.quadratic(covariance, slope);
    }

    private double ofMean(int place, int values) {
        return place == layers.places()[PooledLayers.VALUE] ? 1.0 / values : 1;
    }
}
