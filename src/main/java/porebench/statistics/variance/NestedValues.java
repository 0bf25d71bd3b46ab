package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.quantity.Require;

/**
 * Values in groups within groups, with the means and sums of squares of every layer.
 *
 * <p>Layer 0 is all values as one group; the named layers follow from the outermost. The first value is taken from all
 * before anything is added up.
 *
 * @param origin what was taken from every value
 * @param layers layer 0 and the named ones
 * @param within of each innermost group, the squared deviations of its values from its mean, added up
 */
record NestedValues(double origin, List<Layer> layers, double[] within) {
    /**
     * The groups of one layer.
     *
     * @param names the path of names of each group
     * @param parents the group of the layer before that each is in
     * @param sizes how many values each holds
     * @param means of the values of each, less the origin
     */
    record Layer(List<List<String>> names, int[] parents, int[] sizes, double[] means) {
        int groups() {
            return sizes.length;
        }
    }

    /**
     * Sorts values into groups.
     *
     * @param paths the names of each value's groups, from the outermost, all as many; groups of the same name within
     *     different groups are different
     * @param values at least one, each finite
     * @throws IllegalArgumentException if there is no value, one is not finite, or the paths do not fit
     */
    static NestedValues of(List<List<String>> paths, double... values) {
        Require.atLeast("count of values", values.length, 1);
        if (paths.size() != values.length) {
            throw new IllegalArgumentException("count of paths must be " + values.length + ", but is " + paths.size());
        }
        int depth = paths.get(0).size();
        double[] left = new double[values.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = Require.finite("values[" + i + "]", values[i]) - values[0];
            if (paths.get(i).size() != depth) {
                throw new IllegalArgumentException("path must have " + depth + " names, but is " + paths.get(i));
            }
        }
        List<Layer> layers = new ArrayList<>();
        int[] groups = new int[left.length];
        layers.add(layer(List.of(List.of()), groups, groups, left));
        for (int names = 1; names <= depth; names++) {
            Map<List<String>, Integer> known = new LinkedHashMap<>();
            int[] inner = new int[left.length];
            for (int i = 0; i < left.length; i++) {
                inner[i] = known.computeIfAbsent(paths.get(i).subList(0, names), name -> known.size());
            }
            layers.add(layer(List.copyOf(known.keySet()), inner, groups, left));
            groups = inner;
        }
        return new NestedValues(values[0], List.copyOf(layers), squares(left, groups, layers.get(depth)));
    }

    private static Layer layer(List<List<String>> names, int[] groups, int[] outer, double[] values) {
        int[] parents = new int[names.size()];
        int[] sizes = new int[names.size()];
        double[] means = new double[names.size()];
        for (int i = 0; i < values.length; i++) {
            parents[groups[i]] = outer[i];
            sizes[groups[i]]++;
            means[groups[i]] += values[i];
        }
        for (int group = 0; group < sizes.length; group++) {
            means[group] /= sizes[group];
        }
        return new Layer(names, parents, sizes, means);
    }

    private static double[] squares(double[] values, int[] groups, Layer innermost) {
        double[] squares = new double[innermost.groups()];
        for (int i = 0; i < values.length; i++) {
            double deviation = values[i] - innermost.means()[groups[i]];
            squares[groups[i]] += deviation * deviation;
        }
        return squares;
    }

    /** Returns how many layers are named. */
    int depth() {
        return layers.size() - 1;
    }

    int count() {
        return layers.get(0).sizes()[0];
    }

    Layer innermost() {
        return layers.get(depth());
    }

    /** Returns the squares of every named layer about the layer before, and last those of the values. */
    List<MeanSquare> squares() {
        List<MeanSquare> squares = new ArrayList<>();
        for (int i = 1; i <= depth(); i++) {
            Layer layer = layers.get(i);
            Layer outer = layers.get(i - 1);
            double sum = 0;
            for (int group = 0; group < layer.groups(); group++) {
                double deviation = layer.means()[group] - outer.means()[layer.parents()[group]];
                sum += layer.sizes()[group] * deviation * deviation;
            }
            squares.add(new MeanSquare(layer.groups() - outer.groups(), sum));
        }
        squares.add(new MeanSquare(
                count() - innermost().groups(), Arrays.stream(within).sum()));
        return squares;
    }

    /** Returns whether, at every layer, all groups hold as many groups or values. */
    boolean isBalanced() {
        return layers.stream()
                .allMatch(layer -> Arrays.stream(layer.sizes()).distinct().count() == 1
                        && Arrays.stream(children(layer)).distinct().count() <= 1);
    }

    private int[] children(Layer layer) {
        int next = layers.indexOf(layer) + 1;
        if (next == layers.size()) {
            return new int[0];
        }
        int[] children = new int[layer.groups()];
        for (int parent : layers.get(next).parents()) {
            children[parent]++;
        }
        return children;
    }
}
