package porebench.statistics.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import porebench.quantity.Require;

/**
 * Points of a control chart drawn by chance, nothing having changed.
 *
 * @param groups the values of each point, in order
 * @param lots the subgroup of each point, where single values are charted
 */
public record DrawnPoints(List<double[]> groups, List<Integer> lots) {
    /**
     * What points are like; when more are drawn than listed, the list begins again with new subgroups.
     *
     * @param sizes how many values each point has, at least one point
     * @param lots the subgroup of each point, as many
     * @param kinds what each point is of, as many; where there are several, values are taken from the mean of their own kind
     * @param between the standard deviation of what is a subgroup's own, in the unit of the values
     * @param within the standard deviation of values within a subgroup, in the unit of the values
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param centre where values lie, if that is known; else anywhere within a division
     * @param base where the limits of the real chart come from
     */
    public record Process(
            List<Integer> sizes,
            List<Integer> lots,
            List<Integer> kinds,
            double between,
            double within,
            double division,
            OptionalDouble centre,
            PhasedChart.Base base) {
        /** Returns what lies anywhere within a division. */
        public Process(
                List<Integer> sizes,
                List<Integer> lots,
                List<Integer> kinds,
                double between,
                double within,
                double division,
                PhasedChart.Base base) {
            this(sizes, lots, kinds, between, within, division, OptionalDouble.empty(), base);
        }

        public Process {
            sizes = List.copyOf(sizes);
            lots = List.copyOf(lots);
            kinds = List.copyOf(kinds);
            Require.atLeast("count of sizes", sizes.size(), 1);
            Require.within("count of lots", lots.size(), sizes.size(), sizes.size());
            Require.within("count of kinds", kinds.size(), sizes.size(), sizes.size());
            Require.atLeastZero("between", between);
            Require.atLeastZero("within", within);
            Require.atLeastZero("division", division);
        }

        /** Returns subgroups of one kind whose limits come from all of them. */
        public static Process plain(List<Integer> sizes, double between, double within, double division) {
            return new Process(
                    sizes,
                    IntStream.range(0, sizes.size()).boxed().toList(),
                    Collections.nCopies(sizes.size(), 0),
                    between,
                    within,
                    division,
                    new PhasedChart.Base(0, sizes.size(), true));
        }

        /** Returns the same about a centre that is known. */
        public Process about(double known) {
            return new Process(sizes, lots, kinds, between, within, division, OptionalDouble.of(known), base);
        }

        /** Returns the same with points as far spread as limits take them to be, where the base showed less than rounding gives. */
        public Process noQuieterThanItsDivision() {
            double size = sizes.stream().mapToInt(Integer::intValue).average().orElseThrow();
            double least = BaseEstimate.ofDivision(division);
            double lacking = least * least - between * between - within * within / size;
            return lacking <= 0
                    ? this
                    : new Process(
                            sizes, lots, kinds, Math.sqrt(between * between + lacking), within, division, centre, base);
        }
    }

    /** Returns the first value of every point. */
    public double[] single() {
        return groups.stream().mapToDouble(group -> group[0]).toArray();
    }

    static DrawnPoints of(Process process, int count, PhasedChart.Base base, Random random) {
        Map<Integer, Double> levels = new HashMap<>();
        Map<Integer, Double> own = new HashMap<>();
        int listed = process.sizes().size();
        List<double[]> groups = new ArrayList<>();
        List<Integer> lots = new ArrayList<>();
        int[] kinds = new int[count];
        for (int i = 0; i < count; i++) {
            int at = i % listed;
            kinds[i] = process.kinds().get(at);
            lots.add(process.lots().get(at) + i / listed * listed);
            double level = levels.computeIfAbsent(
                    kinds[i], any -> process.centre().orElseGet(() -> process.division() * random.nextDouble()));
            double ofLot = own.computeIfAbsent(lots.get(i), any -> process.between() * random.nextGaussian());
            double[] values = new double[process.sizes().get(at)];
            for (int j = 0; j < values.length; j++) {
                values[j] = rounded(level + ofLot + process.within() * random.nextGaussian(), process.division());
            }
            groups.add(values);
        }
        refer(groups, kinds, lots, base);
        return new DrawnPoints(groups, lots);
    }

    private static double rounded(double value, double division) {
        return division > 0 ? Math.rint(value / division) * division : value;
    }

    /** Takes values of several kinds from the mean of their own in the base, or of their first subgroup where that has none. */
    private static void refer(List<double[]> groups, int[] kinds, List<Integer> lots, PhasedChart.Base base) {
        Map<Integer, double[]> ofBase = new HashMap<>();
        Map<Integer, double[]> ofFirst = new HashMap<>();
        Map<Integer, Integer> first = new HashMap<>();
        for (int i = 0; i < kinds.length; i++) {
            if (i >= base.first() && i - base.first() < base.count()) {
                add(ofBase.computeIfAbsent(kinds[i], any -> new double[2]), groups.get(i));
            }
            if (isOfFirst(first, kinds[i], lots.get(i))) {
                add(ofFirst.computeIfAbsent(kinds[i], any -> new double[2]), groups.get(i));
            }
        }
        if (first.size() < 2) {
            return;
        }
        for (int i = 0; i < kinds.length; i++) {
            double[] inBase = ofBase.getOrDefault(kinds[i], new double[2]);
            double[] sum = inBase[1] >= 2 ? inBase : ofFirst.getOrDefault(kinds[i], inBase);
            double[] values = groups.get(i);
            for (int j = 0; j < values.length; j++) {
                values[j] -= sum[0] / sum[1];
            }
        }
    }

    private static boolean isOfFirst(Map<Integer, Integer> first, int kind, int lot) {
        return first.computeIfAbsent(kind, any -> lot) == lot;
    }

    private static void add(double[] sum, double[] values) {
        for (double value : values) {
            sum[0] += value;
            sum[1]++;
        }
    }
}
