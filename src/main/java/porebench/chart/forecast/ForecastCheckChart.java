package porebench.chart.forecast;

import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointLook;
import porebench.chart.look.PointSeries;
import porebench.chart.look.Span;

/** Forecast along, measured up, both over the same range: on the dashed line a determination came out as forecast. */
final class ForecastCheckChart extends PlotDrawing {
    private static final double LEAST_SPAN_PERCENT = 0.2;

    private final ForecastCheck data;

    ForecastCheckChart(ForecastCheck data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        Span span = new Span();
        for (ForecastCheck.Point point : data.points()) {
            span.hold(point.forecastPercent());
            span.hold(point.measuredPercent());
        }
        NumberAxis forecast = numbers(words.get("axis.forecast"));
        NumberAxis measured = numbers(words.get("axis.measured"));
        span.show(forecast, LEAST_SPAN_PERCENT);
        span.show(measured, LEAST_SPAN_PERCENT);
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(forecast);
        plot.setRangeAxis(measured);
        points(plot);
        XYSeries equal = new XYSeries("equal");
        equal.add(forecast.getLowerBound(), forecast.getLowerBound());
        equal.add(forecast.getUpperBound(), forecast.getUpperBound());
        line(plot, LINES, equal, dashes(), look.factor());
        addLegendLine(words.get("legend.as-forecast"), dashes(), look.factor());
        sayIfSimulated(data.isSimulated());
        if (data.untold() > 0) {
            explainAbove(words.get("note.untold", data.untold()));
        }
        return chart(plot);
    }

    private void points(XYPlot plot) {
        PointSeries points = new PointSeries(this);
        for (ForecastCheck.Point point : data.points()) {
            points.add(
                    data.isSimulated() ? PointLook.SIMULATED : PointLook.COUNTED,
                    point.forecastPercent(),
                    point.measuredPercent(),
                    () -> words.lines(
                            point.determination(),
                            words.get(
                                    "tip.forecast",
                                    words.percent(point.measuredPercent()),
                                    words.percent(point.forecastPercent()))),
                    point.mix());
        }
        points.addTo(plot, POINTS, look -> words.get("legend.forecast-determination"));
    }
}
