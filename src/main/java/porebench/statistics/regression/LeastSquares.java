package porebench.statistics.regression;

import porebench.quantity.Require;

/**
 * The shares of some columns that together come nearest to some values: least squares by Householder's reflections.
 *
 * <p>Each column is divided by its length first, so that columns of very different sizes do no harm; normal equations, which
 * square the condition of the columns, are not formed. Columns must be independent: whoever calls has seen to that.
 *
 * <p>Source: P. Businger and G. H. Golub, Numerische Mathematik 7 (1965), without exchanging columns; recalled. Differences
 * from the source: none.
 */
public final class LeastSquares {
    private final double[] coefficients;
    private final double[] lengths;
    private final double[][] columns;
    private final double[] diagonal;
    private final double squares;

    private LeastSquares(double[][] columns, double[] lengths, double[] diagonal, double[] turned) {
        this.columns = columns;
        this.lengths = lengths;
        this.diagonal = diagonal;
        this.coefficients = solved(turned);
        double left = 0;
        for (int row = columns.length; row < turned.length; row++) {
            left += turned[row] * turned[row];
        }
        this.squares = left;
    }

    /**
     * Finds the shares.
     *
     * @param values to be made up, at least as many as there are columns
     * @param columns each with as many numbers as there are values, not all 0, and independent of one another
     * @throws IllegalArgumentException if there are fewer values than columns or the columns are not as long
     */
    public static LeastSquares of(double[] values, double[]... columns) {
        Require.atLeast("values", values.length, columns.length);
        double[][] turned = new double[columns.length][];
        double[] lengths = new double[columns.length];
        for (int j = 0; j < columns.length; j++) {
            if (columns[j].length != values.length) {
                throw new IllegalArgumentException(
                        "column must have " + values.length + " numbers, but is of " + columns[j].length);
            }
            lengths[j] = length(columns[j], 0);
            turned[j] = divided(columns[j], lengths[j]);
        }
        double[] rest = values.clone();
        double[] diagonal = new double[columns.length];
        for (int j = 0; j < columns.length; j++) {
            diagonal[j] = reflect(turned, j, rest);
        }
        return new LeastSquares(turned, lengths, diagonal, rest);
    }

    private static double[] divided(double[] column, double by) {
        double[] divided = new double[column.length];
        for (int i = 0; i < divided.length; i++) {
            divided[i] = column[i] / by;
        }
        return divided;
    }

    private static double length(double[] column, int from) {
        double sum = 0;
        for (int i = from; i < column.length; i++) {
            sum += column[i] * column[i];
        }
        return Math.sqrt(sum);
    }

    /** Turns a column onto its axis, and all behind it and the values along; returns what stands on the diagonal. */
    private static double reflect(double[][] columns, int place, double[] values) {
        double[] mirror = columns[place];
        double length = length(mirror, place);
        double diagonal = mirror[place] > 0 ? -length : length;
        mirror[place] -= diagonal;
        double half = -diagonal * mirror[place];
        for (int j = place + 1; j < columns.length; j++) {
            mirrored(columns[j], mirror, place, half);
        }
        mirrored(values, mirror, place, half);
        return diagonal;
    }

    private static void mirrored(double[] column, double[] mirror, int from, double half) {
        double dot = 0;
        for (int i = from; i < column.length; i++) {
            dot += mirror[i] * column[i];
        }
        double part = dot / half;
        for (int i = from; i < column.length; i++) {
            column[i] -= part * mirror[i];
        }
    }

    private double[] solved(double[] turned) {
        double[] shares = new double[columns.length];
        for (int j = shares.length - 1; j >= 0; j--) {
            double sum = turned[j];
            for (int k = j + 1; k < shares.length; k++) {
                sum -= columns[k][j] * shares[k];
            }
            shares[j] = sum / diagonal[j];
        }
        for (int j = 0; j < shares.length; j++) {
            shares[j] /= lengths[j];
        }
        return shares;
    }

    /** Returns the share of each column, in the unit of the values over that of the column. */
    public double[] coefficients() {
        return coefficients.clone();
    }

    /** Returns the sum of squares of what is left of the values, in the square of their unit. */
    double squares() {
        return squares;
    }

    /**
     * Returns the inverse of the matrix of products of the columns: times the variance of a value it is the covariance of the
     * shares.
     */
    public double[][] inverse() {
        int size = diagonal.length;
        double[][] upper = new double[size][size];
        for (int j = 0; j < size; j++) {
            upper[j][j] = 1 / diagonal[j];
            for (int i = j - 1; i >= 0; i--) {
                double sum = 0;
                for (int k = i + 1; k <= j; k++) {
                    sum += columns[k][i] * upper[k][j];
                }
                upper[i][j] = -sum / diagonal[i];
            }
        }
        double[][] inverse = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = i; k < size; k++) {
                    sum += upper[i][k] * upper[j][k];
                }
                inverse[i][j] = sum / (lengths[i] * lengths[j]);
                inverse[j][i] = inverse[i][j];
            }
        }
        return inverse;
    }
}
