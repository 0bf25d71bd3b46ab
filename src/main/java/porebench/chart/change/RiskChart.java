package porebench.chart.change;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointLook;
import porebench.chart.look.PointSeries;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.RiskCurve;

/** Both shares as curves, the error asked about as an upright line with its two points. */
final class RiskChart extends PlotDrawing {
    private static final double PER_CENT = 100;
    private static final double ROOM = 1.1;
    private static final double LEAST_TOP = 1;

    private final RiskByError data;

    RiskChart(RiskByError data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        NumberAxis error = numbers(words.get("axis.air-error"));
        double farthest =
                data.curve().points().get(data.curve().points().size() - 1).errorPercent();
        error.setRange(-farthest, farthest);
        plot.setDomainAxis(error);
        NumberAxis share = numbers(words.get("axis.loads"));
        share.setRange(0, ROOM * Math.max(LEAST_TOP, most()));
        plot.setRangeAxis(share);
        points(plot);
        curve(plot, LINES, LoadRisk::wronglyPassed, stroke(2), look.voided(), "legend.wrongly-passed");
        curve(plot, LINES + 1, LoadRisk::wronglyFailed, dashes(), look.factor(), "legend.wrongly-failed");
        plot.addDomainMarker(new ValueMarker(data.errorPercent(), look.text(), stroke(1)), Layer.BACKGROUND);
        return chart(plot);
    }

    private double most() {
        return PER_CENT
                * data.curve().points().stream()
                        .mapToDouble(point -> Math.max(
                                point.risk().wronglyPassed(), point.risk().wronglyFailed()))
                        .max()
                        .orElse(0);
    }

    private void points(XYPlot plot) {
        PointSeries points = new PointSeries(this);
        String tip = words.lines(
                words.get("tip.air-error", words.signed(data.errorPercent())),
                words.get(
                        "tip.wrongly-passed",
                        words.percent(PER_CENT * data.risk().wronglyPassed())),
                words.get(
                        "tip.wrongly-failed",
                        words.percent(PER_CENT * data.risk().wronglyFailed())));
        points.add(
                PointLook.COUNTED, data.errorPercent(), PER_CENT * data.risk().wronglyPassed(), () -> tip, "");
        points.add(
                PointLook.COUNTED, data.errorPercent(), PER_CENT * data.risk().wronglyFailed(), () -> tip, "");
        points.addTo(plot, POINTS, any -> words.get("legend.air-error"));
    }

    private void curve(
            XYPlot plot, int dataset, ToDoubleFunction<LoadRisk> share, BasicStroke stroke, Color colour, String word) {
        XYSeries line = new XYSeries(word);
        for (RiskCurve.Point point : data.curve().points()) {
            line.add(point.errorPercent(), PER_CENT * share.applyAsDouble(point.risk()));
        }
        line(plot, dataset, line, stroke, colour);
        addLegendLine(words.get(word), stroke, colour);
    }
}
