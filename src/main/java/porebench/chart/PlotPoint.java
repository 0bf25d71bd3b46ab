package porebench.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.labels.XYToolTipGenerator;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.data.xy.XYDataset;

/**
 * A point of a plot that can be opened.
 *
 * @param id what it stands for
 * @param part which of plots that lie below one another holds it, from 0
 * @param x where it stands along the horizontal axis
 * @param y where it stands along the vertical axis
 * @param tip what is said about it, as HTML
 */
record PlotPoint(String id, int part, double x, double y, String tip) {
    /** Returns the plots of a chart that lie below one another; one alone as a rule, and none of a chart of bars. */
    static List<XYPlot> parts(JFreeChart chart) {
        if (chart.getPlot() instanceof CombinedDomainXYPlot combined) {
            List<XYPlot> parts = new ArrayList<>();
            for (Object each : combined.getSubplots()) {
                parts.add((XYPlot) each);
            }
            return parts;
        }
        return chart.getPlot() instanceof XYPlot only ? List.of(only) : List.of();
    }

    /** Returns the points of a chart that can be opened, from left to right. */
    static List<PlotPoint> of(JFreeChart chart) {
        List<PlotPoint> points = new ArrayList<>();
        List<XYPlot> parts = parts(chart);
        for (int part = 0; part < parts.size(); part++) {
            XYPlot plot = parts.get(part);
            for (int i = 0; i < plot.getDatasetCount(); i++) {
                if (plot.getRenderer(i) != null && plot.getRenderer(i).getURLGenerator() != null) {
                    add(points, part, plot.getDataset(i), plot.getRenderer(i));
                }
            }
        }
        points.sort(Comparator.comparingInt(PlotPoint::part).thenComparingDouble(PlotPoint::x));
        return List.copyOf(points);
    }

    private static void add(List<PlotPoint> points, int part, XYDataset dataset, XYItemRenderer renderer) {
        for (int series = 0; series < dataset.getSeriesCount(); series++) {
            for (int item = 0; item < dataset.getItemCount(series); item++) {
                XYToolTipGenerator tips = renderer.getToolTipGenerator(series, item);
                points.add(new PlotPoint(
                        renderer.getURLGenerator().generateURL(dataset, series, item),
                        part,
                        dataset.getXValue(series, item),
                        dataset.getYValue(series, item),
                        tips == null ? "" : tips.generateToolTip(dataset, series, item)));
            }
        }
    }

    /** Returns where the point is drawn in a chart, its part having a place on the screen. */
    Point2D place(JFreeChart chart, Rectangle2D area) {
        XYPlot plot = parts(chart).get(part);
        return new Point2D.Double(
                plot.getDomainAxis().valueToJava2D(x, area, plot.getDomainAxisEdge()),
                plot.getRangeAxis().valueToJava2D(y, area, plot.getRangeAxisEdge()));
    }

    /** Returns what is said about the point, in one line without marks. */
    String words() {
        return tip.replace("<br>", " \u00B7 ")
                .replaceAll("</?html>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }
}
