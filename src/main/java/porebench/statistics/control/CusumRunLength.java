package porebench.statistics.control;

import porebench.quantity.Require;
import porebench.statistics.distribution.Normal;

/**
 * Average run length of a cumulative sum of independent standard normal scores that count up to a limit at most.
 *
 * <p>The sum of one side is a Markov chain of equal steps from 0 to the interval; both sides together have the reciprocal
 * of the sum of the reciprocals.
 *
 * <p>Source: D. Brook and D. A. Evans, Biometrika 59 (1972), 539-549; recalled. Differences from the source: a score
 * beyond the limit counts as the limit.
 */
public final class CusumRunLength {
    private static final int STATES = 120;

    private CusumRunLength() {}

    /**
     * Returns the average number of scores to a signal, from sums of 0.
     *
     * @param slack what a score may be without adding up, at least 0
     * @param interval what a sum may reach, above 0
     * @param limit what a score counts at most, to either side; above the slack, may be infinite
     * @param shift by which the scores are off, in their standard deviations
     */
    public static double of(double slack, double interval, double limit, double shift) {
        Require.atLeastZero("slack", slack);
        Require.positive("interval", interval);
        Require.finite("shift", shift);
        if (!(limit > slack)) {
            throw new IllegalArgumentException("limit must be above the slack, but is " + limit);
        }
        double up = oneSide(slack, interval, limit, shift);
        double down = oneSide(slack, interval, limit, -shift);
        return 1 / (1 / up + 1 / down);
    }

    private static double oneSide(double slack, double interval, double limit, double shift) {
        double width = 2 * interval / (2 * STATES - 1);
        double[][] equations = new double[STATES][STATES + 1];
        for (int from = 0; from < STATES; from++) {
            double before = 0;
            for (int to = 0; to < STATES; to++) {
                double upTo = share((to + 0.5 - from) * width + slack, limit, shift);
                equations[from][to] = (from == to ? 1 : 0) - (upTo - before);
                before = upTo;
            }
            equations[from][STATES] = 1;
        }
        return firstOf(equations);
    }

    /** Returns the share of scores up to a value. */
    private static double share(double value, double limit, double shift) {
        if (value >= limit) {
            return 1;
        }
        return value < -limit ? 0 : Normal.cumulative(value - shift);
    }

    /** Solves from the last unknown to the first; the rows are diagonally dominant, so that no row is exchanged. */
    private static double firstOf(double[][] rows) {
        int right = rows.length;
        for (int pivot = rows.length - 1; pivot > 0; pivot--) {
            for (int row = 0; row < pivot; row++) {
                double factor = rows[row][pivot] / rows[pivot][pivot];
                for (int column = 0; column < pivot; column++) {
                    rows[row][column] -= factor * rows[pivot][column];
                }
                rows[row][right] -= factor * rows[pivot][right];
            }
        }
        return rows[0][right] / rows[0][0];
    }
}
