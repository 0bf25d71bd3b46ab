package porebench.chart.meter;

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

/** The volume of a bowl by the day it was found, with its uncertainty, and the volume in force as steps. */
final class BowlHistoryChart extends PlotDrawing {
    private static final double AIR = 0.06;
    private static final int LEAST_DAYS = 30;
    private static final double LEAST_SHARE = 0.002;

    private final BowlHistory data;

    BowlHistoryChart(BowlHistory data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(dates());
        plot.setRangeAxis(volumes());
        Bars bars = new Bars(this);
        for (BowlHistory.Found found : data.found()) {
            String tip = words.lines(
                    words.get("tip.bowl", found.id(), found.on().toString()),
                    words.get(
                            "tip.bowl-volume",
                            words.volume(found.volume()),
                            words.volume(found.expandedUncertainty()),
                            data.unit(),
                            found.fills()),
                    words.get(found.passes() ? "tip.passes" : "tip.fails"));
            bars.add(millis(found.on()), found.volume(), found.expandedUncertainty(), found.passes(), tip, found.id());
        }
        bars.addTo(plot, POINTS, words.get("legend.volume-passes"), words.get("legend.volume-fails"));
        steps(plot);
        return chart(plot);
    }

    private DateAxis dates() {
        Stream<LocalDateTime> times = Stream.of(
                        data.found().stream().map(BowlHistory.Found::on),
                        data.steps().stream().map(BowlHistory.Step::from),
                        Stream.of(data.until()))
                .flatMap(days -> days)
                .map(LocalDate::atStartOfDay);
        return dates(words.get("axis.calibration-date"), times, LEAST_DAYS, AIR);
    }

    private NumberAxis volumes() {
        NumberAxis axis = numbers(words.get("axis.bowl", data.unit()));
        Span span = new Span();
        data.steps().forEach(step -> span.hold(step.volume()));
        for (BowlHistory.Found found : data.found()) {
            span.hold(found.volume() - found.expandedUncertainty());
            span.hold(found.volume() + found.expandedUncertainty());
        }
        if (span.low() <= span.high()) {
            span.show(axis, LEAST_SHARE * span.high());
        }
        return axis;
    }

    private void steps(XYPlot plot) {
        XYSeries inForce = new XYSeries("in force", false, true);
        for (int i = 0; i < data.steps().size(); i++) {
            BowlHistory.Step step = data.steps().get(i);
            LocalDate end =
                    i + 1 < data.steps().size() ? data.steps().get(i + 1).from() : data.until();
            inForce.add(millis(step.from()), step.volume());
            inForce.add(millis(end.isBefore(step.from()) ? step.from() : end), step.volume());
        }
        line(plot, LINES, inForce, stroke(2.2), look.factor());
        if (!inForce.isEmpty()) {
            addLegendLine(words.get("legend.volume-in-force"), stroke(2.2), look.factor());
        }
    }

    private static double millis(LocalDate day) {
        return millis(day.atStartOfDay());
    }
}
