package porebench.statistics.variance;

import java.util.Optional;
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
    private final Optional<ThroughShares> throughShares;

    /** The layer whose variance is that of its scale; below 0 where there is none. */
    private final int known;

    private final int[] free;
    private final double[][] covariance;

    /** How a prediction's variance follows those of the layers through the covariance of the shares. */
    private record ThroughShares(double[][] wide, double[][][] slopes) {
        double slope(int variable, double... amounts) {
            double[] turned = new double[amounts.length];
            for (int i = 0; i < turned.length; i++) {
                turned[i] = PooledSolution.dot(wide[i], amounts);
            }
            return -PooledSolution.quadratic(slopes[variable], turned);
        }
    }

    /** All variances are known. */
    PooledDegrees() {
        this(PooledLayers.ALL, Optional.empty(), -1, new int[0], new double[0][]);
    }

    /** One variance, of values or else of groups, was raised to that of its scale: what the shares add is taken as known. */
    PooledDegrees(Jet minusTwiceLog, PooledLayers layers, double[] variances, boolean hasRepeats) {
        this(
                layers,
                Optional.empty(),
                layers.places()[hasRepeats ? PooledLayers.VALUE : PooledLayers.GROUP],
                free(variances),
                covariance(minusTwiceLog, free(variances)));
    }

    PooledDegrees(
            Jet minusTwiceLog,
            PooledProducts products,
            PooledLayers layers,
            double[] variances,
            PooledSolution solution) {
        this(
                layers,
                Optional.of(new ThroughShares(
                        solution.wide(),
                        IntStream.range(0, variances.length)
                                .mapToObj(k -> products.products(1 + k))
                                .toArray(double[][][]::new))),
                -1,
                free(variances),
                covariance(minusTwiceLog, free(variances)));
    }

    private PooledDegrees(
            PooledLayers layers, Optional<ThroughShares> throughShares, int known, int[] free, double[][] covariance) {
        this.layers = layers;
        this.throughShares = throughShares;
        this.known = known;
        this.free = free;
        this.covariance = covariance;
    }

    private static int[] free(double... variances) {
        return IntStream.range(0, variances.length)
                .filter(k -> variances[k] > 0)
                .toArray();
    }

    /** Returns the covariance of the free variances; empty where the likelihood is not curved enough to tell it. */
    private static double[][] covariance(Jet minusTwiceLog, int... free) {
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
        if (free.length > 0 && covariance.length == 0) {
            return 1;
        }
        double[] slope = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            int variable = free[i];
            slope[i] = variable == known
                    ? 0
                    : ofMean(variable, values)
                            + throughShares
                                    .map(through -> through.slope(variable, amounts))
                                    .orElse(0.0);
        }
        return 2 * variance * variance / PooledSolution.quadratic(covariance, slope);
    }

    private double ofMean(int place, int values) {
        return place == layers.places()[PooledLayers.VALUE] ? 1.0 / values : 1;
    }
}
