package porebench.chart.look;

import java.awt.geom.Rectangle2D;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.labels.XYToolTipGenerator;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.data.xy.XYDataset;

/**
 * The points of a chart that can be opened, part by part and from left to right. What is said about one is worked out when it
 * is asked for, so that a million of them cost no more than their places.
 */
public final class PlotPoints extends AbstractList<PlotPoint> implements RandomAccess {
    private final List<Source> sources = new ArrayList<>();
    private final int[] source;
    private final int[] item;
    private final double[] x;

    /** One series of points. */
    private record Source(int part, XYDataset dataset, XYItemRenderer renderer, int series) {
        int count() {
            return dataset instanceof ThinSeries thin ? thin.places(series).count() : dataset.getItemCount(series);
        }

        double x(int index) {
            return dataset instanceof ThinSeries thin ? thin.places(series).x(index) : dataset.getXValue(series, index);
        }

        double y(int index) {
            return dataset instanceof ThinSeries thin ? thin.places(series).y(index) : dataset.getYValue(series, index);
        }

        String id(int index) {
            return renderer.getURLGenerator() instanceof PointNotes notes
                    ? notes.point(series, index).id()
                    : renderer.getURLGenerator().generateURL(dataset, series, index);
        }

        String tip(int index) {
            if (renderer.getURLGenerator() instanceof PointNotes notes) {
                return notes.point(series, index).tip().get();
            }
            XYToolTipGenerator tips = renderer.getToolTipGenerator(series, index);
            return tips == null ? "" : tips.generateToolTip(dataset, series, index);
        }
    }

    private PlotPoints(List<Source> all) {
        sources.addAll(all);
        int count = all.stream().mapToInt(Source::count).sum();
        int[] from = new int[count];
        int[] index = new int[count];
        double[] across = new double[count];
        Integer[] order = new Integer[count];
        int at = 0;
        for (int place = 0; place < all.size(); place++) {
            for (int i = 0; i < all.get(place).count(); i++) {
                from[at] = place;
                index[at] = i;
                across[at] = all.get(place).x(i);
                order[at] = at;
                at++;
            }
        }
        Arrays.sort(
                order,
                Comparator.<Integer>comparingInt(i -> all.get(from[i]).part()).thenComparingDouble(i -> across[i]));
        source = new int[count];
        item = new int[count];
        x = new double[count];
        for (int i = 0; i < count; i++) {
            source[i] = from[order[i]];
            item[i] = index[order[i]];
            x[i] = across[order[i]];
        }
    }

    /** Returns the points of a chart. */
    public static PlotPoints of(JFreeChart chart) {
        List<Source> sources = new ArrayList<>();
        List<XYPlot> parts = PlotPoint.parts(chart);
        for (int part = 0; part < parts.size(); part++) {
            XYPlot plot = parts.get(part);
            for (int i = 0; i < plot.getDatasetCount(); i++) {
                XYItemRenderer renderer = plot.getRenderer(i);
                for (int series = 0;
                        renderer != null
                                && renderer.getURLGenerator() != null
                                && series < plot.getDataset(i).getSeriesCount();
                        series++) {
                    sources.add(new Source(part, plot.getDataset(i), renderer, series));
                }
            }
        }
        return new PlotPoints(sources);
    }

    @Override
    public PlotPoint get(int index) {
        Source from = sources.get(source[index]);
        return new PlotPoint(from.id(item[index]), from.part(), x[index], y(index), from.tip(item[index]));
    }

    @Override
    public int size() {
        return x.length;
    }

    private int part(int index) {
        return sources.get(source[index]).part();
    }

    private double y(int index) {
        return sources.get(source[index]).y(item[index]);
    }

    /** Returns the first point with an id. */
    public Optional<PlotPoint> known(String id) {
        for (int i = 0; i < x.length; i++) {
            if (sources.get(source[i]).id(item[i]).equals(id)) {
                return Optional.of(get(i));
            }
        }
        return Optional.empty();
    }

    @Override
    public int indexOf(Object sought) {
        if (sought instanceof PlotPoint point) {
            for (int i = firstFrom(point.part(), point.x()); i < x.length && x[i] == point.x(); i++) {
                if (get(i).equals(point)) {
                    return i;
                }
            }
        }
        return -1;
    }

    /** Returns the first point of a part at or right of some x, or of a later part. */
    private int firstFrom(int part, double low) {
        int from = 0;
        int to = x.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            boolean isBefore = part(middle) < part || part(middle) == part && x[middle] < low;
            from = isBefore ? middle + 1 : from;
            to = isBefore ? to : middle;
        }
        return from;
    }

    /**
     * Returns the point of a part that is drawn nearest to a place; empty when none is near enough.
     *
     * @param area where the part is drawn
     * @param reach how near it must be, in pixels
     */
    public Optional<Near> nearest(XYPlot plot, int part, Rectangle2D area, java.awt.geom.Point2D place, double reach) {
        double left = plot.getDomainAxis().java2DToValue(place.getX() - reach, area, plot.getDomainAxisEdge());
        double right = plot.getDomainAxis().java2DToValue(place.getX() + reach, area, plot.getDomainAxisEdge());
        int nearest = -1;
        double least = reach;
        for (int i = firstFrom(part, left); i < x.length && part(i) == part && x[i] <= right; i++) {
            double across = plot.getDomainAxis().valueToJava2D(x[i], area, plot.getDomainAxisEdge());
            double down = plot.getRangeAxis().valueToJava2D(y(i), area, plot.getRangeAxisEdge());
            double distance = place.distance(across, down);
            if (distance <= least && area.outcode(across, down) == 0) {
                nearest = i;
                least = distance;
            }
        }
        return nearest < 0 ? Optional.empty() : Optional.of(new Near(nearest, least));
    }

    /**
     * A point near a place.
     *
     * @param index which point it is
     * @param distance how far from it, in pixels
     */
    public record Near(int index, double distance) {}
}
