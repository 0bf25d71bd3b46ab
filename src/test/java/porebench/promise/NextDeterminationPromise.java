package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.trial.NextDetermination;

/** The range in which 95 of 100 next determinations of a mix are said to lie. */
final class NextDeterminationPromise implements Promise {
    private static final int TRIALS = 3;

    @Override
    public String name() {
        return "The next determination";
    }

    @Override
    public String sentence() {
        return "95 of 100 next determinations of a mix lie between the two figures";
    }

    @Override
    public int fewRuns() {
        return 300;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
                    for (double between : new double[] {0, 0.05, 0.15}) {
                        for (int count : new int[] {3, 6, 12}) {
                            cells.add(cell(new Dial(type, division), sigma, between, count, runs));
                        }
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, double between, int count, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_129L + count + Math.round(1000 * (sigma + between)));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            double factor = dial.anyFactor(random);
            List<Double> means = new ArrayList<>();
            for (int i = 0; i <= count; i++) {
                double own = factor + between * random.nextGaussian();
                means.add(Arrays.stream(dial.read(own, sigma, TRIALS, random))
                        .average()
                        .orElseThrow());
            }
            double next = means.remove(count);
            NextDetermination said =
                    NextDetermination.of(means, dial.type(), dial.division()).orElseThrow();
            hits += said.lowPercent() <= next && next <= said.highPercent() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, between determinations %s, after %d",
                        dial.type(),
                        dial.division(),
                        sigma,
                        between,
                        count),
                Cell.Way.AT_LEAST,
                NextDetermination.CONFIDENCE,
                hits,
                runs);
    }
}
