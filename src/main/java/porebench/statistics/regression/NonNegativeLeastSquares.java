package porebench.statistics.regression;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The shares of some columns, none below 0, that together come nearest to some values.
 *
 * <p>Columns are let in as long as one of those left out would bring the sum nearer, and left out again where their share
 * would fall below 0. The start is the free solution without what is below 0 in it, so that where nothing is, nothing has to be
 * searched.
 *
 * <p>Source: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems (1974), chapter 23; recalled. Differences from the
 * source: the start.
 */
public final class NonNegativeLeastSquares {
    /** A gain this small, over the lengths of the column and of the values, is rounding. */
    private static final double ROUNDING = 1e-12;

    private static final int MOST_ROUNDS_A_COLUMN = 10;

    private final double[] values;
    private final double[][] columns;
    private final boolean[] isIn;
    private double[] shares;

    private NonNegativeLeastSquares(double[] values, double[][] columns) {
        this.values = values;
        this.columns = columns;
        this.isIn = new boolean[columns.length];
        this.shares = new double[columns.length];
    }

    /**
     * Finds the shares.
     *
     * @param values to be made up, at least as many as there are columns
     * @param columns each with as many numbers as there are values, not all 0, and independent of one another
     * @return the share of each column, at least 0, in the unit of the values over that of the column
     */
    public static double[] of(double[] values, double[]... columns) {
        NonNegativeLeastSquares search = new NonNegativeLeastSquares(values, columns);
        search.start();
        search.improve();
        return search.shares.clone();
    }

    private void start() {
        Arrays.fill(isIn, true);
        double[] free = free();
        while (Arrays.stream(free).anyMatch(share -> share < 0)) {
            for (int j = 0; j < free.length; j++) {
                isIn[j] = isIn[j] && free[j] > 0;
            }
            free = free();
        }
        shares = free;
    }

    private void improve() {
        for (int round = 0; round < MOST_ROUNDS_A_COLUMN * columns.length; round++) {
            int best = best();
            if (best < 0) {
                return;
            }
            isIn[best] = true;
            double[] free = free();
            if (free[best] <= 0) {
                isIn[best] = false;
                return;
            }
            while (walk(free)) {
                free = free();
            }
        }
    }

    /** Goes towards the free shares, as far as none falls below 0; returns whether one stopped it and was left out. */
    private boolean walk(double[] free) {
        double part = 1;
        for (int j = 0; j < free.length; j++) {
            if (isIn[j] && free[j] <= 0) {
                part = Math.min(part, shares[j] / (shares[j] - free[j]));
            }
        }
        boolean isStopped = false;
        double[] next = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            boolean fell = isIn[j] && free[j] <= 0;
            next[j] = shares[j] + part * (free[j] - shares[j]);
            if (fell && next[j] <= ROUNDING * (shares[j] - free[j])) {
                next[j] = 0;
                isIn[j] = false;
            }
            isStopped |= fell;
        }
        shares = next;
        return isStopped;
    }

    /** Returns the column left out that would gain most; below 0 where none would. */
    private int best() {
        double[] left = values.clone();
        for (int j = 0; j < columns.length; j++) {
            for (int i = 0; i < left.length; i++) {
                left[i] -= shares[j] * columns[j][i];
            }
        }
        double most = ROUNDING * Math.sqrt(dot(values, values));
        int best = -1;
        for (int j = 0; j < columns.length; j++) {
            double gain = isIn[j] ? 0 : dot(columns[j], left) / Math.sqrt(dot(columns[j], columns[j]));
            if (gain > most) {
                most = gain;
                best = j;
            }
        }
        return best;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /** Returns the shares of the columns that are in, whatever their sign, and 0 for the others. */
    private double[] free() {
        int[] in = IntStream.range(0, columns.length).filter(j -> isIn[j]).toArray();
        double[][] chosen = Arrays.stream(in).mapToObj(j -> columns[j]).toArray(double[][]::new);
        double[] found = LeastSquares.of(values, chosen).coefficients();
        double[] all = new double[columns.length];
        for (int k = 0; k < in.length; k++) {
            all[in[k]] = found[k];
        }
        return all;
    }
}
