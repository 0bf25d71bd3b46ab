package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.hold.AirPair;
import porebench.method.hold.HoldShift;

/** How often the interval of a shift that asks for a recheck holds the true one. */
final class HoldShiftPromise implements Promise {
    private static final double SCATTER = 0.4;
    private static final int SEEN_WITHIN = 60;
    private static final int LATER = 20;

    @Override
    public String name() {
        return "Does G hold: the shift";
    }

    @Override
    public String sentence() {
        return "the 95 % interval of a shift of three quarters of the scatter or more holds the true one, at the signal and 20 pairs later";
    }

    @Override
    public int fewRuns() {
        return 60;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (int before : new int[] {8, 20, 50, 100}) {
            for (double shift : new double[] {HoldShift.NOT_SMALL, 1, 1.5, 2, 3}) {
                DrawnPairs pairs = new DrawnPairs(SCATTER, 0.1, 0, before, shift);
                for (int later : new int[] {0, LATER}) {
                    cells.add(cell(pairs, later, runs));
                }
            }
        }
        return cells;
    }

    /** Only runs that signal after the shift, within sixty pairs of it, have an interval to look at. */
    private static Cell cell(DrawnPairs pairs, int later, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_129L + pairs.before());
        double truth = pairs.shift() * SCATTER;
        int hits = 0;
        int seen = 0;
        for (int run = 0; run < runs; run++) {
            List<AirPair> drawn = pairs.draw(pairs.before() + SEEN_WITHIN + LATER, random);
            int signal = DrawnPairs.toSignal(drawn);
            if (signal > pairs.before() && signal <= pairs.before() + SEEN_WITHIN) {
                HoldShift shift = DrawnPairs.hold(drawn, signal + later).shift().orElseThrow();
                seen++;
                hits += shift.low() <= truth && truth <= shift.high() ? 1 : 0;
            }
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "shift of %s scatters after %d pairs, %s",
                        pairs.shift(),
                        pairs.before(),
                        later == 0 ? "at the signal" : "20 pairs later"),
                Cell.Way.AT_LEAST,
                HoldShift.CONFIDENCE,
                hits,
                Math.max(1, seen));
    }
}
