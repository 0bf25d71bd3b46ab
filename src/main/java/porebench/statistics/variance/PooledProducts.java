package porebench.statistics.variance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The products of regressors and values, each group weighed by the inverse of its variance: what the normal equations are made
 * of, with the derivatives of all of it in the variances.
 *
 * <p>Since groups are nested, V never needs to be built: within an outer group of variance t, its groups with weights w, V^-1 is
 * W - t / (1 + t s) w w' with s the sum of the weights (Sherman and Morrison 1950; recalled).
 */
final class PooledProducts {
    private final RegressorColumns columns;
    private final double[] values;
    private final int parts;
    private final Map<Integer, Weight> weights = new HashMap<>();
    private final Jet between;
    private final Jet ofGroups;
    private final Jet ofValues;

    /** Lower triangle of the products of regressors, row by row, one column a part of {@link Jet}. */
    private final double[][] products;

    private final double[][] withValues;
    private Jet squares;
    private Jet logs;

    /** What groups of one count of values weigh, and how many there are. */
    private static final class Weight {
        private final Jet inverse;
        private final Jet log;
        private int uses;

        Weight(Jet variance) {
            inverse = variance.inverse();
            log = variance.log();
        }

        Jet inverse() {
            return inverse;
        }
    }

    /**
     * Works them out.
     *
     * @param values of which the mean of each group is taken, less an origin of its own
     * @param layers where among the variances that of outer groups, of groups and of values stands; below 0 where it is 0
     */
    PooledProducts(RegressorColumns columns, double[] values, PooledLayers layers, double... variances) {
        this.columns = columns;
        this.values = values;
        int variables = variances.length;
        parts = Jet.parts(variables);
        between = layers.variance(PooledLayers.OUTER, variances);
        ofGroups = layers.variance(PooledLayers.GROUP, variances);
        ofValues = layers.variance(PooledLayers.VALUE, variances);
        products = new double[parts][columns.regressors * (columns.regressors + 1) / 2];
        withValues = new double[parts][columns.regressors];
        squares = Jet.constant(0, variables);
        logs = squares;
        int[] slots = new int[columns.regressors];
        for (int outer = 0; outer < columns.outerGroups; outer++) {
            add(outer, slots);
        }
        // Added one by one, so many equal logarithms would lose the digits that the end of a climb is told by.
        weights.values().forEach(weight -> logs = logs.plusTimes(weight.uses, weight.log));
    }

    private Weight weight(int count) {
        return weights.computeIfAbsent(count, any -> {
            Jet variance = ofGroups.plusTimes(1.0 / count, ofValues);
            return new Weight(variance);
        });
    }

    /** Adds an outer group; what its groups add is gathered first, so that the whole matrix is touched once. */
    private void add(int outer, int[] slots) {
        int first = columns.outerStarts[outer];
        int end = columns.outerStarts[outer + 1];
        int[] found = new int[columns.starts[end] - columns.starts[first]];
        int count = 0;
        for (int k = columns.starts[first]; k < columns.starts[end]; k++) {
            if (slots[columns.places[k]] == 0) {
                found[count++] = columns.places[k];
                slots[columns.places[k]] = count;
            }
        }
        double[][] own = new double[parts][count * (count + 1) / 2];
        double[][] sums = new double[parts][count];
        double[][] sum = new double[parts][2];
        for (int group = first; group < end; group++) {
            Weight weight = weight(columns.counts[group]);
            weight.uses++;
            squares = squares.plusTimes(values[group] * values[group], weight.inverse());
            weight.inverse().addTo(sum, 0, 1);
            weight.inverse().addTo(sum, 1, values[group]);
            for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
                int slot = slots[columns.places[k]] - 1;
                double amount = columns.amounts[k];
                weight.inverse().addTo(sums, slot, amount);
                weight.inverse().addTo(withValues, columns.places[k], amount * values[group]);
                for (int l = columns.starts[group]; l <= k; l++) {
                    int other = slots[columns.places[l]] - 1;
                    weight.inverse().addTo(own, packed(slot, other), amount * columns.amounts[l]);
                }
            }
        }
        takeOver(Arrays.copyOf(found, count), own, sums, sum);
        for (int k = 0; k < count; k++) {
            slots[found[k]] = 0;
        }
    }

    /** Adds what the groups of one outer group add, less what they have in common. */
    private void takeOver(int[] places, double[][] own, double[][] sums, double[][] sum) {
        Jet growth = between.times(Jet.at(sum, 0)).plus(1);
        logs = logs.plus(growth.log());
        Jet less = between.times(growth.inverse());
        Jet ofValues = Jet.at(sum, 1);
        squares = squares.minus(less.times(ofValues).times(ofValues));
        for (int k = 0; k < places.length; k++) {
            Jet scaled = less.times(Jet.at(sums, k));
            scaled.times(ofValues).addTo(withValues, places[k], -1);
            for (int l = 0; l <= k; l++) {
                Jet.at(own, packed(k, l))
                        .minus(scaled.times(Jet.at(sums, l)))
                        .addTo(products, packed(places[k], places[l]), 1);
            }
        }
    }

    private static int packed(int one, int other) {
        int high = Math.max(one, other);
        return high * (high + 1) / 2 + Math.min(one, other);
    }

    /** Returns one part of the products of the regressors with one another, whole. */
    double[][] products(int part) {
        int size = columns.regressors;
        double[][] whole = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                whole[i][j] = products[part][packed(i, j)];
                whole[j][i] = whole[i][j];
            }
        }
        return whole;
    }

    /** Returns one part of the products of the regressors with the values. */
    double[] withValues(int part) {
        return withValues[part];
    }

    /** Returns the sum of squares of the values. */
    Jet squares() {
        return squares;
    }

    /** Returns the logarithm of the determinant of V, apart from what values within groups add. */
    Jet logDeterminant() {
        return logs;
    }
}
