package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.method.trial.NextTrial;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.StopRule;

/** The range in which 95 of 100 next trials are said to lie, by the trials of the mix alone. */
final class NextTrialPromise implements Promise {
    @Override
    public String name() {
        return "The next trial";
    }

    @Override
    public String sentence() {
        return "95 of 100 next trials lie between the two figures";
    }

    @Override
    public int fewRuns() {
        return 100;
    }

    @Override
    public int manyRuns() {
        return 2000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.05, 0.1}) {
            for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
                for (int count : new int[] {3, 5}) {
                    cells.add(cell(new Dial(MeterType.B, division), sigma, count, runs));
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, int count, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_128L + count + Math.round(1000 * sigma));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            double[] read = dial.read(dial.anyFactor(random), sigma, count + 1, random);
            NextTrial next = StopRule.of(
                            Arrays.copyOf(read, count),
                            dial.type(),
                            dial.division(),
                            Profiles.standard(),
                            ScatterElsewhere.NONE)
                    .orElseThrow()
                    .next()
                    .orElseThrow();
            hits += next.lowPercent() <= read[count] && read[count] <= next.highPercent() ? 1 : 0;
        }
        return Cell.counted(
                String.format(Locale.ROOT, "division %s, scatter %s, after %d trials", dial.division(), sigma, count),
                Cell.Way.AT_LEAST,
                0.95,
                hits,
                runs);
    }
}
