package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.method.trial.DeterminationSummary;
import porebench.statistics.summary.MeanInterval;

/** The 95 % interval of the mean of a determination, on the Variability page and in the evidence. */
final class MeanIntervalPromise implements Promise {
    @Override
    public String name() {
        return "Interval of the mean";
    }

    @Override
    public String sentence() {
        return "the 95 % interval of the mean holds the true factor";
    }

    @Override
    public int fewRuns() {
        return 300;
    }

    @Override
    public int manyRuns() {
        return 5000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
                    for (int count : new int[] {2, 3, 4, 6, 12}) {
                        cells.add(cell(new Dial(type, division), sigma, count, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, int count, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_127L + count + Math.round(1000 * sigma));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            double factor = dial.anyFactor(random);
            MeanInterval interval = DeterminationSummary.of(
                            dial.read(factor, sigma, count, random), dial.type(), dial.division(), Profiles.standard())
                    .orElseThrow()
                    .interval()
                    .orElseThrow();
            hits += interval.low() <= factor && factor <= interval.high() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, %d trials",
                        dial.type(),
                        dial.division(),
                        sigma,
                        count),
                Cell.Way.AT_LEAST,
                0.95,
                hits,
                runs);
    }
}
