package porebench.chart.study;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PointIds;
import porebench.chart.study.MandelPlot.Statistic;
import porebench.chart.study.MandelPlot.Value;
import porebench.statistics.comparison.Mandel;

/**
 * Mandel's h or k of every laboratory, its levels side by side, with the critical values of 5 % and 1 %.
 *
 * <p>Source: ISO 5725-2:1994, 7.3.1; recalled. Differences from the source: points on stems in place of bars; what means
 * nothing is a bar at 0 with its reason above the plot.
 */
final class MandelChart extends PlotDrawing {
    private static final int STEMS = 1;
    private static final int LIMITS = 2;
    private static final double LARGEST_SIDE = 10;
    private static final double LEAST_SIDE = 5;

    /** How much room the shapes of all points have along a usual window, in pixels. */
    private static final double SIDES_ALONG = 600;

    /** The levels of one laboratory stand side by side, this wide together. */
    private static final double SPREAD = 0.8;

    private static final double AIR = 1.12;

    /** Names longer than this together, with a gap each, would run into one another if written along the axis. */
    private static final int LETTERS_ALONG = 100;

    private static final int GAP_LETTERS = 2;

    /** Names of levels longer than this together are not all said at the axis. */
    private static final int LETTERS_OF_LEVELS = 60;

    private final MandelPlot data;
    private final boolean isH;

    MandelChart(MandelPlot data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
        this.isH = data.statistic() == Statistic.H;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(laboratories());
        plot.setRangeAxis(range());
        points(plot);
        stems(plot);
        limits(plot);
        partings(plot);
        sayIfSimulated(data.isSimulated());
        whyNot();
        JFreeChart chart = chart(plot);
        plot.setDomainGridlinesVisible(false);
        return chart;
    }

    private SymbolAxis laboratories() {
        SymbolAxis axis = new SymbolAxis(axisLabel(), data.laboratories().toArray(String[]::new));
        axis.setGridBandsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setRange(-0.5, data.laboratories().size() - 0.5);
        int letters = data.laboratories().stream()
                .mapToInt(name -> name.length() + GAP_LETTERS)
                .sum();
        axis.setVerticalTickLabels(letters > LETTERS_ALONG);
        dress(axis);
        return axis;
    }

    private String axisLabel() {
        List<String> levels = data.levels();
        if (levels.size() < 2) {
            return words.get("axis.laboratory");
        }
        String all = String.join(", ", levels);
        return words.get(
                "axis.laboratory-levels",
                all.length() <= LETTERS_OF_LEVELS ? all : levels.get(0) + " \u2026 " + levels.get(levels.size() - 1));
    }

    private NumberAxis range() {
        double farthest = data.values().stream()
                .flatMap(value -> value.found().stream())
                .mapToDouble(found -> Math.max(found.critical1(), Math.abs(found.statistic())))
                .max()
                .orElse(1);
        NumberAxis axis = numbers(words.get("axis.mandel", data.statistic().symbol()));
        axis.setRange(isH ? -AIR * farthest : -(AIR - 1) * farthest / 2, AIR * farthest);
        return axis;
    }

    private double place(Value value) {
        return value.laboratory()
                + SPREAD * ((value.level() + 0.5) / data.levels().size() - 0.5);
    }

    private double side() {
        int places = data.laboratories().size() * data.levels().size();
        return Math.max(LEAST_SIDE, Math.min(LARGEST_SIDE, SIDES_ALONG / places));
    }

    private static double height(Value value) {
        return value.found().map(Mandel::statistic).orElse(0.0);
    }

    private void points(XYPlot plot) {
        Map<MandelLook, List<Value>> byLook = new EnumMap<>(MandelLook.class);
        data.values()
                .forEach(value -> byLook.computeIfAbsent(MandelLook.of(value), any -> new ArrayList<>())
                        .add(value));
        XYSeriesCollection points = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        // An open shape hides the stem behind it.
        renderer.setUseFillPaint(true);
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        List<List<String>> ids = new ArrayList<>();
        byLook.forEach((each, values) -> {
            int index = points.getSeriesCount();
            XYSeries series = new XYSeries(each.name(), false, true);
            values.forEach(value -> series.add(place(value), height(value)));
            points.addSeries(series);
            ids.add(values.stream()
                    .map(value -> value.laboratory() + "/" + value.level())
                    .toList());
            renderer.setSeriesShape(index, each.shape(side() * look.scale()));
            renderer.setSeriesFillPaint(index, each.isFilled() ? each.colour(look) : look.background());
            renderer.setSeriesOutlinePaint(index, each.colour(look));
            renderer.setSeriesOutlineStroke(index, stroke(1.6));
            renderer.setSeriesToolTipGenerator(index, (dataset, which, item) -> tip(values.get(item)));
            addLegendShape(each, words.get(each.key(), data.statistic().symbol()));
        });
        renderer.setURLGenerator(new PointIds(ids));
        plot.setDataset(POINTS, points);
        plot.setRenderer(POINTS, renderer);
    }

    private String tip(Value value) {
        String who = words.get(
                "tip.laboratory",
                data.laboratories().get(value.laboratory()),
                data.levels().get(value.level()),
                Integer.toString(value.results()));
        Optional<Mandel> found = value.found();
        if (found.isEmpty()) {
            return words.lines(who, value.whyNot());
        }
        String figure = words.get(
                "tip.mandel",
                data.statistic().symbol(),
                words.threeDecimals(found.get().statistic()),
                words.threeDecimals(found.get().critical5()),
                words.threeDecimals(found.get().critical1()));
        return words.lines(who, figure, words.get(MandelLook.of(value).key()));
    }

    private void stems(XYPlot plot) {
        XYSeries stems = new XYSeries("stems", false, true);
        for (Value value : data.values()) {
            if (value.found().isPresent()) {
                stems.add(place(value), 0);
                stems.add(place(value), height(value));
                stems.add(place(value), null);
            }
        }
        line(plot, STEMS, stems, stroke(2), look.struck());
    }

    private void limits(XYPlot plot) {
        XYSeriesCollection lines = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        // As one path, so that dashes do not begin anew at every laboratory.
        renderer.setDrawSeriesLineAsPath(true);
        for (int sign : isH ? new int[] {1, -1} : new int[] {1}) {
            line(lines, renderer, found -> sign * found.critical5(), dashes());
            line(lines, renderer, found -> sign * found.critical1(), stroke(1.8));
        }
        plot.setDataset(LIMITS, lines);
        plot.setRenderer(LIMITS, renderer);
        if (data.values().stream().anyMatch(value -> value.found().isPresent())) {
            addLegendLine(words.get("legend.critical-5"), dashes(), look.factor());
            addLegendLine(words.get("legend.critical-1"), stroke(1.8), look.factor());
        }
    }

    private void line(
            XYSeriesCollection lines,
            XYLineAndShapeRenderer renderer,
            ToDoubleFunction<Mandel> critical,
            BasicStroke stroke) {
        int index = lines.getSeriesCount();
        XYSeries series = new XYSeries(index, false, true);
        int levels = data.levels().size();
        List<Value> inOrder = data.values().stream()
                .sorted((one, other) -> Integer.compare(
                        one.laboratory() * levels + one.level(), other.laboratory() * levels + other.level()))
                .toList();
        for (Value value : inOrder) {
            value.found().ifPresent(found -> {
                double left = value.laboratory() - 0.5 + (double) value.level() / levels;
                extend(series, left, left + 1.0 / levels, critical.applyAsDouble(found));
            });
        }
        lines.addSeries(series);
        renderer.setSeriesPaint(index, look.factor());
        renderer.setSeriesStroke(index, stroke);
    }

    /** Draws a level from left to right; the one before goes on up to it, so that no gap looks like a dash. */
    private static void extend(XYSeries series, double left, double right, double level) {
        int last = series.getItemCount() - 1;
        if (last >= 0) {
            Number before = series.getY(last);
            series.remove(last);
            series.add(left, before);
        }
        series.add(left, level);
        series.add(right, level);
    }

    /** Parts the laboratories from one another, and shows where 0 is. */
    private void partings(XYPlot plot) {
        for (int i = 1; i < data.laboratories().size(); i++) {
            plot.addDomainMarker(new ValueMarker(i - 0.5, look.grid(), stroke(1)), Layer.BACKGROUND);
        }
        plot.addRangeMarker(new ValueMarker(0, look.text(), stroke(1)), Layer.BACKGROUND);
    }

    /** Says above the plot what is not shown in it or says next to nothing, and why: once for each reason. */
    private void whyNot() {
        Map<String, List<Integer>> levels = new LinkedHashMap<>();
        Map<String, List<String>> laboratories = new LinkedHashMap<>();
        for (Value value : data.values()) {
            if (value.found().isPresent()) {
                continue;
            }
            if (data.isJudged(value.level())) {
                laboratories
                        .computeIfAbsent(value.whyNot(), any -> new ArrayList<>())
                        .add(words.get(
                                "note.at-level",
                                data.laboratories().get(value.laboratory()),
                                data.levels().get(value.level())));
            } else {
                levels.computeIfAbsent(value.whyNot(), any -> new ArrayList<>()).add(value.level());
            }
        }
        levels.forEach((why, which) ->
                explainAbove(words.get("note.no-mandel", data.statistic().symbol(), names(which), why)));
        laboratories.forEach((why, which) ->
                explainAbove(words.get("note.no-mandel-of", data.statistic().symbol(), String.join(", ", which), why)));
        List<Integer> twoOfTwo = IntStream.range(0, data.levels().size())
                .filter(data::isTwoOfTwo)
                .boxed()
                .toList();
        if (!twoOfTwo.isEmpty()) {
            explainAbove(words.get("note.two-of-two", names(twoOfTwo)));
        }
    }

    private String names(List<Integer> levels) {
        return String.join(
                ", ",
                IntStream.range(0, data.levels().size())
                        .filter(levels::contains)
                        .mapToObj(level -> data.levels().get(level))
                        .toList());
    }
}
