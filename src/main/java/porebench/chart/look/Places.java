package porebench.chart.look;

import java.util.Arrays;
import java.util.BitSet;
import org.jfree.data.Range;

/** The places of a series as plain numbers, from left to right, and which of them pixels can show. */
public final class Places {
    /** As many in a column of pixels are drawn as they are. */
    static final int FEW = 4;

    /** The side of a cell in which one mark hides the next, in pixels: half of a mark. */
    private static final int CELL = 5;

    private double[] x = new double[16];
    private double[] y = new double[16];
    private int count;

    /** What is kept of many places in a column of pixels. */
    public enum Keep {
        /** The lowest and the highest: what lies between is hidden by the line that joins them. */
        EXTREMES,
        /** The first, the lowest, the highest and the last, from which a line looks as from all. */
        LINE,
        /** One in every cell that a mark fills, so that none disappears that could be seen. */
        EVERY_MARK
    }

    /**
     * The part of a plot that is drawn.
     *
     * @param across what it shows along the horizontal axis
     * @param upwards what it shows along the vertical axis
     * @param columns its width in pixels, at least 1
     * @param rows its height in pixels, at least 1
     */
    record Window(Range across, Range upwards, int columns, int rows) {
        int column(double x) {
            return (int) Math.floor((x - across.getLowerBound()) * columns / across.getLength());
        }

        /** Returns where a column ends. */
        double end(int column) {
            return across.getLowerBound() + (column + 1) * across.getLength() / columns;
        }

        int row(double y) {
            double row = (y - upwards.getLowerBound()) / upwards.getLength() * rows;
            return (int) Math.max(-1, Math.min(rows, Math.floor(row)));
        }
    }

    /** Adds a place; a height that is not a number breaks a line. It must not lie left of the last one. */
    public void add(double newX, double newY) {
        if (count > 0 && newX < x[count - 1]) {
            throw new IllegalArgumentException("x must be at least " + x[count - 1] + ", but is " + newX);
        }
        if (count == x.length) {
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
        }
        x[count] = newX;
        y[count] = newY;
        count++;
    }

    public void removeLast() {
        count--;
    }

    public int count() {
        return count;
    }

    public double x(int index) {
        return x[index];
    }

    public double y(int index) {
        return y[index];
    }

    /** Returns the first place at or right of some x; the count when there is none. */
    int firstFrom(double low) {
        int from = 0;
        int to = count;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (x[middle] < low) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    /** Returns the indexes to draw, from left to right, with one beyond either edge so that a line goes on to it. */
    int[] drawn(Window window, Keep keep) {
        int first = Math.max(0, firstFrom(window.across().getLowerBound()) - 1);
        int end = Math.min(count, firstFrom(Math.nextUp(window.across().getUpperBound())) + 1);
        if (end - first <= (long) FEW * window.columns()) {
            return range(first, end);
        }
        return keep == Keep.EVERY_MARK ? inCells(window, first, end) : inColumns(window, first, end, keep == Keep.LINE);
    }

    private static int[] range(int first, int end) {
        int[] all = new int[Math.max(0, end - first)];
        for (int i = 0; i < all.length; i++) {
            all[i] = first + i;
        }
        return all;
    }

    private int[] inColumns(Window window, int first, int end, boolean asLine) {
        double bottom = window.upwards().getLowerBound();
        double top = window.upwards().getUpperBound();
        int[] kept = new int[FEW * (window.columns() + 4)];
        int size = 0;
        int from = first;
        while (from < end) {
            double columnEnd = window.end(window.column(x[from]));
            boolean isBreak = Double.isNaN(y[from]);
            int low = -1;
            int high = -1;
            int to = from;
            do {
                // A mark above or below what is shown must not stand for one in sight.
                if (asLine || y[to] >= bottom && y[to] <= top) {
                    low = low < 0 || y[to] < y[low] ? to : low;
                    high = high < 0 || y[to] > y[high] ? to : high;
                }
                to++;
            } while (!isBreak && to < end && x[to] < columnEnd && !Double.isNaN(y[to]));
            if (size + FEW > kept.length) {
                kept = Arrays.copyOf(kept, 2 * kept.length);
            }
            int begin = size;
            size = asLine ? put(kept, size, begin, from) : size;
            size = put(kept, size, begin, Math.min(low, high));
            size = put(kept, size, begin, Math.max(low, high));
            size = asLine ? put(kept, size, begin, to - 1) : size;
            from = to;
        }
        return Arrays.copyOf(kept, size);
    }

    private static int put(int[] kept, int size, int begin, int index) {
        if (index < 0 || size > begin && kept[size - 1] == index) {
            return size;
        }
        kept[size] = index;
        return size + 1;
    }

    private int[] inCells(Window window, int first, int end) {
        int across = window.columns() / CELL + 3;
        int upwards = window.rows() / CELL + 3;
        BitSet taken = new BitSet(across * upwards);
        int[] kept = new int[end - first];
        int size = 0;
        for (int i = first; i < end; i++) {
            int column = Math.max(0, Math.min(across - 1, window.column(x[i]) / CELL + 1));
            int cell = column * upwards + window.row(y[i]) / CELL + 1;
            if (!taken.get(cell)) {
                taken.set(cell);
                kept[size] = i;
                size++;
            }
        }
        return Arrays.copyOf(kept, size);
    }
}
