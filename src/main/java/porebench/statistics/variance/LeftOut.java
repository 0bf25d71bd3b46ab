package porebench.statistics.variance;

import java.util.Arrays;
import java.util.Optional;
import porebench.statistics.regression.PositiveMatrix;

/**
 * What the shares would be if one outer group were left out: how its groups would have been foretold, and what it changes.
 *
 * <p>Variances, and which shares are at their bound, stay as they are. With H = Z C Z' of the turned groups, leaving them out changes the shares by C Z'
 * (I - H)^-1 e. Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression (1982), 3.6; recalled.
 */
public final class LeftOut {
    /** An outer group of which so little is told by the others cannot be foretold from them. */
    private static final double NOTHING = 1e-6;

    private final RegressorColumns columns;
    private final double[] foretold;
    private final double[][] pulls;
    private final int[][] places;
    private final boolean[] isAlone;
    private final double[][] covariance;
    private final int[] taken;

    /**
     * An outer group and what leaving it out would change.
     *
     * @param outer which one
     * @param change by how much the sum of the shares is higher with it than without it
     */
    public record Pull(int outer, double change) {}

    LeftOut(RegressorColumns columns, int[] taken, PooledSolution solution, PooledVariances variances) {
        this.columns = columns;
        this.taken = taken.clone();
        this.covariance = solution.narrow();
        foretold = new double[columns.groups];
        pulls = new double[columns.outerGroups][];
        places = new int[columns.outerGroups][];
        isAlone = new boolean[columns.outerGroups];
        double[] rest = PooledSolution.rest(columns, solution.shares());
        for (int outer = 0; outer < columns.outerGroups; outer++) {
            leaveOut(outer, PooledBlock.of(columns, rest, outer, variances), solution.shares());
        }
    }

    private void leaveOut(int outer, PooledBlock block, double[] shares) {
        int count = block.values().length;
        int first = columns.outerStarts[outer];
        places[outer] = block.places();
        double[][] own = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                own[i][j] = (i == j ? 1 : 0) - product(block, i, j);
            }
            own[i][i] = Math.max(own[i][i], 0);
        }
        double[] solved = solved(own, block.values());
        isAlone[outer] = solved.length == 0;
        pulls[outer] = new double[block.places().length];
        for (int k = 0; k < block.places().length; k++) {
            for (int i = 0; i < solved.length; i++) {
                pulls[outer][k] += block.rows()[i][k] * solved[i];
            }
        }
        for (int group = first; group < first + count; group++) {
            foretold[group] = isAlone[outer] ? Double.NaN : columns.dot(group, shares) - change(outer, group);
        }
    }

    private double change(int outer, int group) {
        double sum = 0;
        for (int k = 0; k < places[outer].length; k++) {
            sum += pulls[outer][k] * columns.dot(group, covariance[places[outer][k]]);
        }
        return sum;
    }

    private double product(PooledBlock block, int one, int other) {
        double sum = 0;
        for (int k = 0; k < block.places().length; k++) {
            for (int l = 0; l < block.places().length; l++) {
                sum += block.rows()[one][k] * block.rows()[other][l] * covariance[block.places()[k]][block.places()[l]];
            }
        }
        return sum;
    }

    /** Solves what is left of the groups' own; empty where that is nothing. */
    private static double[] solved(double[][] own, double... values) {
        double[][] some = new double[own.length][own.length];
        for (int i = 0; i < own.length; i++) {
            for (int j = 0; j < own.length; j++) {
                some[i][j] = own[i][j];
            }
        }
        try {
            PositiveMatrix matrix = PositiveMatrix.of(some);
            return Math.exp(matrix.logDeterminant()) > NOTHING ? matrix.solve(values) : new double[0];
        } catch (ArithmeticException nothing) {
            return new double[0];
        }
    }

    private double change(int outer, double... amounts) {
        double sum = 0;
        for (int k = 0; k < places[outer].length; k++) {
            sum += pulls[outer][k] * PooledSolution.dot(covariance[places[outer][k]], amounts);
        }
        return sum;
    }

    /**
     * Returns the outer group without which the sum of some amounts, each times its share, would change most.
     *
     * @param amounts one a regressor
     * @return empty where no outer group can be left out
     */
    public Optional<Pull> strongest(double... amounts) {
        double[] own = Arrays.stream(taken).mapToDouble(k -> amounts[k]).toArray();
        Pull strongest = null;
        for (int outer = 0; outer < pulls.length; outer++) {
            double change = change(outer, own);
            if (!isAlone[outer] && (strongest == null || Math.abs(change) > Math.abs(strongest.change()))) {
                strongest = new Pull(outer, change);
            }
        }
        return Optional.ofNullable(strongest);
    }

    /** Returns the mean of a group as foretold from all outer groups but its own; NaN where they do not tell it. */
    public double foretold(int group) {
        return foretold[group];
    }

    /** Returns the root of the mean square of the differences between what was found and what was foretold; NaN where nothing was. */
    public double error() {
        double sum = 0;
        int count = 0;
        for (int group = 0; group < foretold.length; group++) {
            if (!Double.isNaN(foretold[group])) {
                sum += Math.pow(columns.means[group] - foretold[group], 2);
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }
}
