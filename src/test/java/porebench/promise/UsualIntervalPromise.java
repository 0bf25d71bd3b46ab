package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.trial.LaboratoryCheck;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/** The interval in which the scatter of the laboratory's trials is said to lie. */
final class UsualIntervalPromise implements Promise {
    private static final int TRIALS = 3;

    @Override
    public String name() {
        return "How this laboratory's trials scatter";
    }

    @Override
    public String sentence() {
        return "the 95 % interval of the scatter of the laboratory's trials holds the true one";
    }

    @Override
    public int fewRuns() {
        return 200;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.05, 0.1}) {
            for (double sigma : new double[] {0.05, 0.1, 0.15}) {
                for (int determinations : new int[] {6, 12, 30}) {
                    for (boolean equal : new boolean[] {true, false}) {
                        cells.add(cell(new Dial(MeterType.B, division), sigma, determinations, equal, runs));
                    }
                }
            }
        }
        return cells;
    }

    /** Unequal: every second determination is of a mix that scatters twice as much. */
    private static Cell cell(Dial dial, double sigma, int determinations, boolean equal, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_142L + determinations + Math.round(1000 * sigma));
        double ofDivision = dial.division() * dial.division() / 12;
        double truth = Math.sqrt(sigma * sigma * (equal ? 1 : 2.5) + ofDivision);
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            List<Summary> all = new ArrayList<>();
            for (int i = 0; i < determinations; i++) {
                double own = equal || i % 2 == 0 ? sigma : 2 * sigma;
                all.add(Summary.of(dial.read(dial.anyFactor(random), own, TRIALS, random)));
            }
            PooledDeviation.Interval interval = LaboratoryCheck.of(
                            new double[] {0.4}, dial.type(), dial.division(), PooledDeviation.of(all))
                    .orElseThrow()
                    .usual();
            hits += interval.low() <= truth && truth <= interval.high() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "division %s, scatter %s, %d determinations, %s",
                        dial.division(),
                        sigma,
                        determinations,
                        equal ? "equal" : "unequal"),
                Cell.Way.AT_LEAST,
                LaboratoryCheck.CONFIDENCE,
                hits,
                runs);
    }
}
