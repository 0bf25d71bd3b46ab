package porebench.print.card;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.method.air.PassWindow;
import porebench.quantity.Slack;

/**
 * Which readings stand in the table of a factor card, and how they are set: in columns, read downwards.
 *
 * <p>All readings at which the load passes are there, and some on both sides. Where a fine division gives more readings than
 * can be read at arm's length, every second, fifth, tenth and so on is taken, and the card says so.
 *
 * @param rows the readings, rising
 * @param every one of how many divisions of the gauge stands in the table
 * @param columns the number of columns
 * @param lines the most readings in a column
 * @param size the size of the type, in points
 */
record ReadingGrid(List<PassWindow.Row> rows, int every, int columns, int lines, double size) {
    /** Height of a line over the size of the type. */
    static final double LINE = 1.19;

    /** In the hand: as many divisions as type of 9 points lets be. */
    static final Reach IN_THE_HAND = new Reach(9, 2, List.of(1, 2, 4, 5, 10, 20, 50, 100));
    /** At arm's length: steps between which a person reads on without counting. */
    static final Reach AT_ARMS_LENGTH = new Reach(LegibleType.AT_ARMS_LENGTH, 1, List.of(1, 2, 5, 10, 20, 50, 100));

    private static final double LARGEST = 13;
    private static final int AROUND_A_TARGET = 15;
    private static final int MOST_COLUMNS = 6;

    ReadingGrid {
        rows = List.copyOf(rows);
    }

    /** Measures how wide a reading with its air content is set, over the size of the type. */
    interface CellWidth {
        double of(List<PassWindow.Row> rows) throws IOException;
    }

    /**
     * The place the table has.
     *
     * @param width its width, in points
     * @param height its height below the headings, in points
     * @param cellWidth how wide a cell is
     */
    record Room(double width, double height, CellWidth cellWidth) {}

    /**
     * How far a table is read from.
     *
     * @param comfortable the type, in points, below which fewer readings are shown
     * @param onEachSide how many readings that fail stand on each side of those that pass, if the scale has them
     * @param steps of how many divisions one may be shown, rising from 1
     */
    record Reach(double comfortable, int onEachSide, List<Integer> steps) {}

    /**
     * Chooses the readings.
     *
     * @param window all readings of the gauge, at least one
     * @param target the target air, in % air, about which the table stands when no reading passes
     * @param place the place the table has
     * @param reach how far it is read from
     */
    static ReadingGrid choose(PassWindow window, BigDecimal target, Room place, Reach reach) throws IOException {
        ReadingGrid best = grid(window.rows(), 1, target, place, reach);
        for (int every : reach.steps()) {
            if (best.size >= reach.comfortable()) {
                break;
            }
            ReadingGrid grid = grid(window.rows(), every, target, place, reach);
            best = grid.size > best.size ? grid : best;
        }
        return best;
    }

    private static ReadingGrid grid(List<PassWindow.Row> all, int every, BigDecimal target, Room place, Reach reach)
            throws IOException {
        List<PassWindow.Row> stepped = new ArrayList<>();
        for (int index = 0; index < all.size(); index += every) {
            stepped.add(all.get(index));
        }
        Middle middle = Middle.of(stepped, target, reach.onEachSide());
        int needed = Math.min(stepped.size(), middle.wanted());
        double cell = place.cellWidth().of(middle.around(stepped, needed));
        int columns = bestColumns(place, cell, needed);
        double size = size(place, cell, needed, columns);
        int lines = Math.max(1, (int) Slack.over(place.height() / (LINE * size)));
        List<PassWindow.Row> shown = middle.around(stepped, columns * lines);
        // Readings added to fill the table are left out again when their longer numbers would make all smaller.
        while (shown.size() > needed && widest(place, columns, shown) < size) {
            shown = middle.around(stepped, shown.size() - 1);
        }
        int full = shown.size() / columns * columns;
        shown = full < needed ? shown : middle.around(stepped, full);
        int used = (shown.size() + columns - 1) / columns;
        return new ReadingGrid(shown, every, columns, used, Math.min(size, widest(place, columns, shown)));
    }

    /** Returns the largest type at which readings are no wider than their column, in points. */
    private static double widest(Room place, int columns, List<PassWindow.Row> rows) throws IOException {
        return place.width() / columns / place.cellWidth().of(rows);
    }

    private static int bestColumns(Room place, double cell, int needed) {
        int best = 2;
        for (int columns = 3; columns <= MOST_COLUMNS; columns++) {
            best = size(place, cell, needed, columns) > size(place, cell, needed, best) ? columns : best;
        }
        return best;
    }

    private static double size(Room place, double cell, int needed, int columns) {
        int lines = (needed + columns - 1) / columns;
        return Math.min(LARGEST, Math.min(place.width() / columns / cell, place.height() / lines / LINE));
    }

    /**
     * The readings the table stands about: those that pass, or the one nearest to the target.
     *
     * @param first the index of the first
     * @param last the index of the last
     * @param wanted how many readings the table should have at least
     */
    private record Middle(int first, int last, int wanted) {
        static Middle of(List<PassWindow.Row> rows, BigDecimal target, int onEachSide) {
            int first = -1;
            int last = -1;
            int nearest = 0;
            for (int index = 0; index < rows.size(); index++) {
                if (rows.get(index).passes()) {
                    first = first < 0 ? index : first;
                    last = index;
                }
                nearest = distance(rows.get(index), target).compareTo(distance(rows.get(nearest), target)) < 0
                        ? index
                        : nearest;
            }
            return first < 0
                    ? new Middle(nearest, nearest, AROUND_A_TARGET)
                    : new Middle(first, last, last - first + 1 + 2 * onEachSide);
        }

        private static BigDecimal distance(PassWindow.Row row, BigDecimal target) {
            return row.air().subtract(target).abs();
        }

        /** Returns some readings with these in their middle, as far as the scale has them. */
        List<PassWindow.Row> around(List<PassWindow.Row> rows, int count) {
            int shown = Math.min(rows.size(), count);
            int from = Math.max(0, Math.min((first + last + 1 - shown) / 2, rows.size() - shown));
            return rows.subList(from, from + shown);
        }
    }
}
