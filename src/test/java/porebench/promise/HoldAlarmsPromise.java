package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import porebench.method.hold.Hold;
import porebench.statistics.summary.Summary;

/** How many pairs there are to a false signal and to a shift that can be told, against what is said. */
final class HoldAlarmsPromise implements Promise {
    /** How much sooner a false signal, and how much later a shift, may come. */
    private static final double NO_SOONER = 0.9;

    private static final double NO_LATER = 1.25;

    /** So many pairs make what was before well known. */
    private static final int WELL_KNOWN = 200;

    @Override
    public String name() {
        return "Does G hold: signals";
    }

    @Override
    public String sentence() {
        return "of pairs that are not like those before them, a false signal comes after nine tenths of the stated pairs or more, and after"
                + " 200 pairs the shift that can be told is seen after five quarters of the stated pairs or fewer, on average";
    }

    @Override
    public int fewRuns() {
        return 60;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    /** Seen is a part of what is said. */
    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (DrawnPairs pairs :
                List.of(DrawnPairs.quiet(0.4, 0, 0), DrawnPairs.quiet(0.4, 0.1, 0), DrawnPairs.quiet(0.1, 0.1, 0))) {
            Summary lengths = Summary.of(pairs.runLengths(runs, 12));
            cells.add(new Cell(
                    "pairs to a false signal, " + pairs,
                    Cell.Way.AT_LEAST,
                    NO_SOONER,
                    lengths.mean() / Hold.runLength(),
                    lengths.standardError().orElseThrow() / Hold.runLength()));
        }
        Hold like = DrawnPairs.hold(DrawnPairs.quiet(0.4, 0, 0).draw(WELL_KNOWN, new SplittableRandom(1)), WELL_KNOWN);
        double shift = like.tellable().orElseThrow() / like.spread().orElseThrow();
        Summary delays = Summary.of(delays(new DrawnPairs(0.4, 0.1, 0, WELL_KNOWN, shift), runs));
        cells.add(new Cell(
                "pairs to a shift that can be told, after 200",
                Cell.Way.AT_MOST,
                NO_LATER,
                delays.mean() / Hold.PAIRS_TO_TELL,
                delays.standardError().orElseThrow() / Hold.PAIRS_TO_TELL));
        return cells;
    }

    /** Runs with a signal before the shift are drawn again. */
    private static double[] delays(DrawnPairs pairs, int runs) {
        SplittableRandom random = new SplittableRandom(7);
        double[] delays = new double[runs];
        int run = 0;
        while (run < runs) {
            int seen = DrawnPairs.toSignal(pairs.draw(WELL_KNOWN + 400, random));
            if (seen > WELL_KNOWN) {
                delays[run++] = seen - WELL_KNOWN;
            }
        }
        return delays;
    }
}
