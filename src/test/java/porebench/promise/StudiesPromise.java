package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.statistics.comparison.LaboratoryBias;
import porebench.statistics.comparison.LaboratoryComparison;
import porebench.statistics.variance.GaugeStudy;
import porebench.statistics.variance.VarianceInterval;

/** The intervals that studies of operators and comparisons of laboratories state. */
final class StudiesPromise implements Promise {
    private static final double CONFIDENCE = 0.95;
    private static final double SIGMA = 0.1;
    private static final int REPEATS = 2;
    private static final int LEVELS = 2;

    /** Comparisons of laboratories take little, and have so many times the runs. */
    private static final int CHEAP = 8;

    /** Hits and statements, one a kind of interval, in the order in which they were first made. */
    private static final class Tally {
        private final Map<String, int[]> counts = new LinkedHashMap<>();

        void add(String of, boolean holds) {
            int[] count = counts.computeIfAbsent(of, any -> new int[2]);
            count[0] += holds ? 1 : 0;
            count[1]++;
        }

        List<Cell> cells(String layout) {
            return counts.entrySet().stream()
                    .map(one -> Cell.counted(
                            layout + ": " + one.getKey(),
                            Cell.Way.AT_LEAST,
                            CONFIDENCE,
                            one.getValue()[0],
                            one.getValue()[1]))
                    .toList();
        }
    }

    @Override
    public String name() {
        return "Studies of operators and of laboratories";
    }

    @Override
    public String sentence() {
        return "the 95 % intervals of a study hold the true figures";
    }

    @Override
    public int fewRuns() {
        return 5;
    }

    @Override
    public int manyRuns() {
        return 500;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.1}) {
            for (double between : new double[] {0, 0.1, 0.3}) {
                for (int[] sizes : new int[][] {{3, 10}, {5, 5}}) {
                    cells.addAll(operators(new Dial(MeterType.B, division), between, sizes, runs));
                }
                for (int laboratories : new int[] {4, 12}) {
                    cells.addAll(laboratories(new Dial(MeterType.B, division), between, laboratories, CHEAP * runs));
                }
            }
        }
        return cells;
    }

    private static boolean holds(VarianceInterval interval, double truth) {
        return interval.low() <= truth && truth <= interval.high();
    }

    private static double[] effects(int count, double deviation, SplittableRandom random) {
        return random.doubles(count)
                .map(any -> deviation * random.nextGaussian())
                .toArray();
    }

    /** Samples differ by 1 % air. */
    private static List<Cell> operators(Dial dial, double between, int[] sizes, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_143L + sizes[0] + Math.round(100 * between));
        double left = SIGMA * SIGMA + dial.division() * dial.division() / 12;
        double ofSamples = 1;
        double gauge = left + between * between;
        Tally tally = new Tally();
        for (int run = 0; run < runs; run++) {
            double factor = dial.anyFactor(random);
            double[] samples = effects(sizes[1], Math.sqrt(ofSamples), random);
            double[][][] readings = Arrays.stream(effects(sizes[0], between, random))
                    .mapToObj(operator -> Arrays.stream(samples)
                            .mapToObj(sample -> dial.read(5 + factor + operator + sample, SIGMA, REPEATS, random))
                            .toArray(double[][]::new))
                    .toArray(double[][][]::new);
            GaugeStudy study = GaugeStudy.of(readings, false, CONFIDENCE, run);
            tally.add("repeats", holds(study.repeatability().interval(), left));
            tally.add("operators", holds(study.operator().interval(), between * between));
            study.gaugeShareInterval()
                    .ifPresent(interval -> tally.add("share of reading", holds(interval, gauge / (gauge + ofSamples))));
        }
        return tally.cells(String.format(
                Locale.ROOT,
                "division %s, operators differ by %s, %d operators, %d samples",
                dial.division(),
                between,
                sizes[0],
                sizes[1]));
    }

    /** A bias is against what all laboratories of the kind have in common, which is 0 here. */
    private static List<Cell> laboratories(Dial dial, double between, int laboratories, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_144L + laboratories + Math.round(100 * between));
        double left = SIGMA * SIGMA + dial.division() * dial.division() / 12;
        Tally tally = new Tally();
        for (int run = 0; run < runs; run++) {
            double[] own = effects(laboratories, between, random);
            List<LaboratoryComparison> levels = new ArrayList<>();
            for (int level = 0; level < LEVELS; level++) {
                double factor = level + dial.anyFactor(random);
                List<LaboratoryComparison.Cell> cells = new ArrayList<>();
                for (int i = 0; i < laboratories; i++) {
                    cells.add(
                            LaboratoryComparison.Cell.of("L" + i, dial.read(factor + own[i], SIGMA, REPEATS, random)));
                }
                levels.add(LaboratoryComparison.of(dial.division(), cells));
            }
            LaboratoryComparison first = levels.get(0);
            first.repeatabilityInterval(CONFIDENCE)
                    .ifPresent(interval -> tally.add("s_r", holds(interval, Math.sqrt(left))));
            first.reproducibilityInterval(CONFIDENCE)
                    .ifPresent(interval -> tally.add("s_R", holds(interval, Math.sqrt(left + between * between))));
            LaboratoryBias.of(levels, dial.division())
                    .meaningful()
                    .ifPresent(biases -> tally.add(
                            "U of a bias",
                            Math.abs(biases.get(0).bias() - own[0])
                                    <= biases.get(0).expanded()));
        }
        return tally.cells(String.format(
                Locale.ROOT,
                "division %s, laboratories differ by %s, %d laboratories",
                dial.division(),
                between,
                laboratories));
    }
}
