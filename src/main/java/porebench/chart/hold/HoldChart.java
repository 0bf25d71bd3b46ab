package porebench.chart.hold;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import porebench.chart.look.ChartLook;
import porebench.chart.look.LabelAxis;
import porebench.chart.look.Places;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointLook;
import porebench.chart.look.PointSeries;
import porebench.chart.look.Span;
import porebench.chart.look.ThinRenderer;
import porebench.chart.look.ThinSeries;
import porebench.method.hold.Hold;

/** Differences with their means above; sums and average, each between its limits, below. */
final class HoldChart extends PlotDrawing {
    /** How far above its lower end a doubted pair stands, as a share of the scale. */
    private static final double FOOT = 0.03;

    private static final double LEAST_SPAN = 0.2;

    private final HoldPlot data;

    HoldChart(HoldPlot data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot differences = differences();
        XYPlot sums = sums();
        XYPlot average = average();
        data.shiftFrom().ifPresent(from -> {
            shift(differences, from);
            label(differences, from);
            shift(sums, from);
            shift(average, from);
        });
        legend();
        sayIfSimulated(data.isSimulated());
        explainAbove(words.get("note.hold-run-length", words.wholeNumbers().format(Math.round(data.runLength()))));
        return chart(pairs(), differences, sums, average);
    }

    private NumberAxis pairs() {
        NumberAxis axis = new LabelAxis(
                words.get("axis.hold-order"),
                data.points().stream().map(HoldPlot.Point::label).toList());
        axis.setRange(0.5, Math.max(1, data.points().size()) + 0.5);
        dress(axis);
        return axis;
    }

    private XYPlot plot(String title, Span span) {
        XYPlot plot = new XYPlot();
        plot.setDomainGridlinesVisible(false);
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        NumberAxis axis = numbers(title);
        if (span.low() <= span.high()) {
            span.show(axis, LEAST_SPAN);
        }
        plot.setRangeAxis(axis);
        return plot;
    }

    private XYPlot differences() {
        Span span = new Span();
        data.points().stream()
                .filter(point -> !point.isDoubted())
                .forEach(point -> span.hold(point.on().pair().difference()));
        XYPlot plot = plot(words.get("axis.hold-difference"), span);
        double foot = plot.getRangeAxis().getLowerBound()
                + FOOT * plot.getRangeAxis().getRange().getLength();
        points(
                plot,
                point -> false,
                point -> point.isDoubted() ? foot : point.on().pair().difference());
        Places means = new Places();
        int from = data.shiftFrom().orElse(data.points().size());
        mean(means, 0, from);
        mean(means, from, data.points().size());
        lines(plot, List.of(means), List.of(stroke(1.8)), true);
        return plot;
    }

    /** Draws the mean of the pairs from one on up to another. */
    private void mean(Places places, int from, int end) {
        data.points().subList(from, end).stream()
                .filter(point -> !point.isDoubted())
                .mapToDouble(point -> point.on().pair().difference())
                .average()
                .ifPresent(mean -> {
                    places.add(from + 0.5, Double.NaN);
                    places.add(from + 0.5, mean);
                    places.add(end + 0.5, mean);
                });
    }

    private XYPlot sums() {
        Span span = span(Hold.INTERVAL);
        data.points().forEach(point -> {
            span.hold(point.on().high());
            span.hold(-point.on().low());
        });
        XYPlot plot = plot(words.get("axis.hold-sums"), span);
        points(plot, point -> point.on().isSignal(), point -> point.on().larger());
        Places up = new Places();
        Places down = new Places();
        for (int i = 0; i < data.points().size(); i++) {
            up.add(i + 1.0, data.points().get(i).on().high());
            down.add(i + 1.0, -data.points().get(i).on().low());
        }
        limited(plot, Hold.INTERVAL, List.of(up, down));
        return plot;
    }

    private XYPlot average() {
        Span span = span(Hold.AVERAGE_LIMIT);
        data.points().forEach(point -> span.hold(point.on().average()));
        XYPlot plot = plot(words.get("axis.hold-average"), span);
        points(plot, point -> point.on().isAverageBeyond(), point -> point.on().average());
        Places joined = new Places();
        for (int i = 0; i < data.points().size(); i++) {
            joined.add(i + 1.0, data.points().get(i).on().average());
        }
        limited(plot, Hold.AVERAGE_LIMIT, List.of(joined));
        return plot;
    }

    private static Span span(double limit) {
        Span span = new Span();
        span.hold(limit);
        span.hold(-limit);
        return span;
    }

    private void points(XYPlot plot, Predicate<HoldPlot.Point> isSignal, ToDoubleFunction<HoldPlot.Point> value) {
        PointSeries points = new PointSeries(this);
        for (int i = 0; i < data.points().size(); i++) {
            HoldPlot.Point point = data.points().get(i);
            points.add(
                    looksLike(point, isSignal.test(point)),
                    i + 1.0,
                    value.applyAsDouble(point),
                    () -> words.lines(point.said().toArray(new String[0])),
                    point.on().pair().name());
        }
        points.addTo(plot, POINTS);
    }

    private PointLook looksLike(HoldPlot.Point point, boolean isSignal) {
        if (point.isDoubted()) {
            return PointLook.VOID;
        }
        if (isSignal) {
            return data.isSimulated() ? PointLook.SIMULATED_SIGNAL : PointLook.SIGNAL;
        }
        return data.isSimulated() ? PointLook.SIMULATED : PointLook.COUNTED;
    }

    /** Joins points and draws the limits to either side of 0. */
    private void limited(XYPlot plot, double limit, List<Places> joined) {
        Places high = new Places();
        Places low = new Places();
        double end = Math.max(1, data.points().size()) + 0.5;
        high.add(0.5, limit);
        high.add(end, limit);
        low.add(0.5, -limit);
        low.add(end, -limit);
        List<Places> all = new ArrayList<>(joined);
        all.add(high);
        all.add(low);
        List<BasicStroke> strokes = new ArrayList<>();
        joined.forEach(any -> strokes.add(stroke(1)));
        strokes.add(limits());
        strokes.add(limits());
        lines(plot, all, strokes, false);
    }

    private void lines(XYPlot plot, List<Places> all, List<BasicStroke> strokes, boolean areMeans) {
        ThinSeries lines = new ThinSeries();
        ThinRenderer renderer = new ThinRenderer(true);
        for (int i = 0; i < all.size(); i++) {
            lines.add("line " + i, all.get(i), Places.Keep.LINE);
            renderer.setSeriesStroke(i, strokes.get(i));
            boolean isLimit = !areMeans && i >= all.size() - 2;
            renderer.setSeriesPaint(i, areMeans ? look.counted() : isLimit ? look.factor() : look.struck());
        }
        plot.setDataset(LINES, lines);
        plot.setRenderer(LINES, renderer);
    }

    private void shift(XYPlot plot, int from) {
        ValueMarker line = new ValueMarker(from + 0.5, look.text(), dashes());
        line.setAlpha(1);
        plot.addDomainMarker(line, Layer.BACKGROUND);
    }

    private void label(XYPlot plot, int from) {
        ValueMarker said = new ValueMarker(from + 0.5, look.text(), dashes());
        label(said, words.get("note.hold-shift"), from > data.points().size() / 2, 0);
        plot.addDomainMarker(said, Layer.FOREGROUND);
    }

    private void legend() {
        addLegendShape(data.isSimulated() ? PointLook.SIMULATED : PointLook.COUNTED, words.get("legend.hold-pair"));
        if (data.points().stream()
                .anyMatch(point -> point.on().isSignal() || point.on().isAverageBeyond())) {
            addLegendShape(
                    data.isSimulated() ? PointLook.SIMULATED_SIGNAL : PointLook.SIGNAL,
                    words.get("legend.hold-beyond"));
        }
        if (data.points().stream().anyMatch(HoldPlot.Point::isDoubted)) {
            addLegendShape(PointLook.VOID, words.get("legend.hold-doubted"));
        }
        addLegendLine(words.get("legend.hold-mean"), stroke(1.8), look.counted());
        addLegendLine(words.get("legend.limits"), limits(), look.factor());
    }
}
