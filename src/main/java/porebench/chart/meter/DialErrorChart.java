package porebench.chart.meter;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.Bars;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.Span;

/** The dial's error at each check point with its uncertainty, the curve through them, the model and the tolerance. */
final class DialErrorChart extends PlotDrawing {
    private static final float BAND_STRENGTH = 0.18f;
    private static final double ROOM = 1.12;

    /** A point at 0 is not cut in half by the edge. */
    private static final double MARGIN = 0.02;

    private final DialErrors data;

    DialErrorChart(DialErrors data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        NumberAxis air = numbers(words.get("axis.true-air"));
        double end = ROOM * Math.max(1, most());
        air.setRange(-MARGIN * end, end);
        plot.setDomainAxis(air);
        NumberAxis error = numbers(words.get("axis.dial-error"));
        span().show(error, 2 * data.tolerancePercent());
        plot.setRangeAxis(error);
        points(plot);
        lines(plot, end);
        tolerance(plot);
        return chart(plot);
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
        Bars bars = new Bars(this);
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
        bars.addTo(plot, POINTS, words.get("legend.point-passes"), words.get("legend.point-fails"));
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
        renderer.setSeriesStroke(0, stroke(1.8));
        renderer.setSeriesStroke(1, dots());
        renderer.setSeriesStroke(2, dots());
        renderer.setSeriesStroke(3, dashes());
        plot.setDataset(LINES, lines);
        plot.setRenderer(LINES, renderer);
        addLegendLine(words.get("legend.curve"), stroke(1.8), look.counted());
        addLegendLine(words.get("legend.held"), dots(), look.counted());
        if (!data.model().isEmpty()) {
            addLegendLine(words.get("legend.model"), dashes(), look.factor());
        }
    }

    private void tolerance(XYPlot plot) {
        double tolerance = data.tolerancePercent();
        String word = words.get("legend.tolerance", words.percent(tolerance));
        plot.addRangeMarker(band(word, -tolerance, tolerance, look.struck(), BAND_STRENGTH), Layer.BACKGROUND);
        ValueMarker zero = new ValueMarker(0, look.text(), stroke(1));
        zero.setAlpha(0.5f);
        plot.addRangeMarker(zero, Layer.BACKGROUND);
    }
}
