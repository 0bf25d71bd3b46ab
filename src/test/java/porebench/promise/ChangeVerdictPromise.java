package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonVerdict;

/** What is advised at one look: a factor that did not move is rarely replaced, one that moved by the margin rarely kept. */
final class ChangeVerdictPromise implements Promise {
    static final double MARGIN = 0.05;
    private static final double SAID = 0.05;

    @Override
    public String name() {
        return "Keep or replace at one look";
    }

    @Override
    public String sentence() {
        return "at one look a factor that did not move is replaced in at most 5 of 100 cases, and one that moved by the margin is"
                + " kept in at most 5";
    }

    @Override
    public int fewRuns() {
        return 20;
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
                for (double scatter : new double[] {0.02, 0.05, 0.1}) {
                    ChangeBench alone = new ChangeBench(new Dial(type, division), scatter, 0);
                    ChangeBench differing = new ChangeBench(new Dial(type, division), scatter, 0.05);
                    for (int trials : new int[] {2, 3, 4, 8, 12}) {
                        cells.add(cell(alone, 1, trials, 0, runs));
                        cells.add(cell(alone, 1, trials, MARGIN, runs));
                    }
                    cells.add(cell(differing, 3, 3, 0, runs));
                    cells.add(cell(differing, 3, 3, MARGIN, runs));
                }
            }
        }
        return cells;
    }

    private static Cell cell(ChangeBench bench, int determinations, int trials, double moved, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_130L + trials);
        ComparisonVerdict wrong = moved == 0 ? ComparisonVerdict.REPLACE : ComparisonVerdict.KEEP;
        int errors = 0;
        for (int run = 0; run < runs; run++) {
            double factor = bench.dial().anyFactor(random);
            BeforeAndAfter found = BeforeAndAfter.of(
                    bench.draw(factor, determinations, trials, random),
                    bench.draw(factor + (run % 2 == 0 ? moved : -moved), determinations, trials, random),
                    bench.dial().division(),
                    bench.dial().type() == MeterType.A,
                    Optional.empty());
            errors += found.verdict(MARGIN) == wrong ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "%s, %d of %d on each side, %s",
                        bench,
                        determinations,
                        trials,
                        moved == 0 ? "not moved, replaced" : "moved by the margin, kept"),
                Cell.Way.AT_MOST,
                SAID,
                errors,
                runs);
    }
}
