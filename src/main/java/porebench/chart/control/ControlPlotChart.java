package porebench.chart.control;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.Range;
import porebench.chart.look.ChartLook;
import porebench.chart.look.LabelAxis;
import porebench.chart.look.Places;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointLook;
import porebench.chart.look.PointSeries;
import porebench.chart.look.Span;
import porebench.chart.look.ThinRenderer;
import porebench.chart.look.ThinSeries;
import porebench.chart.look.TrialPoint;
import porebench.chart.look.TrialTip;

/** A control chart: points, centre and limits of every phase, below it their spread, and what changed as upright lines. */
final class ControlPlotChart extends PlotDrawing {
    /** How much of the scale a row of words about changes takes. */
    private static final double ROW = 0.09;

    private static final int ROW_PIXELS = 17;
    private static final Color NOTHING = new Color(0, 0, 0, 0);
    private static final float BAND_STRENGTH = 0.12f;
    private static final double LEAST_SPAN = 0.1;

    /** How far above its lower end a trial without a factor stands, as a share of the scale. */
    private static final double FOOT = 0.03;

    private static final Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> LEVEL =
            point -> Optional.of(point.level());

    private final ControlPlot data;

    ControlPlotChart(ControlPlot data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        NumberAxis axis = pointAxis();
        List<ChangeRows.Placed> changes =
                ChangeRows.of(data.changes(), data.points().size());
        XYPlot level = plot(data.levelAxis(), LEVEL, ChangeRows.rows(changes));
        data.changes().forEach(change -> line(level, change));
        changes.forEach(placed -> say(level, placed));
        legend(level);
        base(level);
        sayIfSimulated(data.isSimulated());
        if (!data.hasSpread()) {
            level.setDomainAxis(axis);
            return chart(level);
        }
        XYPlot spread = plot(data.spreadAxis(), ControlPlot.Point::spread, 0);
        data.changes().forEach(change -> line(spread, change));
        return chart(axis, level, spread);
    }

    private NumberAxis pointAxis() {
        NumberAxis axis = new LabelAxis(
                words.get("axis.order"),
                data.points().stream().map(ControlPlot.Point::label).toList());
        axis.setRange(0.5, Math.max(1, data.points().size()) + 0.5);
        dress(axis);
        return axis;
    }

    private XYPlot plot(String title, Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> part, int rows) {
        XYPlot plot = new XYPlot();
        plot.setDomainGridlinesVisible(false);
        // Signals above the other points, limits above the line that joins them.
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        plot.setRangeAxis(axis(title, part, rows));
        points(plot, part, plot.getRangeAxis().getRange());
        lines(plot, part);
        return plot;
    }

    private NumberAxis axis(String title, Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> part, int rows) {
        NumberAxis axis = numbers(title);
        Span span = new Span();
        for (ControlPlot.Point point : data.points()) {
            part.apply(point).ifPresent(plotted -> {
                span.hold(plotted.value());
                plotted.low().ifPresent(span::hold);
                plotted.high().ifPresent(span::hold);
            });
        }
        if (part == LEVEL) {
            data.points()
                    .forEach(point -> point.sums().ifPresent(sums -> {
                        span.hold(sums.high());
                        span.hold(-sums.low());
                    }));
            data.notCounted().forEach(shown -> shown.value().ifPresent(span::hold));
        }
        if (span.low() <= span.high()) {
            span.show(axis, LEAST_SPAN);
            double length = axis.getRange().getLength();
            axis.setUpperBound(axis.getUpperBound() + rows * ROW * length);
        }
        return axis;
    }

    private void points(XYPlot plot, Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> part, Range scale) {
        PointSeries points = new PointSeries(this);
        for (int i = 0; i < data.points().size(); i++) {
            ControlPlot.Point point = data.points().get(i);
            Supplier<String> tip = () -> words.lines(point.said().toArray(new String[0]));
            double x = i + 1.0;
            if (part == LEVEL && point.sums().isPresent()) {
                ControlPlot.BothSums sums = point.sums().get();
                points.add(looksLike(sums.high() > sums.interval()), x, sums.high(), tip, point.id());
                points.add(looksLike(sums.low() > sums.interval()), x, -sums.low(), tip, point.id());
                continue;
            }
            part.apply(point)
                    .ifPresent(
                            plotted -> points.add(looksLike(plotted.isSignal()), x, plotted.value(), tip, point.id()));
        }
        if (part == LEVEL) {
            TrialTip tip = new TrialTip(words);
            double foot = scale.getLowerBound() + FOOT * scale.getLength();
            data.notCounted()
                    .forEach(shown -> points.add(
                            PointLook.of(shown.trial()),
                            shown.at(),
                            shown.value().orElse(foot),
                            () -> tip.of(shown.trial()),
                            shown.trial().id()));
        }
        points.addTo(plot, POINTS);
    }

    private PointLook looksLike(boolean isSignal) {
        return isSignal
                ? data.isSimulated() ? PointLook.SIMULATED_SIGNAL : PointLook.SIGNAL
                : PointLook.of(TrialPoint.State.COUNTED, data.isSimulated());
    }

    /** Joins the points of each phase, and draws centre and limits as steps from one point to the next. */
    private void lines(XYPlot plot, Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> part) {
        Places joined = new Places();
        Places lower = new Places();
        Places centre = new Places();
        Places low = new Places();
        Places high = new Places();
        int phase = 0;
        for (int i = 0; i < data.points().size(); i++) {
            ControlPlot.Point point = data.points().get(i);
            if (point.phase() != phase) {
                double between = i + 0.5;
                List.of(joined, lower, centre, low, high).forEach(series -> series.add(between, Double.NaN));
                phase = point.phase();
            }
            Optional<ControlPlot.Plotted> plotted = part.apply(point);
            if (plotted.isPresent()) {
                Optional<ControlPlot.BothSums> sums = part == LEVEL ? point.sums() : Optional.empty();
                joined.add(
                        i + 1.0,
                        sums.isPresent() ? sums.get().high() : plotted.get().value());
                if (sums.isPresent()) {
                    lower.add(i + 1.0, -sums.get().low());
                }
                step(centre, i, plotted.get().centre());
                step(low, i, plotted.get().low());
                step(high, i, plotted.get().high());
            }
        }
        ThinRenderer renderer = new ThinRenderer(true);
        ThinSeries lines = new ThinSeries();
        List<String> names = List.of("joined", "lower", "centre", "low", "high");
        List<BasicStroke> strokes = List.of(stroke(1), stroke(1), stroke(1.8), limits(), limits());
        List<Places> all = List.of(joined, lower, centre, low, high);
        for (int i = 0; i < all.size(); i++) {
            lines.add(names.get(i), all.get(i), Places.Keep.LINE);
            renderer.setSeriesStroke(i, strokes.get(i));
            renderer.setSeriesPaint(i, i <= 1 ? look.struck() : i == 2 ? look.counted() : look.factor());
        }
        plot.setDataset(LINES, lines);
        plot.setRenderer(LINES, renderer);
    }

    /** Draws a level about a point; one that goes on is one line, so that its dashes do not begin anew at every point. */
    private static void step(Places places, int index, OptionalDouble value) {
        value.ifPresent(known -> {
            int last = places.count() - 1;
            if (last >= 0 && places.y(last) == known && places.x(last) == index + 0.5) {
                places.removeLast();
            } else {
                places.add(index + 0.5, known);
            }
            places.add(index + 1.5, known);
        });
    }

    private void line(XYPlot plot, ControlPlot.ChangeMark change) {
        ValueMarker line = new ValueMarker(change.before() + 0.5, look.text(), change.isBreak() ? dashes() : dots());
        line.setAlpha(1);
        plot.addDomainMarker(line, Layer.BACKGROUND);
    }

    /** Says what changed, above all lines, so that none runs through the words. */
    private void say(XYPlot plot, ChangeRows.Placed placed) {
        ValueMarker words = new ValueMarker(placed.change().before() + 0.5);
        words.setPaint(NOTHING);
        label(words, placed.change().words(), placed.isLeft(), ROW_PIXELS * placed.row());
        plot.addDomainMarker(words, Layer.FOREGROUND);
    }

    /** Shades the points that the limits come from. */
    private void base(XYPlot plot) {
        if (data.baseCount() > 0 && data.baseCount() < data.points().size()) {
            double from = data.baseFirst() + 0.5;
            String word = words.get("legend.base");
            plot.addDomainMarker(
                    band(word, from, from + data.baseCount(), look.struck(), BAND_STRENGTH), Layer.BACKGROUND);
        }
    }

    private void legend(XYPlot level) {
        Set<PointLook> looks = EnumSet.noneOf(PointLook.class);
        for (ControlPlot.Point point : data.points()) {
            looks.add(looksLike(point.level().isSignal()));
            point.spread().ifPresent(spread -> looks.add(looksLike(spread.isSignal())));
        }
        data.notCounted().forEach(shown -> looks.add(PointLook.of(shown.trial())));
        looks.forEach(each -> addLegendShape(
                each,
                words.get(
                        switch (each) {
                            case SIGNAL -> "legend.signal";
                            case SIMULATED_SIGNAL -> "legend.simulated-signal";
                            case SIMULATED -> "legend.point-simulated";
                            case COUNTED -> "legend.point";
                            case STRUCK -> "legend.struck";
                            case VOID -> "legend.void";
                        })));
        if (data.points().stream().anyMatch(point -> point.level().centre().isPresent())) {
            addLegendLine(words.get("legend.centre"), stroke(1.8), look.counted());
            addLegendLine(words.get("legend.limits"), limits(), look.factor());
        }
        if (data.changes().stream().anyMatch(ControlPlot.ChangeMark::isBreak)) {
            addLegendLine(words.get("legend.phase"), dashes(), look.text());
        }
        if (!data.changes().stream().allMatch(ControlPlot.ChangeMark::isBreak)) {
            addLegendLine(words.get("legend.change"), dots(), look.text());
        }
    }
}
