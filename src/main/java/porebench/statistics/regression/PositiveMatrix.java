package porebench.statistics.regression;

/**
 * A symmetric matrix whose every product with a vector on both sides is greater than 0, in its triangular factor.
 *
 * <p>Source: A.-L. Cholesky's method, as in G. H. Golub and C. F. Van Loan, Matrix Computations (1996), 4.2; recalled.
 * Differences from the source: rows and columns are divided by the roots of the diagonal first.
 */
public final class PositiveMatrix {
    private final double[][] lower;
    private final double[] scale;

    private PositiveMatrix(double[][] lower, double[] scale) {
        this.lower = lower;
        this.scale = scale;
    }

    /**
     * Factors a matrix.
     *
     * @param matrix of which the lower triangle is read
     * @throws ArithmeticException if it is not such a matrix
     */
    public static PositiveMatrix of(double[][] matrix) {
        int size = matrix.length;
        double[] scale = new double[size];
        for (int i = 0; i < size; i++) {
            scale[i] = 1 / Math.sqrt(matrix[i][i]);
        }
        double[][] lower = new double[size][];
        for (int i = 0; i < size; i++) {
            lower[i] = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j] * scale[i] * scale[j] - dot(lower[i], lower[j], j);
                if (i > j) {
                    lower[i][j] = sum / lower[j][j];
                } else if (sum > 0) {
                    lower[i][i] = Math.sqrt(sum);
                } else {
                    throw new ArithmeticException("matrix must be positive, but row " + i + " is not independent");
                }
            }
        }
        return new PositiveMatrix(lower, scale);
    }

    private static double dot(double[] one, double[] other, int length) {
        double sum = 0;
        for (int k = 0; k < length; k++) {
            sum += one[k] * other[k];
        }
        return sum;
    }

    /** Returns the logarithm of its determinant. */
    public double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < lower.length; i++) {
            sum += Math.log(lower[i][i]) - Math.log(scale[i]);
        }
        return 2 * sum;
    }

    /** Returns the vector that the matrix turns into another. */
    public double[] solve(double... vector) {
        double[] solved = new double[vector.length];
        for (int i = 0; i < solved.length; i++) {
            solved[i] = (vector[i] * scale[i] - dot(lower[i], solved, i)) / lower[i][i];
        }
        for (int i = solved.length - 1; i >= 0; i--) {
            solved[i] /= lower[i][i];
            for (int k = 0; k < i; k++) {
                solved[k] -= lower[i][k] * solved[i];
            }
        }
        for (int i = 0; i < solved.length; i++) {
            solved[i] *= scale[i];
        }
        return solved;
    }

    /** Returns columns whose products with one another make up the matrix. */
    public double[][] factor() {
        double[][] columns = new double[lower.length][lower.length];
        for (int i = 0; i < lower.length; i++) {
            for (int j = 0; j <= i; j++) {
                columns[i][j] = lower[i][j] / scale[i];
            }
        }
        return columns;
    }

    /** Returns its inverse. */
    public double[][] inverse() {
        int size = lower.length;
        double[][] half = new double[size][];
        for (int i = 0; i < size; i++) {
            half[i] = new double[i + 1];
            for (int k = 0; k < i; k++) {
                double part = lower[i][k];
                for (int j = 0; j <= k; j++) {
                    half[i][j] -= part * half[k][j];
                }
            }
            half[i][i] = 1;
            for (int j = 0; j <= i; j++) {
                half[i][j] /= lower[i][i];
            }
        }
        double[][] inverse = new double[size][size];
        for (int k = 0; k < size; k++) {
            for (int i = 0; i <= k; i++) {
                double part = half[k][i];
                for (int j = 0; j <= i; j++) {
                    inverse[i][j] += part * half[k][j];
                }
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                inverse[i][j] *= scale[i] * scale[j];
                inverse[j][i] = inverse[i][j];
            }
        }
        return inverse;
    }
}
