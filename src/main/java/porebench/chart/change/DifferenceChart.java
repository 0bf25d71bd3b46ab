package porebench.chart.change;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointLook;
import porebench.chart.look.PointSeries;
import porebench.chart.look.Span;

/** The difference lying down: its intervals as lines below one another, the margin as a band about 0. */
final class DifferenceChart extends PlotDrawing {
    private static final float BAND_STRENGTH = 0.22f;
    private static final double UPPER = 0.66;
    private static final double LOWER = 0.34;
    private static final double END = 0.09;

    private final DifferenceShown data;

    DifferenceChart(DifferenceShown data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        NumberAxis difference = numbers(words.get("axis.difference"));
        Span span = new Span();
        span.hold(data.marginPercent());
        span.hold(-data.marginPercent());
        span.hold(data.differencePercent() - data.half95Percent());
        span.hold(data.differencePercent() + data.half95Percent());
        span.show(difference, 2 * data.marginPercent());
        plot.setDomainAxis(difference);
        NumberAxis beside = numbers("");
        beside.setRange(0, 1);
        beside.setTickLabelsVisible(false);
        beside.setTickMarksVisible(false);
        plot.setRangeAxis(beside);
        plot.setRangeGridlinesVisible(false);
        point(plot);
        interval(plot, LINES, UPPER, data.half95Percent(), stroke(2.4), look.counted());
        interval(plot, LINES + 1, LOWER, data.half90Percent(), dashes(), look.factor());
        addLegendLine(words.get("legend.difference-95"), stroke(2.4), look.counted());
        addLegendLine(words.get("legend.difference-90"), dashes(), look.factor());
        plot.addDomainMarker(
                band(
                        words.get("legend.margin", words.threeDecimals(data.marginPercent())),
                        -data.marginPercent(),
                        data.marginPercent(),
                        look.struck(),
                        BAND_STRENGTH),
                Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(0, look.text(), stroke(1)), Layer.BACKGROUND);
        return chart(plot);
    }

    private void point(XYPlot plot) {
        PointSeries points = new PointSeries(this);
        String tip = words.lines(
                words.get("tip.difference", words.fine(data.differencePercent())),
                words.get(
                        "tip.difference-95",
                        words.fine(data.differencePercent() - data.half95Percent()),
                        words.fine(data.differencePercent() + data.half95Percent())),
                words.get(
                        "tip.difference-90",
                        words.fine(data.differencePercent() - data.half90Percent()),
                        words.fine(data.differencePercent() + data.half90Percent())));
        points.add(PointLook.COUNTED, data.differencePercent(), UPPER, () -> tip, "");
        points.addTo(plot, POINTS, any -> words.get("legend.difference"));
    }

    /** Draws an interval with an upright end on either side. */
    private void interval(XYPlot plot, int dataset, double height, double half, BasicStroke stroke, Color colour) {
        double low = data.differencePercent() - half;
        double high = data.differencePercent() + half;
        XYSeries line = new XYSeries("interval", false, true);
        line.add(low, height - END);
        line.add(low, height + END);
        line.add(low, height);
        line.add(high, height);
        line.add(high, height + END);
        line.add(high, height - END);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesStroke(0, stroke);
        plot.setDataset(dataset, new XYSeriesCollection(line));
        plot.setRenderer(dataset, renderer);
    }
}
