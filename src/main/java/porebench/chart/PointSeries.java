package porebench.chart;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Points, one series a look, each with what is said about it and what it opens. */
final class PointSeries {
    private final PlotParts parts;
    private final ChartLook look;
    private final Map<PointLook, OfOneLook> byLook = new EnumMap<>(PointLook.class);

    PointSeries(PlotParts parts, ChartLook look) {
        this.parts = parts;
        this.look = look;
        for (PointLook each : PointLook.values()) {
            byLook.put(each, new OfOneLook(new XYSeries(each.name(), false, true)));
        }
    }

    private record OfOneLook(XYSeries series, List<String> tips, List<String> ids) {
        OfOneLook(XYSeries series) {
            this(series, new ArrayList<>(), new ArrayList<>());
        }
    }

    void add(PointLook point, double x, double y, String tip, String id) {
        byLook.computeIfPresent(point, (any, known) -> {
            known.series().add(x, y);
            known.tips().add(tip);
            known.ids().add(id);
            return known;
        });
    }

    /**
     * Puts the points into a plot, and what they are into its legend.
     *
     * @param word says what points of a look are
     */
    void addTo(XYPlot plot, int dataset, Function<PointLook, String> word) {
        addTo(plot, dataset);
        byLook.forEach((point, known) -> {
            if (!known.series().isEmpty()) {
                parts.addLegendShape(point, word.apply(point));
            }
        });
    }

    /** Puts the points into a plot whose legend says already what they are. */
    void addTo(XYPlot plot, int dataset) {
        XYSeriesCollection points = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(false);
        List<List<String>> ids = new ArrayList<>();
        byLook.forEach((point, known) -> {
            int index = points.getSeriesCount();
            points.addSeries(known.series());
            ids.add(known.ids());
            renderer.setSeriesShape(index, parts.shape(point));
            renderer.setSeriesShapesFilled(index, point.isFilled());
            renderer.setSeriesPaint(index, look.of(point));
            renderer.setSeriesOutlineStroke(index, parts.stroke(1.6));
            renderer.setSeriesStroke(index, parts.stroke(1.6));
            renderer.setSeriesToolTipGenerator(
                    index, (data, series, item) -> known.tips().get(item));
        });
        renderer.setURLGenerator(new PointIds(ids));
        plot.setDataset(dataset, points);
        plot.setRenderer(dataset, renderer);
    }
}
