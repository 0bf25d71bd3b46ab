package porebench.chart.factor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;

/** The number of mixes and of those covered, as steps over the days. */
final class CoverageChart extends PlotDrawing {
    private static final double AIR = 0.02;
    private static final int LEAST_DAYS = 30;
    private static final double ABOVE = 1.08;

    private final CoverageOverTime data;

    CoverageChart(CoverageOverTime data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(dates(
                words.get("axis.day"),
                Stream.concat(data.steps().stream().map(CoverageOverTime.Step::from), Stream.of(data.until()))
                        .map(LocalDate::atStartOfDay),
                LEAST_DAYS,
                AIR));
        NumberAxis counts = numbers(words.get("axis.mixes"));
        int most = data.steps().stream()
                .mapToInt(CoverageOverTime.Step::mixes)
                .max()
                .orElse(1);
        counts.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        counts.setRange(0, Math.max(1, most) * ABOVE);
        plot.setRangeAxis(counts);
        steps(plot, POINTS, "mixes", CoverageOverTime.Step::mixes, dashes(), look.struck());
        steps(plot, LINES, "covered", CoverageOverTime.Step::covered, stroke(2.4), look.counted());
        addLegendLine(words.get("legend.covered"), stroke(2.4), look.counted());
        addLegendLine(words.get("legend.mixes"), dashes(), look.struck());
        return chart(plot);
    }

    private void steps(
            XYPlot plot,
            int layer,
            String key,
            ToIntFunction<CoverageOverTime.Step> count,
            BasicStroke stroke,
            Color colour) {
        XYSeries series = new XYSeries(key, false, true);
        for (int i = 0; i < data.steps().size(); i++) {
            CoverageOverTime.Step step = data.steps().get(i);
            LocalDate next =
                    i + 1 < data.steps().size() ? data.steps().get(i + 1).from() : data.until();
            LocalDate end = next.isAfter(data.until()) ? data.until() : next;
            if (!step.from().isAfter(end)) {
                series.add(millis(step.from().atStartOfDay()), count.applyAsInt(step));
                series.add(millis(end.atStartOfDay()), count.applyAsInt(step));
            }
        }
        line(plot, layer, series, stroke, colour);
    }
}
