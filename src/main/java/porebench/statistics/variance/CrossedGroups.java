package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import porebench.quantity.Require;

/**
 * Values that are in a group of each of several layers, the layers crossing one another as it comes.
 *
 * <p>The first value is taken from all before anything is added up.
 *
 * @param origin what was taken from every value
 * @param left the values less the origin
 * @param layers the layers, in the order given
 */
record CrossedGroups(double origin, double[] left, List<Layer> layers) {
    /** A share of a layer's pattern this small that the others do not hold is rounding. */
    private static final double NOTHING = 1e-9;

    /**
     * One layer.
     *
     * @param groupOf the group that each value is in
     * @param sizes how many values each group holds
     */
    record Layer(int[] groupOf, int[] sizes) {
        int groups() {
            return sizes.length;
        }
    }

    /**
     * Sorts values into groups.
     *
     * @param names the names of each value's groups, one a layer, all as many
     * @param values at least one, each finite
     * @throws IllegalArgumentException if there is no value or no layer, one is not finite, or the names do not fit
     */
    static CrossedGroups of(List<List<String>> names, double... values) {
        Require.atLeast("count of values", values.length, 1);
        if (names.size() != values.length) {
            throw new IllegalArgumentException("count of names must be " + values.length + ", but is " + names.size());
        }
        int depth = Require.atLeast("count of layers", names.get(0).size(), 1);
        double[] left = new double[values.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = Require.finite("values[" + i + "]", values[i]) - values[0];
            if (names.get(i).size() != depth) {
                throw new IllegalArgumentException("names must be " + depth + ", but are " + names.get(i));
            }
        }
        List<Layer> layers = IntStream.range(0, depth)
                .mapToObj(
                        place -> layer(names.stream().map(all -> all.get(place)).toList()))
                .toList();
        return new CrossedGroups(values[0], left, layers);
    }

    private static Layer layer(List<String> names) {
        Map<String, Integer> known = new HashMap<>();
        int[] groupOf = new int[names.size()];
        for (int i = 0; i < groupOf.length; i++) {
            Integer before = known.putIfAbsent(names.get(i), known.size());
            groupOf[i] = before == null ? known.size() - 1 : before;
        }
        int[] sizes = new int[known.size()];
        Arrays.stream(groupOf).forEach(group -> sizes[group]++);
        return new Layer(groupOf, sizes);
    }

    int count() {
        return left.length;
    }

    /** Returns how many degrees of freedom are left besides the layers and the mean; at least 1. */
    int degreesLeft() {
        int taken = layers.stream().mapToInt(layer -> layer.groups() - 1).sum();
        return Math.max(1, count() - 1 - taken);
    }

    /** Returns the values as a layer, each a group of its own. */
    private Layer values() {
        int[] sizes = new int[count()];
        Arrays.fill(sizes, 1);
        return new Layer(IntStream.range(0, count()).toArray(), sizes);
    }

    /**
     * Returns the layers that no data of this pattern can tell from the others, the values being the last place.
     *
     * <p>A variance adds to the products of the values a pattern of ones, where two values share a group; the mean being
     * unknown, only what is left of the pattern after centring counts. A pattern that the other ones add up to tells
     * nothing of its own: meters of which each had one operator only.
     */
    List<Integer> notToldApart() {
        List<Layer> all = new ArrayList<>(layers);
        all.add(values());
        int count = all.size();
        double[][] products = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                products[i][j] = product(all.get(i), all.get(j));
                products[j][i] = products[i][j];
            }
        }
        List<Integer> everything = IntStream.range(0, count).boxed().toList();
        int rank = rank(products, everything);
        return everything.stream()
                .filter(place -> rank(
                                products,
                                everything.stream()
                                        .filter(other -> !other.equals(place))
                                        .toList())
                        == rank)
                .toList();
    }

    /** Returns the sum of the products of two centred patterns: over all pairs of groups, (n_ij - n_i n_j / n)^2. */
    private double product(Layer one, Layer other) {
        Map<Long, Integer> shared = new HashMap<>();
        for (int i = 0; i < count(); i++) {
            shared.merge((long) one.groupOf()[i] * count() + other.groupOf()[i], 1, Integer::sum);
        }
        double squares = squares(one) * squares(other) / ((double) count() * count());
        double sum = 0;
        for (Map.Entry<Long, Integer> pair : shared.entrySet()) {
            double expected = (double) one.sizes()[(int) (pair.getKey() / count())]
                    * other.sizes()[(int) (pair.getKey() % count())]
                    / count();
            double both = pair.getValue();
            sum += (both - expected) * (both - expected);
            squares -= expected * expected;
        }
        return sum + Math.max(0, squares);
    }

    private static double squares(Layer layer) {
        return Arrays.stream(layer.sizes())
                .mapToDouble(size -> (double) size * size)
                .sum();
    }

    /** Returns how many of some patterns are not made up of the others, taking the one with most left over each time. */
    private static int rank(double[][] products, List<Integer> places) {
        int count = places.size();
        double[][] left = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                int one = places.get(i);
                int other = places.get(j);
                double size = Math.sqrt(products[one][one] * products[other][other]);
                left[i][j] = size > 0 ? products[one][other] / size : 0;
            }
        }
        int rank = 0;
        List<Integer> open = new ArrayList<>(IntStream.range(0, count).boxed().toList());
        while (!open.isEmpty()) {
            Integer next = open.stream()
                    .max(Comparator.comparingDouble(i -> left[i][i]))
                    .orElseThrow();
            open.remove(next);
            if (left[next][next] <= NOTHING) {
                break;
            }
            rank++;
            for (int i : open) {
                double share = left[i][next] / left[next][next];
                for (int j : open) {
                    left[i][j] -= share * left[next][j];
                }
            }
        }
        return rank;
    }
}
