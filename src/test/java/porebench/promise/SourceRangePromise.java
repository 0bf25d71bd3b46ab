package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.evidence.SourceFactors;
import porebench.method.MeterType;
import porebench.method.trial.Scatter;
import porebench.statistics.summary.ToleranceInterval;

/** The range that is said to hold nine of ten determinations with a source. */
final class SourceRangePromise implements Promise {
    private static final int TRIALS = 3;

    /** How many further determinations show what share a range holds; their chance is small beside that of the range. */
    private static final int FURTHER = 400;

    @Override
    public String name() {
        return "The factors of a source";
    }

    @Override
    public String sentence() {
        return "95 of 100 such ranges hold nine of ten determinations with the source";
    }

    @Override
    public int fewRuns() {
        return 12;
    }

    @Override
    public int manyRuns() {
        return 800;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.05, 0.1}) {
            for (double sigma : new double[] {0.02, 0.15}) {
                for (double between : new double[] {0.02, 0.05, 0.15}) {
                    for (int mixes : new int[] {5, 12}) {
                        cells.add(cell(new Dial(MeterType.B, division), sigma, between, mixes, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, double between, int mixes, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_131L + mixes + Math.round(1000 * (sigma + between)));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            double factor = dial.anyFactor(random);
            ToleranceInterval range = SourceFactors.of(
                            means(dial, factor, sigma, between, mixes, random),
                            Scatter.ofTheDial(dial.type(), dial.division()))
                    .range()
                    .orElseThrow();
            long held = Arrays.stream(means(dial, factor, sigma, between, FURTHER, random))
                    .filter(mean -> range.low() <= mean && mean <= range.high())
                    .count();
            hits += held >= SourceFactors.CONTENT * FURTHER ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "division %s, scatter %s, between mixes %s, %d mixes",
                        dial.division(),
                        sigma,
                        between,
                        mixes),
                Cell.Way.AT_LEAST,
                SourceFactors.CONFIDENCE,
                hits,
                runs);
    }

    private static double[] means(
            Dial dial, double factor, double sigma, double between, int count, SplittableRandom random) {
        double[] means = new double[count];
        for (int i = 0; i < count; i++) {
            means[i] = Arrays.stream(dial.read(factor + between * random.nextGaussian(), sigma, TRIALS, random))
                    .average()
                    .orElseThrow();
        }
        return means;
    }
}
