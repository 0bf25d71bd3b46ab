package porebench.chart.control;

import java.util.ArrayList;
import java.util.List;

/** In which row above the points the words about each change stand, so that neighbours do not run into each other. */
final class ChangeRows {
    /** About how many characters a plot of usual width holds beside one another. */
    private static final double CHARACTERS = 105;

    private static final int MOST_ROWS = 5;

    /** From this share of the plot on, words stand to the left of their line, where they are not cut off. */
    private static final double FAR_RIGHT = 0.75;

    private ChangeRows() {}

    /**
     * A change with its place.
     *
     * @param row the row of its words, the uppermost being 0
     * @param isLeft whether its words stand to the left of its line
     */
    record Placed(ControlPlot.ChangeMark change, int row, boolean isLeft) {}

    static List<Placed> of(List<ControlPlot.ChangeMark> changes, int points) {
        double[] taken = new double[MOST_ROWS];
        List<Placed> placed = new ArrayList<>();
        for (ControlPlot.ChangeMark change : changes) {
            double at = CHARACTERS * change.before() / Math.max(1, points);
            boolean isLeft = at > FAR_RIGHT * CHARACTERS;
            double from = isLeft ? at - change.words().length() : at;
            int row = row(taken, from);
            taken[row] = from + change.words().length() + 2;
            placed.add(new Placed(change, row, isLeft));
        }
        return placed;
    }

    private static int row(double[] taken, double from) {
        int best = 0;
        for (int row = 0; row < taken.length; row++) {
            if (taken[row] <= from) {
                return row;
            }
            best = taken[row] < taken[best] ? row : best;
        }
        return best;
    }

    /** Returns how many rows are used. */
    static int rows(List<Placed> placed) {
        return placed.stream().mapToInt(each -> each.row() + 1).max().orElse(0);
    }
}
