package porebench.chart.factor;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotWords;
import porebench.chart.look.TrialPoint;

/**
 * The factor of every trial of a mix against the date, the factor in force as steps, and where determinations begin.
 *
 * <p>Times are of the laboratory's clock; the axis shows them as they are, without a zone.
 */
public final class TrialTimeChart {
    private static final TimeZone AS_WRITTEN = TimeZone.getTimeZone("UTC");
    private static final double AIR = 0.04;
    private static final int LEAST_DAYS = 10;
    private static final double HEADROOM = 0.12;

    /** From this share of the axis on, a name stands to the left of its line, where it is not cut off. */
    private static final double FAR_RIGHT = 0.7;

    private final FactorOverTime data;
    private final ChartLook look;
    private final PlotWords words;
    private final PlotParts parts;

    private TrialTimeChart(FactorOverTime data, ChartLook look, Locale locale) {
        this.data = data;
        this.look = look;
        this.words = new PlotWords(locale);
        this.parts = new PlotParts(look, words);
    }

    public static JFreeChart of(FactorOverTime data, ChartLook look, Locale locale) {
        return new TrialTimeChart(data, look, locale).chart();
    }

    private JFreeChart chart() {
        FactorAxis range = withHeadroom(FactorAxis.of(data));
        XYPlot plot = new XYPlot();
        DateAxis dates = dateAxis();
        plot.setDomainAxis(dates);
        plot.setRangeAxis(parts.factorAxis(range.low(), range.high()));
        parts.addTrials(
                plot, data.trials(), index -> millis(data.trials().get(index).testedAt()), range.foot());
        steps(plot);
        data.begun().forEach(begun -> boundary(plot, begun, dates.getRange()));
        if (!data.begun().isEmpty()) {
            parts.addLegendLine(words.get("legend.determination"), parts.dots(), look.text());
        }
        return parts.chart(plot);
    }

    /** Makes room above the points for the names of determinations. */
    private FactorAxis withHeadroom(FactorAxis range) {
        return data.begun().isEmpty()
                ? range
                : new FactorAxis(range.low(), range.high() + HEADROOM * (range.high() - range.low()));
    }

    private DateAxis dateAxis() {
        List<LocalDateTime> all = Stream.of(
                        data.trials().stream().map(TrialPoint::testedAt),
                        data.steps().stream().map(step -> step.from().atStartOfDay()),
                        data.begun().stream().map(begun -> begun.on().atStartOfDay()),
                        Stream.of(data.until().atStartOfDay()))
                .flatMap(times -> times)
                .sorted()
                .toList();
        double first = millis(all.get(0));
        double last = millis(all.get(all.size() - 1));
        double span = Math.max(last - first, LEAST_DAYS * 86_400_000.0);
        DateAxis axis = new DateAxis(words.get("axis.date"), AS_WRITTEN, words.locale());
        axis.setRange(new Date((long) (first - AIR * span)), new Date((long) (first + (1 + AIR) * span)));
        parts.dress(axis);
        return axis;
    }

    private void steps(XYPlot plot) {
        XYSeriesCollection dataset = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYSeries inForce = new XYSeries("in force", false, true);
        for (int i = 0; i < data.steps().size(); i++) {
            FactorOverTime.Step step = data.steps().get(i);
            LocalDate end =
                    i + 1 < data.steps().size() ? data.steps().get(i + 1).from() : later(step.from());
            double from = millis(step.from().atStartOfDay());
            if (step.factorPercent().isPresent()) {
                inForce.add(from, step.factorPercent().getAsDouble());
                inForce.add(millis(end.atStartOfDay()), step.factorPercent().getAsDouble());
            } else {
                inForce.add(from, null);
            }
        }
        dataset.addSeries(inForce);
        renderer.setSeriesPaint(0, look.factor());
        renderer.setSeriesStroke(0, parts.stroke(2.2));
        plot.setDataset(PlotParts.LINES, dataset);
        plot.setRenderer(PlotParts.LINES, renderer);
        if (!inForce.isEmpty()) {
            parts.addLegendLine(words.get("legend.in-force"), parts.stroke(2.2), look.factor());
        }
    }

    private LocalDate later(LocalDate from) {
        return from.isAfter(data.until()) ? from : data.until();
    }

    private void boundary(XYPlot plot, FactorOverTime.Begun begun, Range shown) {
        double at = millis(begun.on().atStartOfDay());
        boolean farRight = at > shown.getLowerBound() + FAR_RIGHT * shown.getLength();
        ValueMarker line = new ValueMarker(at);
        line.setPaint(look.text());
        line.setStroke(parts.dots());
        line.setAlpha(1);
        line.setLabel(begun.id());
        line.setLabelFont(look.font());
        line.setLabelPaint(look.text());
        line.setLabelBackgroundColor(look.background());
        line.setLabelAnchor(farRight ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
        line.setLabelTextAnchor(farRight ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        double gap = 4 * look.scale();
        line.setLabelOffset(new RectangleInsets(gap, gap, gap, gap));
        plot.addDomainMarker(line, Layer.BACKGROUND);
    }

    private static double millis(LocalDateTime time) {
        return time.toInstant(ZoneOffset.UTC).toEpochMilli();
    }
}
