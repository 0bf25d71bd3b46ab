package porebench.statistics.variance;

import java.util.Arrays;
import java.util.stream.IntStream;
import porebench.statistics.regression.LeastSquares;
import porebench.statistics.regression.NonNegativeLeastSquares;
import porebench.statistics.regression.PositiveMatrix;

/**
 * The shares of independent regressors for given variances.
 *
 * <p>Few groups are turned and solved by reflections, {@link LeastSquares}. Many are solved by their products, and since what is
 * solved for is only what a first solution left, the last digits come from the values themselves. Regressors of which less than a
 * hundredth is their own have been left out ({@link Separation}), so that forming products costs few digits.
 */
final class PooledSolution {
    private static final double MOST_BY_REFLECTIONS = 3e7;

    private final double[] shares;
    private final boolean[] isAtZero;
    private final double[][] wide;
    private final double[][] narrow;
    private final double[] products;
    private final double farthest;

    private PooledSolution(RegressorColumns columns, double[] free, double[][] wide, double[] shares) {
        this.shares = shares;
        this.wide = wide;
        this.isAtZero = new boolean[shares.length];
        for (int j = 0; j < shares.length; j++) {
            isAtZero[j] = shares[j] == 0 && free[j] < 0;
        }
        double[][] all = PositiveMatrix.of(wide).inverse();
        this.products =
                IntStream.range(0, all.length).mapToDouble(j -> all[j][j]).toArray();
        this.narrow = narrow(all);
        double most = 0;
        for (int group = 0; group < columns.groups; group++) {
            most = Math.max(most, quadratic(columns, group, wide));
        }
        this.farthest = most;
    }

    /** Returns the shares with all groups of the same weight. */
    static double[] even(RegressorColumns columns) {
        double[][] products = new double[columns.regressors][columns.regressors];
        double[] withMeans = new double[columns.regressors];
        for (int group = 0; group < columns.groups; group++) {
            for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
                withMeans[columns.places[k]] += columns.amounts[k] * columns.means[group];
                for (int l = columns.starts[group]; l < columns.starts[group + 1]; l++) {
                    products[columns.places[k]][columns.places[l]] += columns.amounts[k] * columns.amounts[l];
                }
            }
        }
        return PositiveMatrix.of(products).solve(withMeans);
    }

    /** Returns what some shares leave of the mean of each group. */
    static double[] rest(RegressorColumns columns, double... shares) {
        return IntStream.range(0, columns.groups)
                .mapToDouble(group -> columns.means[group] - columns.dot(group, shares))
                .toArray();
    }

    static PooledSolution of(RegressorColumns columns, double[] first, double[] rest, PooledVariances variances) {
        double work = (double) columns.groups * columns.regressors * columns.regressors;
        return work <= MOST_BY_REFLECTIONS
                ? byReflections(columns, variances)
                : byProducts(columns, first, rest, variances);
    }

    static PooledSolution byReflections(RegressorColumns columns, PooledVariances variances) {
        double[][] turned = new double[columns.regressors][columns.groups];
        double[] values = new double[columns.groups];
        for (int outer = 0; outer < columns.outerGroups; outer++) {
            PooledBlock block = PooledBlock.of(columns, columns.means, outer, variances);
            for (int row = 0; row < block.values().length; row++) {
                int group = columns.outerStarts[outer] + row;
                values[group] = block.values()[row];
                for (int k = 0; k < block.places().length; k++) {
                    turned[block.places()[k]][group] = block.rows()[row][k];
                }
            }
        }
        LeastSquares solved = LeastSquares.of(values, turned);
        double[] free = solved.coefficients();
        return new PooledSolution(
                columns, free, solved.inverse(), isBelow(free) ? NonNegativeLeastSquares.of(values, turned) : free);
    }

    static PooledSolution byProducts(
            RegressorColumns columns, double[] first, double[] rest, PooledVariances variances) {
        double[] told = {variances.outer(), variances.group(), variances.value()};
        PooledProducts products = new PooledProducts(columns, rest, PooledLayers.ALL, told);
        PositiveMatrix matrix = PositiveMatrix.of(products.products(0));
        double[] free = matrix.solve(products.withValues(0));
        for (int j = 0; j < free.length; j++) {
            free[j] += first[j];
        }
        return new PooledSolution(columns, free, matrix.inverse(), isBelow(free) ? bounded(matrix, free) : free);
    }

    private static boolean isBelow(double... free) {
        return Arrays.stream(free).anyMatch(share -> share < 0);
    }

    private static double[] bounded(PositiveMatrix matrix, double... free) {
        double[][] factor = matrix.factor();
        double[] values = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            for (int k = 0; k < values.length; k++) {
                values[k] += free[j] * factor[j][k];
            }
        }
        return NonNegativeLeastSquares.of(values, factor);
    }

    /** Returns the covariance of the shares that are not at their bound, those taken as known; 0 for the others. */
    private double[][] narrow(double[][] all) {
        int[] in = IntStream.range(0, isAtZero.length).filter(j -> !isAtZero[j]).toArray();
        if (in.length == isAtZero.length) {
            return wide;
        }
        double[][] chosen = new double[in.length][in.length];
        for (int i = 0; i < in.length; i++) {
            for (int j = 0; j < in.length; j++) {
                chosen[i][j] = all[in[i]][in[j]];
            }
        }
        double[][] inverse = PositiveMatrix.of(chosen).inverse();
        double[][] found = new double[isAtZero.length][isAtZero.length];
        for (int i = 0; i < in.length; i++) {
            for (int j = 0; j < in.length; j++) {
                found[in[i]][in[j]] = inverse[i][j];
            }
        }
        return found;
    }

    private static double quadratic(RegressorColumns columns, int group, double[][] matrix) {
        double sum = 0;
        for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
            for (int l = columns.starts[group]; l < columns.starts[group + 1]; l++) {
                sum += columns.amounts[k] * columns.amounts[l] * matrix[columns.places[k]][columns.places[l]];
            }
        }
        return sum;
    }

    static double quadratic(double[][] matrix, double... vector) {
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            sum += vector[i] == 0 ? 0 : vector[i] * dot(matrix[i], vector);
        }
        return sum;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /** Returns the share of each regressor, at least 0. */
    double[] shares() {
        return shares;
    }

    /** Returns whether a share would fall below 0 if it might. */
    boolean isAtZero(int place) {
        return isAtZero[place];
    }

    /** Returns the covariance of the free shares. */
    double[][] wide() {
        return wide;
    }

    /** Returns the covariance with those at their bound taken as known. */
    double[][] narrow() {
        return narrow;
    }

    /** Returns the weighed sum of squares of the amounts of a regressor. */
    double product(int place) {
        return products[place];
    }

    /** Returns the greatest variance that the shares' sum has at any group. */
    double farthest() {
        return farthest;
    }
}
