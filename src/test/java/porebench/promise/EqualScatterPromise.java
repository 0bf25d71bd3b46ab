package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.statistics.comparison.EqualScatterTest;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/** How often mixes that scatter alike are said not to. */
final class EqualScatterPromise implements Promise {
    private static final double LEVEL = 0.05;

    @Override
    public String name() {
        return "Mixes scatter alike";
    }

    @Override
    public String sentence() {
        return "of 100 laboratories whose mixes scatter alike, at most 5 are told that theirs do not";
    }

    @Override
    public int fewRuns() {
        return 20;
    }

    @Override
    public int manyRuns() {
        return 1000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
                    for (int mixes : new int[] {4, 12}) {
                        cells.add(cell(new Dial(type, division), sigma, mixes, runs));
                    }
                }
            }
        }
        return cells;
    }

    /** Mixes with one determination of three trials, every second with two. */
    private static Cell cell(Dial dial, double sigma, int mixes, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_130L + mixes + Math.round(1000 * sigma));
        int alarms = 0;
        for (int run = 0; run < runs; run++) {
            List<PooledDeviation> sets = new ArrayList<>();
            for (int mix = 0; mix < mixes; mix++) {
                List<Summary> determinations = new ArrayList<>();
                for (int i = 0; i <= mix % 2; i++) {
                    determinations.add(Summary.of(dial.read(dial.anyFactor(random), sigma, 3, random)));
                }
                PooledDeviation.of(determinations).ifPresent(sets::add);
            }
            alarms += EqualScatterTest.judge(dial.division(), dial.type() == MeterType.A, sets)
                            .meaningful()
                            .filter(test -> test.p() < LEVEL)
                            .isPresent()
                    ? 1
                    : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, %d mixes",
                        dial.type(),
                        dial.division(),
                        sigma,
                        mixes),
                Cell.Way.AT_MOST,
                LEVEL,
                alarms,
                runs);
    }
}
