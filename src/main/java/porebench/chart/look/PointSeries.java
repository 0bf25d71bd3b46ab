package porebench.chart.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jfree.chart.plot.XYPlot;

/** Points, one series a look, each with what is said about it and what it opens. */
public final class PointSeries {
    private final PlotDrawing drawing;
    private final Map<PointLook, List<Point>> byLook = new EnumMap<>(PointLook.class);

    public PointSeries(PlotDrawing drawing) {
        this.drawing = drawing;
        for (PointLook each : PointLook.values()) {
            byLook.put(each, new ArrayList<>());
        }
    }

    /**
     * A point.
     *
     * @param x where it stands along the horizontal axis
     * @param y where it stands along the vertical axis
     * @param tip says what there is to say about it, as HTML; asked for when it is looked at
     * @param id what it opens
     */
    record Point(double x, double y, Supplier<String> tip, String id) {}

    public void add(PointLook point, double x, double y, Supplier<String> tip, String id) {
        byLook.computeIfPresent(point, (any, known) -> {
            known.add(new Point(x, y, tip, id));
            return known;
        });
    }

    /**
     * Puts the points into a plot, and what they are into its legend.
     *
     * @param word says what points of a look are
     */
    public void addTo(XYPlot plot, int dataset, Function<PointLook, String> word) {
        addTo(plot, dataset);
        byLook.forEach((point, known) -> {
            if (!known.isEmpty()) {
                drawing.addLegendShape(point, word.apply(point));
            }
        });
    }

    /** Puts the points into a plot whose legend says already what they are. */
    public void addTo(XYPlot plot, int dataset) {
        ThinSeries points = new ThinSeries();
        ThinRenderer renderer = new ThinRenderer(false);
        renderer.setUseFillPaint(false);
        List<List<Point>> bySeries = new ArrayList<>();
        byLook.forEach((point, known) -> {
            int index = points.getSeriesCount();
            known.sort(Comparator.comparingDouble(Point::x));
            Places places = new Places();
            known.forEach(each -> places.add(each.x(), each.y()));
            points.add(point.name(), places, keep(point));
            bySeries.add(known);
            renderer.setSeriesShape(index, drawing.shape(point));
            renderer.setSeriesShapesFilled(index, point.isFilled());
            renderer.setSeriesPaint(index, point.colour(drawing.look));
            renderer.setSeriesOutlineStroke(index, drawing.stroke(1.6));
            renderer.setSeriesStroke(index, drawing.stroke(1.6));
        });
        PointNotes notes = new PointNotes(points, bySeries);
        renderer.setDefaultToolTipGenerator(notes);
        renderer.setURLGenerator(notes);
        plot.setDataset(dataset, points);
        plot.setRenderer(dataset, renderer);
    }

    /** Of points that count, however many, a line shows where the others are; every other one is to be seen. */
    private static Places.Keep keep(PointLook point) {
        return switch (point) {
            case COUNTED, SIMULATED -> Places.Keep.EXTREMES;
            case STRUCK, VOID, SIGNAL, SIMULATED_SIGNAL -> Places.Keep.EVERY_MARK;
        };
    }
}
