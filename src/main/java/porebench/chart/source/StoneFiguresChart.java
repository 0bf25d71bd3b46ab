package porebench.chart.source;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.Bars;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.Span;

/** One figure of a source by the day it was measured, and the figure in use as steps, a step a stone. */
final class StoneFiguresChart extends PlotDrawing {
    private static final double AIR = 0.06;
    private static final int LEAST_DAYS = 30;

    private final StoneFigures data;

    StoneFiguresChart(StoneFigures data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(dates());
        plot.setRangeAxis(figures());
        Bars bars = new Bars(this);
        for (StoneFigures.Measured one : data.measured()) {
            String tip = words.lines(
                    words.get("tip.measured", one.id(), one.on().toString(), one.by()),
                    words.get("tip.measured-value", one.said(), one.ledge()));
            bars.add(millis(one.on()), one.value(), 0, !one.isFar(), tip, one.id());
        }
        bars.addTo(plot, POINTS, words.get("legend.measured"), words.get("legend.measured-far"));
        steps(plot);
        return chart(plot);
    }

    private DateAxis dates() {
        Stream<LocalDateTime> times = Stream.of(
                        data.measured().stream().map(StoneFigures.Measured::on),
                        data.inUse().stream().map(StoneFigures.Step::from),
                        Stream.of(data.until()))
                .flatMap(days -> days)
                .map(LocalDate::atStartOfDay);
        return dates(words.get("axis.measured-on"), times, LEAST_DAYS, AIR);
    }

    private NumberAxis figures() {
        NumberAxis axis = numbers(words.get(data.figure().axis()));
        Span span = new Span();
        data.inUse().forEach(step -> span.hold(step.value()));
        data.measured().forEach(one -> span.hold(one.value()));
        if (span.low() <= span.high()) {
            span.show(axis, data.figure().least());
        }
        return axis;
    }

    private void steps(XYPlot plot) {
        XYSeries inUse = new XYSeries("in use", false, true);
        for (int i = 0; i < data.inUse().size(); i++) {
            StoneFigures.Step step = data.inUse().get(i);
            LocalDate end =
                    i + 1 < data.inUse().size() ? data.inUse().get(i + 1).from() : data.until();
            inUse.add(millis(step.from()), step.value());
            inUse.add(millis(end.isBefore(step.from()) ? step.from() : end), step.value());
        }
        line(plot, LINES, inUse, stroke(2.2), look.factor());
        if (!inUse.isEmpty()) {
            addLegendLine(words.get("legend.in-use"), stroke(2.2), look.factor());
        }
    }

    private static double millis(LocalDate day) {
        return millis(day.atStartOfDay());
    }
}
