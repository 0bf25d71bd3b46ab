package porebench.chart.look;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;

/**
 * A point of a plot that can be opened.
 *
 * @param id what it stands for
 * @param part which of plots that lie below one another holds it, from 0
 * @param x where it stands along the horizontal axis
 * @param y where it stands along the vertical axis
 * @param tip what is said about it, as HTML
 */
public record PlotPoint(String id, int part, double x, double y, String tip) {
    /** Returns the plots of a chart that lie below one another; one alone as a rule, and none of a chart of bars. */
    public static List<XYPlot> parts(JFreeChart chart) {
        if (chart.getPlot() instanceof CombinedDomainXYPlot combined) {
            List<XYPlot> parts = new ArrayList<>();
            for (Object each : combined.getSubplots()) {
                parts.add((XYPlot) each);
            }
            return parts;
        }
        return chart.getPlot() instanceof XYPlot only ? List.of(only) : List.of();
    }

    /** Returns where the point is drawn in a chart, its part having a place on the screen. */
    public Point2D place(JFreeChart chart, Rectangle2D area) {
        XYPlot plot = parts(chart).get(part);
        return new Point2D.Double(
                plot.getDomainAxis().valueToJava2D(x, area, plot.getDomainAxisEdge()),
                plot.getRangeAxis().valueToJava2D(y, area, plot.getRangeAxisEdge()));
    }

    /** Returns what is said about the point, in one line without marks. */
    public String words() {
        return tip.replace("<br>", " \u00B7 ")
                .replaceAll("</?html>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }
}
