package porebench.statistics.variance;

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
    private final int variables;
    private final Map<Integer, Weight> weights = new HashMap<>();
    private final Jet between;
    private final Jet ofGroups;
    private final Jet ofValues;

    /** Lower triangle of the products of regressors, row by row, one column a part of {@link Jet}. */
    private final double[][] products;

    private final double[][] withValues;
    private Jet squares;
    private Jet logs;

    private record Weight(Jet inverse, Jet log) {}

    /**
     * Works them out.
     *
     * @param values of which the mean of each group is taken, less an origin of its own
     * @param layers where among the variances that of outer groups, of groups and of values stands; below 0 where it is 0
     */
    PooledProducts(RegressorColumns columns, double[] values, PooledLayers layers, double... variances) {
        this.columns = columns;
        this.values = values;
        variables = variances.length;
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
    }

    private Weight weight(int count) {
        return weights.computeIfAbsent(count, any -> {
            Jet variance = ofGroups.plusTimes(1.0 / count, ofValues);
            return new Weight(variance.inverse(), variance.log());
        });
    }

    private void add(int outer, int[] slots) {
        int first = columns.outerStarts[outer];
        int end = columns.outerStarts[outer + 1];
        int[] found = new int[columns.starts[end] - columns.starts[first]];
        double[][] sums = new double[parts][found.length];
        int count = 0;
        double[][] sum = new double[parts][2];
        for (int group = first; group < end; group++) {
            Weight weight = weight(columns.counts[group]);
            logs = logs.plus(weight.log());
            squares = squares.plusTimes(values[group] * values[group], weight.inverse());
            weight.inverse().addTo(sum, 0, 1);
            weight.inverse().addTo(sum, 1, values[group]);
            for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
                int place = columns.places[k];
                if (slots[place] == 0) {
                    found[count++] = place;
                    slots[place] = count;
                }
                double amount = columns.amounts[k];
                weight.inverse().addTo(sums, slots[place] - 1, amount);
                weight.inverse().addTo(withValues, place, amount * values[group]);
                for (int l = columns.starts[group]; l <= k; l++) {
                    weight.inverse().addTo(products, packed(place, columns.places[l]), amount * columns.amounts[l]);
                }
            }
        }
        for (int i = 0; i < count; i++) {
            slots[found[i]] = 0;
        }
        if (between.value() > 0 || hasSlope(between)) {
            takeAway(found, count, sums, sum);
        }
    }

    private boolean hasSlope(Jet jet) {
        for (int i = 0; i < variables; i++) {
            if (jet.slope(i) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Takes away what groups of one outer group have in common. */
    private void takeAway(int[] places, int count, double[][] sums, double[][] sum) {
        Jet growth = between.times(Jet.at(sum, 0)).plus(1);
        logs = logs.plus(growth.log());
        Jet less = between.times(growth.inverse());
        Jet ofValues = Jet.at(sum, 1);
        squares = squares.minus(less.times(ofValues).times(ofValues));
        for (int k = 0; k < count; k++) {
            Jet scaled = less.times(Jet.at(sums, k));
            scaled.times(ofValues).addTo(withValues, places[k], -1);
            for (int l = 0; l <= k; l++) {
                scaled.times(Jet.at(sums, l)).addTo(products, packed(places[k], places[l]), -1);
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
