package porebench.statistics.variance;

import java.util.Arrays;

/**
 * The groups of one outer group, turned so that all of them have variance 1 and nothing in common.
 *
 * <p>With w the inverse root of the variance of each group and t that between outer groups, V^(-1/2) is W - c w w' W / w'w with c =
 * 1 - 1 / root(1 + t w'w): the symmetric root of what Sherman and Morrison's identity inverts (derived).
 *
 * @param places which regressors have an amount in any of the groups
 * @param rows the turned amounts, one row a group, one number a place
 * @param values the turned values
 */
record PooledBlock(int[] places, double[][] rows, double[] values) {

    /** Turns an outer group. */
    static PooledBlock of(RegressorColumns columns, double[] values, int outer, PooledVariances variances) {
        int first = columns.outerStarts[outer];
        int count = columns.outerStarts[outer + 1] - first;
        int[] places = Arrays.stream(columns.places, columns.starts[first], columns.starts[first + count])
                .distinct()
                .toArray();
        double[] weights = new double[count];
        double[][] rows = new double[count][places.length];
        double[] turned = new double[count];
        double sum = 0;
        for (int row = 0; row < count; row++) {
            int group = first + row;
            double square = 1 / (variances.group() + variances.value() / columns.counts[group]);
            weights[row] = Math.sqrt(square);
            sum += square;
            turned[row] = weights[row] * values[group];
            for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
                rows[row][slot(places, columns.places[k])] += weights[row] * columns.amounts[k];
            }
        }
        double less = (1 - 1 / Math.sqrt(1 + variances.outer() * sum)) / sum;
        for (int slot = 0; slot < places.length; slot++) {
            double common = 0;
            for (int row = 0; row < count; row++) {
                common += weights[row] * rows[row][slot];
            }
            for (int row = 0; row < count; row++) {
                rows[row][slot] -= less * common * weights[row];
            }
        }
        double common = 0;
        for (int row = 0; row < count; row++) {
            common += weights[row] * turned[row];
        }
        for (int row = 0; row < count; row++) {
            turned[row] -= less * common * weights[row];
        }
        return new PooledBlock(places, rows, turned);
    }

    private static int slot(int[] places, int place) {
        int slot = 0;
        while (places[slot] != place) {
            slot++;
        }
        return slot;
    }
}
