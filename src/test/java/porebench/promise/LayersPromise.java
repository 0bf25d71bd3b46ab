package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import porebench.method.MeterType;
import porebench.statistics.variance.CrossedVariances;
import porebench.statistics.variance.VarianceInterval;
import porebench.statistics.variance.VarianceLayers;

/** The interval in which the variance of a layer is said to lie, of groups within groups and of layers that cross. */
final class LayersPromise implements Promise {
    private static final double CONFIDENCE = 0.95;
    private static final double SIGMA = 0.04;
    private static final int TRIALS = 3;

    /** Groups of each layer, and the standard deviations between them, in % air. */
    private record Layout(boolean isCrossed, int[] groups, double... between) {
        String name(int layer) {
            List<String> names = isCrossed
                    ? List.of("operators", "meters", "determinations", "what is left")
                    : List.of("mixes", "determinations of each", "repeats");
            return names.get(layer);
        }
    }

    @Override
    public String name() {
        return "How much a layer varies";
    }

    @Override
    public String sentence() {
        return "the 95 % interval of a layer's variance holds the true one";
    }

    @Override
    public int fewRuns() {
        return 3;
    }

    @Override
    public int manyRuns() {
        return 500;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.1}) {
            for (double[] between : new double[][] {{0.05, 0.05, 0.1}, {0, 0.1, 0.05}}) {
                for (int[] groups : new int[][] {{2, 2, 6}, {3, 2, 8}, {6, 4, 16}}) {
                    cells.addAll(cells(new Layout(true, groups, between), division, runs));
                }
            }
            for (double[] between : new double[][] {{0.1, 0.05}, {0.1, 0}, {0, 0.05}}) {
                for (int[] groups : new int[][] {{2, 3}, {4, 2}, {10, 2}}) {
                    cells.addAll(cells(new Layout(false, groups, between), division, runs));
                }
            }
        }
        return cells;
    }

    private static List<Cell> cells(Layout layout, double division, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_141L + layout.groups()[0]);
        Dial dial = new Dial(MeterType.B, division);
        int lines = layout.groups().length + 1;
        int[] hits = new int[lines];
        int[] said = new int[lines];
        for (int run = 0; run < runs; run++) {
            List<VarianceInterval> intervals = intervals(layout, dial, random);
            for (int line = 0; line < intervals.size(); line++) {
                double deviation = line < layout.between().length ? layout.between()[line] : SIGMA;
                said[line]++;
                hits[line] += holds(intervals.get(line), deviation, line < lines - 1 ? 0 : division) ? 1 : 0;
            }
        }
        List<Cell> cells = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            if (said[line] > 0) {
                String of = String.format(
                        Locale.ROOT,
                        "%s %s, division %s, between them %s: %s",
                        layout.isCrossed() ? "crossed" : "within one another",
                        IntStream.of(layout.groups()).boxed().toList(),
                        division,
                        DoubleStream.of(layout.between()).boxed().toList(),
                        layout.name(line));
                cells.add(Cell.counted(of, Cell.Way.AT_LEAST, CONFIDENCE, hits[line], said[line]));
            }
        }
        return cells;
    }

    /** What is left holds the rounding to a division besides the scatter of the trials. */
    private static boolean holds(VarianceInterval interval, double deviation, double division) {
        double truth = deviation * deviation + division * division / 12;
        return interval.low() <= truth && truth <= interval.high();
    }

    private static List<VarianceInterval> intervals(Layout layout, Dial dial, SplittableRandom random) {
        return layout.isCrossed() ? crossed(layout, dial, random) : nested(layout, dial, random);
    }

    private static double[] effects(int count, double deviation, SplittableRandom random) {
        return IntStream.range(0, count)
                .mapToDouble(any -> deviation * random.nextGaussian())
                .toArray();
    }

    /** Operators and meters come as they like, another one perhaps with each trial. */
    private static List<VarianceInterval> crossed(Layout layout, Dial dial, SplittableRandom random) {
        double[] operators = effects(layout.groups()[0], layout.between()[0], random);
        double[] meters = effects(layout.groups()[1], layout.between()[1], random);
        double[] determinations = effects(layout.groups()[2], layout.between()[2], random);
        double factor = dial.anyFactor(random);
        List<List<String>> names = new ArrayList<>();
        double[] values = new double[TRIALS * determinations.length];
        for (int i = 0; i < values.length; i++) {
            int operator = random.nextInt(operators.length);
            int meter = random.nextInt(meters.length);
            names.add(List.of("o" + operator, "m" + meter, "d" + i / TRIALS));
            values[i] = dial.read(
                            factor + operators[operator] + meters[meter] + determinations[i / TRIALS],
                            SIGMA,
                            1,
                            random)[0];
        }
        if (!CrossedVariances.notToldApart(names).isEmpty()) {
            return List.of();
        }
        return CrossedVariances.of(names, CONFIDENCE, values)
                .meaningful()
                .map(found -> {
                    List<VarianceInterval> intervals = new ArrayList<>(found.layers().stream()
                            .map(CrossedVariances.Layer::interval)
                            .toList());
                    intervals.add(found.values().interval());
                    return intervals;
                })
                .orElse(List.of());
    }

    private static List<VarianceInterval> nested(Layout layout, Dial dial, SplittableRandom random) {
        double factor = dial.anyFactor(random);
        List<List<String>> names = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (double mix : effects(layout.groups()[0], layout.between()[0], random)) {
            int first = values.size();
            for (double determination : effects(layout.groups()[1], layout.between()[1], random)) {
                int number = values.size();
                for (double value : dial.read(factor + mix + determination, SIGMA, TRIALS, random)) {
                    names.add(List.of("mix " + first, "determination " + number));
                    values.add(value);
                }
            }
        }
        return VarianceLayers.of(
                        names,
                        CONFIDENCE,
                        values.stream().mapToDouble(Double::doubleValue).toArray())
                .meaningful()
                .filter(found -> found.layers().stream()
                        .map(VarianceLayers.Layer::variance)
                        .allMatch(OptionalDouble::isPresent))
                .filter(found -> found.values().interval().isPresent())
                .map(found -> {
                    List<VarianceInterval> intervals = new ArrayList<>(found.layers().stream()
                            .map(layer -> layer.interval().orElseThrow())
                            .toList());
                    intervals.add(found.values().interval().orElseThrow());
                    return intervals;
                })
                .orElse(List.of());
    }
}
