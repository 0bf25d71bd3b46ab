package porebench.chart.look;

import java.util.ArrayList;
import java.util.List;
import org.jfree.data.DomainOrder;
import org.jfree.data.xy.AbstractXYDataset;

/**
 * Series of points or lines, of which a plot is given no more than its pixels can show. Until something is drawn, and
 * wherever little is, that is all of them.
 */
public final class ThinSeries extends AbstractXYDataset {
    private static final long serialVersionUID = 1L;

    private final transient List<One> all = new ArrayList<>();

    /** A series, what is kept of it, and what is drawn of it now. */
    private static final class One {
        private final String name;
        private final Places places;
        private final Places.Keep keep;
        private int[] drawn = {};
        private boolean isWhole = true;
        private boolean isCrowded;

        One(String name, Places places, Places.Keep keep) {
            this.name = name;
            this.places = places;
            this.keep = keep;
        }
    }

    public void add(String name, Places places, Places.Keep keep) {
        all.add(new One(name, places, keep));
    }

    /** From now on gives what a part of the plot can show. */
    void show(Places.Window window) {
        for (One one : all) {
            one.drawn = one.places.drawn(window, one.keep);
            one.isWhole = false;
            one.isCrowded = one.drawn.length > window.columns();
        }
    }

    /** Returns whether more is drawn of a series now than there are columns of pixels, so that all runs into one another. */
    boolean isCrowded(int series) {
        return all.get(series).isCrowded;
    }

    /** Returns all places of a series. */
    Places places(int series) {
        return all.get(series).places;
    }

    /** Returns which of all places of a series an item is that is given now. */
    int index(int series, int item) {
        One one = all.get(series);
        return one.isWhole ? item : one.drawn[item];
    }

    @Override
    public DomainOrder getDomainOrder() {
        return DomainOrder.ASCENDING;
    }

    @Override
    public int getSeriesCount() {
        return all.size();
    }

    @Override
    public Comparable<String> getSeriesKey(int series) {
        return all.get(series).name;
    }

    @Override
    public int getItemCount(int series) {
        One one = all.get(series);
        return one.isWhole ? one.places.count() : one.drawn.length;
    }

    @Override
    public Number getX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getY(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public double getXValue(int series, int item) {
        return all.get(series).places.x(index(series, item));
    }

    @Override
    public double getYValue(int series, int item) {
        return all.get(series).places.y(index(series, item));
    }
}
