package porebench.statistics.variance;

import java.util.Arrays;
import porebench.statistics.regression.PositiveMatrix;

/**
 * The restricted likelihood of variances of groups within groups whose values follow regressors instead of one mean.
 *
 * <p>-2 ln L = ln |V| + ln |X' V^-1 X| + r' V^-1 r with r what the regressors leave of the values. Its derivatives follow from
 * those of the products: d ln |A| = tr(A^-1 dA), d2 ln |A| = tr(A^-1 d2A) - tr(A^-1 dA A^-1 dA).
 *
 * <p>Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971); recalled. Differences from the source: none.
 */
final class PooledLikelihood implements RestrictedLikelihood {
    private final RegressorColumns columns;
    private final double[] values;
    private final PooledLayers layers;
    private final double squaresWithin;
    private final int freeWithin;

    /**
     * Makes the likelihood.
     *
     * @param columns of independent regressors
     * @param values the mean of each group less what some shares of the regressors make up, so that little is left
     */
    PooledLikelihood(RegressorColumns columns, double[] values, PooledLayers layers) {
        this.columns = columns;
        this.values = values;
        this.layers = layers;
        squaresWithin = Arrays.stream(columns.squares).sum();
        freeWithin = Arrays.stream(columns.counts).sum() - columns.groups;
    }

    @Override
    public At at(double... variances) {
        PooledProducts products = new PooledProducts(columns, values, layers, variances);
        double[][] all = products.products(0);
        PositiveMatrix matrix = PositiveMatrix.of(all);
        double[][] inverse = matrix.inverse();
        double[] shares = matrix.solve(products.withValues(0));
        Jet sum = products.logDeterminant()
                .plus(logProducts(matrix.logDeterminant(), inverse, products, variances))
                .plus(left(inverse, shares, products, variances.length));
        if (layers.isTold(PooledLayers.VALUE)) {
            Jet ofValues = layers.variance(PooledLayers.VALUE, variances);
            sum = sum.plusTimes(freeWithin, ofValues.log()).plusTimes(squaresWithin, ofValues.inverse());
        }
        return new At(sum, Double.NaN, Double.NaN);
    }

    private static Jet logProducts(double log, double[][] inverse, PooledProducts products, double... variances) {
        int count = variances.length;
        double[][][] turned = new double[count][][];
        for (int k = 0; k < count - 1; k++) {
            turned[k] = times(inverse, products.products(1 + k));
        }
        // Products fall as all variances rise together, so that the last derivative follows from the others.
        turned[count - 1] = last(turned, inverse.length, variances);
        double[] slopes = new double[count];
        double[][] curves = new double[count][count];
        int part = 1 + count;
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < inverse.length; i++) {
                slopes[k] += turned[k][i][i];
            }
            for (int l = 0; l <= k; l++) {
                curves[k][l] = trace(inverse, products.products(part++)) - crossTrace(turned[k], turned[l]);
                curves[l][k] = curves[k][l];
            }
        }
        return Jet.of(log, slopes, curves);
    }

    private static double[][] last(double[][][] turned, int size, double... variances) {
        int place = variances.length - 1;
        double[][] last = new double[size][size];
        for (int i = 0; i < size; i++) {
            last[i][i] = -1 / variances[place];
            for (int k = 0; k < place; k++) {
                double factor = variances[k] / variances[place];
                for (int j = 0; j < size; j++) {
                    last[i][j] -= factor * turned[k][i][j];
                }
            }
        }
        return last;
    }

    private static double[][] times(double[][] one, double[][] other) {
        int size = one.length;
        double[][] product = new double[size][size];
        for (int i = 0; i < size; i++) {
            double[] row = product[i];
            for (int k = 0; k < size; k++) {
                double factor = one[i][k];
                double[] with = other[k];
                for (int j = 0; j < size; j++) {
                    row[j] += factor * with[j];
                }
            }
        }
        return product;
    }

    /** Returns the trace of the product of two symmetric matrices. */
    private static double trace(double[][] one, double[][] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += dot(one[i], other[i]);
        }
        return sum;
    }

    private static double crossTrace(double[][] one, double[][] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < one.length; j++) {
                sum += one[i][j] * other[j][i];
            }
        }
        return sum;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static double[] times(double[][] matrix, double... vector) {
        return Arrays.stream(matrix).mapToDouble(row -> dot(row, vector)).toArray();
    }

    /** Returns r' V^-1 r: what the regressors leave of the squares. */
    private static Jet left(double[][] inverse, double[] shares, PooledProducts products, int count) {
        Jet squares = products.squares();
        double[][] withValues = new double[count][];
        double[][] byShares = new double[count][];
        for (int k = 0; k < count; k++) {
            withValues[k] = products.withValues(1 + k);
            byShares[k] = times(products.products(1 + k), shares);
        }
        double[] slopes = new double[count];
        double[][] curves = new double[count][count];
        int part = 1 + count;
        for (int k = 0; k < count; k++) {
            slopes[k] = squares.slope(k) - 2 * dot(withValues[k], shares) + dot(byShares[k], shares);
            double[] moved = times(inverse, minus(withValues[k], byShares[k]));
            for (int l = 0; l <= k; l++) {
                curves[k][l] = squares.curve(k, l)
                        - 2 * dot(products.withValues(part), shares)
                        + dot(times(products.products(part), shares), shares)
                        - 2 * dot(moved, minus(withValues[l], byShares[l]));
                curves[l][k] = curves[k][l];
                part++;
            }
        }
        return Jet.of(squares.value() - dot(products.withValues(0), shares), slopes, curves);
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = one.clone();
        for (int i = 0; i < difference.length; i++) {
            difference[i] -= other[i];
        }
        return difference;
    }
}
