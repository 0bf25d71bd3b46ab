package porebench.chart.factor;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.TrialPoint;

/**
 * The factor of every trial of a mix against the date, the factor in force as steps, and where determinations begin.
 *
 * <p>Times are of the laboratory's clock; the axis shows them as they are, without a zone.
 */
final class TrialTimeChart extends PlotDrawing {
    private static final double AIR = 0.04;
    private static final int LEAST_DAYS = 10;
    private static final double HEADROOM = 0.12;

    /** From this share of the axis on, a name stands to the left of its line, where it is not cut off. */
    private static final double FAR_RIGHT = 0.7;

    private final FactorOverTime data;

    TrialTimeChart(FactorOverTime data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        FactorAxis range = withHeadroom(FactorAxis.of(data));
        XYPlot plot = new XYPlot();
        DateAxis dates = dateAxis();
        plot.setDomainAxis(dates);
        plot.setRangeAxis(factorAxis(range.low(), range.high()));
        addTrials(plot, data.trials(), index -> millis(data.trials().get(index).testedAt()), range.foot());
        steps(plot);
        data.begun().forEach(begun -> boundary(plot, begun, dates.getRange()));
        if (!data.begun().isEmpty()) {
            addLegendLine(words.get("legend.determination"), dots(), look.text());
        }
        return chart(plot);
    }

    /** Makes room above the points for the names of determinations. */
    private FactorAxis withHeadroom(FactorAxis range) {
        return data.begun().isEmpty()
                ? range
                : new FactorAxis(range.low(), range.high() + HEADROOM * (range.high() - range.low()));
    }

    private DateAxis dateAxis() {
        Stream<LocalDateTime> times = Stream.of(
                        data.trials().stream().map(TrialPoint::testedAt),
                        data.steps().stream().map(step -> step.from().atStartOfDay()),
                        data.begun().stream().map(begun -> begun.on().atStartOfDay()),
                        Stream.of(data.until().atStartOfDay()))
                .flatMap(some -> some);
        return dates(words.get("axis.date"), times, LEAST_DAYS, AIR);
    }

    private void steps(XYPlot plot) {
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
        line(plot, LINES, inForce, stroke(2.2), look.factor());
        if (!inForce.isEmpty()) {
            addLegendLine(words.get("legend.in-force"), stroke(2.2), look.factor());
        }
    }

    private LocalDate later(LocalDate from) {
        return from.isAfter(data.until()) ? from : data.until();
    }

    private void boundary(XYPlot plot, FactorOverTime.Begun begun, Range shown) {
        double at = millis(begun.on().atStartOfDay());
        boolean farRight = at > shown.getLowerBound() + FAR_RIGHT * shown.getLength();
        ValueMarker line = new ValueMarker(at, look.text(), dots());
        label(line, begun.id(), farRight, 0);
        plot.addDomainMarker(line, Layer.BACKGROUND);
    }
}
