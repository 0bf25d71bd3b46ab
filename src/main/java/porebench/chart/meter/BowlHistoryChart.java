package porebench.chart.meter;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.Bars;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Span;

/** The volume of a bowl by the day it was found, with its uncertainty, and the volume in force as steps. */
public final class BowlHistoryChart {
    /** The dataset of a plot that holds the volumes found; the steps stand in the one after it. */
    static final int FOUND = 0;

    static final int STEPS = 1;

    private static final TimeZone AS_WRITTEN = TimeZone.getTimeZone("UTC");
    private static final double AIR = 0.06;
    private static final double DAY = 86_400_000;
    private static final int LEAST_DAYS = 30;
    private static final double LEAST_SHARE = 0.002;

    private final BowlHistory data;
    private final ChartLook look;
    private final PlotWords words;
    private final PlotParts parts;

    private BowlHistoryChart(BowlHistory data, ChartLook look, Locale locale) {
        this.data = data;
        this.look = look;
        this.words = new PlotWords(locale);
        this.parts = new PlotParts(look, words);
    }

    public static JFreeChart of(BowlHistory data, ChartLook look, Locale locale) {
        return new BowlHistoryChart(data, look, locale).chart();
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(dates());
        plot.setRangeAxis(volumes());
        Bars bars = new Bars(look);
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
        bars.addTo(plot, FOUND, parts, words.get("legend.volume-passes"), words.get("legend.volume-fails"));
        steps(plot);
        return parts.chart(plot);
    }

    private DateAxis dates() {
        List<LocalDate> days = Stream.of(
                        data.found().stream().map(BowlHistory.Found::on),
                        data.steps().stream().map(BowlHistory.Step::from),
                        Stream.of(data.until()))
                .flatMap(all -> all)
                .sorted()
                .toList();
        double first = millis(days.get(0));
        double last = millis(days.get(days.size() - 1));
        double span = Math.max(last - first, LEAST_DAYS * DAY);
        DateAxis axis = new DateAxis(words.get("axis.calibration-date"), AS_WRITTEN, words.locale());
        axis.setRange(new Date((long) (first - AIR * span)), new Date((long) (first + (1 + AIR) * span)));
        parts.dress(axis);
        return axis;
    }

    private NumberAxis volumes() {
        NumberAxis axis = new NumberAxis(words.get("axis.bowl", data.unit()));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        Span span = new Span();
        data.steps().forEach(step -> span.hold(step.volume()));
        for (BowlHistory.Found found : data.found()) {
            span.hold(found.volume() - found.expandedUncertainty());
            span.hold(found.volume() + found.expandedUncertainty());
        }
        if (span.low() <= span.high()) {
            span.show(axis, LEAST_SHARE * span.high());
        }
        parts.dress(axis);
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
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, look.factor());
        renderer.setSeriesStroke(0, parts.stroke(2.2));
        plot.setDataset(STEPS, new XYSeriesCollection(inForce));
        plot.setRenderer(STEPS, renderer);
        if (!inForce.isEmpty()) {
            parts.addLegendLine(words.get("legend.volume-in-force"), parts.stroke(2.2), look.factor());
        }
    }

    private static double millis(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli();
    }
}
