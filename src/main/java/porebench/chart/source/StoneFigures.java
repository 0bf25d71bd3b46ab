package porebench.chart.source;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.port.DataTable;

/**
 * What the plot of one figure of a source over time shows: what was measured, and the figure in use, which steps where the stone
 * changed.
 *
 * @param figure which figure
 * @param measured what was measured, the earliest first
 * @param inUse from when on which figure is in use, the earliest first
 * @param until the last day shown, to which the figure in use is drawn
 */
public record StoneFigures(Figure figure, List<Measured> measured, List<Step> inUse, LocalDate until)
        implements Plottable {
    public StoneFigures {
        measured = List.copyOf(measured);
        inUse = List.copyOf(inUse);
    }

    /** What is measured of a source. */
    public enum Figure {
        /** Relative density at SSD. */
        RELATIVE_DENSITY("relative_density", "axis.relative-density", 0.02),
        /** Absorption, in %. */
        ABSORPTION("absorption_pct", "axis.absorption-pct", 0.4),
        /** Retained on 37.5 mm, in %. */
        RETAINED("retained_37_5mm_pct", "axis.retained-37-5mm-pct", 4);

        private final String column;
        private final String axis;
        private final double least;

        Figure(String column, String axis, double least) {
            this.column = column;
            this.axis = axis;
            this.least = least;
        }

        /** Returns its name in a table. */
        String column() {
            return column;
        }

        /** Returns how much of it is shown at least, from bottom to top. */
        double least() {
            return least;
        }

        /** Returns the key of what stands beside its axis. */
        String axis() {
            return axis;
        }
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new StoneFiguresChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axes(words.get("axis.measured-on"), words.get(figure.axis()))
                .each(words.get("legend.measured"), said(said, false))
                .each(words.get("legend.measured-far"), said(said, true))
                .each(
                        words.get("legend.in-use"),
                        inUse.stream()
                                .map(step -> said.at(step.from().toString(), words.plain(step.value())))
                                .toList())
                .sentences();
    }

    private List<String> said(PlotSaid said, boolean areFar) {
        return measured.stream()
                .filter(one -> one.isFar() == areFar)
                .map(one -> said.at(one.on().toString(), one.said()))
                .toList();
    }

    @Override
    public DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Measured one : measured) {
            rows.add(List.of(
                    "measured",
                    one.id(),
                    one.on().toString(),
                    one.said(),
                    one.by(),
                    one.ledge(),
                    TableColumns.yes(one.isFar())));
        }
        inUse.forEach(step -> rows.add(List.of(
                "in-use", "", step.from().toString(), TableColumns.number(step.value()), "", step.ledge(), "")));
        return new DataTable(List.of("series", "measurement_id", "from", figure.column(), "by", "ledge", "far"), rows);
    }

    /**
     * A figure that was measured.
     *
     * @param id the measurement
     * @param on its day
     * @param value the figure
     * @param said the figure as it was written down
     * @param by who measured
     * @param ledge the ledge or lot of its stone
     * @param isFar whether it lies far from the figure in use
     */
    public record Measured(
            String id, LocalDate on, double value, String said, String by, String ledge, boolean isFar) {}

    /**
     * From when on a figure is in use.
     *
     * @param from the first day
     * @param value the figure
     * @param ledge the ledge or lot of the stone
     */
    public record Step(LocalDate from, double value, String ledge) {}
}
