package porebench.chart.meter;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.Bars;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Span;

/** The dial's error at each check point with its uncertainty, the curve through them, the model and the tolerance. */
public final class DialErrorChart {
    /** The dataset of a plot that holds the check points; the lines stand in the one after it. */
    static final int POINTS = 0;

    static final int LINES = 1;

    private static final float BAND_STRENGTH = 0.18f;
    private static final double ROOM = 1.12;

    /** A point at 0 is not cut in half by the edge. */
    private static final double MARGIN = 0.02;

    private final DialErrors data;
    private final ChartLook look;
    private final PlotWords words;
    private final PlotParts parts;

    private DialErrorChart(DialErrors data, ChartLook look, Locale locale) {
        this.data = data;
        this.look = look;
        this.words = new PlotWords(locale);
        this.parts = new PlotParts(look, words);
    }

    public static JFreeChart of(DialErrors data, ChartLook look, Locale locale) {
        return new DialErrorChart(data, look, locale).chart();
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot();
        NumberAxis air = axis("axis.true-air");
        double end = ROOM * Math.max(1, most());
        air.setRange(-MARGIN * end, end);
        plot.setDomainAxis(air);
        NumberAxis error = axis("axis.dial-error");
        span().show(error, 2 * data.tolerancePercent());
        plot.setRangeAxis(error);
        points(plot);
        lines(plot, end);
        tolerance(plot);
        return parts.chart(plot);
    }

    private NumberAxis axis(String key) {
        NumberAxis axis = new NumberAxis(words.get(key));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        parts.dress(axis);
        return axis;
    }

    private double most() {
        return data.points().stream()
                .mapToDouble(DialErrors.Point::truePercent)
                .max()
                .orElse(0);
    }

    private Span span() {
        Span span = new Span();
        span.hold(data.tolerancePercent());
        span.hold(-data.tolerancePercent());
        for (DialErrors.Point point : data.points()) {
            span.hold(point.errorPercent() - point.expandedUncertaintyPercent());
            span.hold(point.errorPercent() + point.expandedUncertaintyPercent());
        }
        data.model().forEach(predicted -> span.hold(predicted.errorPercent()));
        return span;
    }

    private void points(XYPlot plot) {
        Bars bars = new Bars(look);
        for (DialErrors.Point point : data.points()) {
            String tip = words.lines(
                    words.get(
                            "tip.dial",
                            words.percent(point.truePercent()),
                            words.percent(point.truePercent() + point.errorPercent())),
                    words.get(
                            "tip.dial-error",
                            words.signed(point.errorPercent()),
                            words.percent(point.expandedUncertaintyPercent())),
                    words.get(point.passes() ? "tip.passes" : "tip.fails"));
            bars.add(
                    point.truePercent(),
                    point.errorPercent(),
                    point.expandedUncertaintyPercent(),
                    point.passes(),
                    tip,
                    data.calibration());
        }
        bars.addTo(plot, POINTS, parts, words.get("legend.point-passes"), words.get("legend.point-fails"));
    }

    private void lines(XYPlot plot, double end) {
        XYSeriesCollection lines = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYSeries curve = new XYSeries("curve");
        XYSeries before = new XYSeries("before");
        XYSeries beyond = new XYSeries("beyond");
        List<DialErrors.Point> points = data.points();
        points.forEach(point -> curve.add(point.truePercent(), point.errorPercent()));
        if (!points.isEmpty()) {
            DialErrors.Point first = points.get(0);
            DialErrors.Point last = points.get(points.size() - 1);
            before.add(0, first.errorPercent());
            before.add(first.truePercent(), first.errorPercent());
            beyond.add(last.truePercent(), last.errorPercent());
            beyond.add(end, last.errorPercent());
        }
        XYSeries model = new XYSeries("model");
        data.model().forEach(predicted -> model.add(predicted.truePercent(), predicted.errorPercent()));
        for (XYSeries each : List.of(curve, before, beyond, model)) {
            lines.addSeries(each);
            renderer.setSeriesPaint(lines.getSeriesCount() - 1, each == model ? look.factor() : look.counted());
        }
        renderer.setSeriesStroke(0, parts.stroke(1.8));
        renderer.setSeriesStroke(1, parts.dots());
        renderer.setSeriesStroke(2, parts.dots());
        renderer.setSeriesStroke(3, parts.dashes());
        plot.setDataset(LINES, lines);
        plot.setRenderer(LINES, renderer);
        parts.addLegendLine(words.get("legend.curve"), parts.stroke(1.8), look.counted());
        parts.addLegendLine(words.get("legend.held"), parts.dots(), look.counted());
        if (!data.model().isEmpty()) {
            parts.addLegendLine(words.get("legend.model"), parts.dashes(), look.factor());
        }
    }

    private void tolerance(XYPlot plot) {
        IntervalMarker band = new IntervalMarker(-data.tolerancePercent(), data.tolerancePercent());
        band.setPaint(look.struck());
        band.setAlpha(BAND_STRENGTH);
        plot.addRangeMarker(band, Layer.BACKGROUND);
        ValueMarker zero = new ValueMarker(0, look.text(), parts.stroke(1));
        zero.setAlpha(0.5f);
        plot.addRangeMarker(zero, Layer.BACKGROUND);
        Color shade = look.struck();
        parts.addLegendBand(
                words.get("legend.tolerance", words.percent(data.tolerancePercent())),
                new Color(shade.getRed(), shade.getGreen(), shade.getBlue(), Math.round(255 * BAND_STRENGTH)));
    }
}
