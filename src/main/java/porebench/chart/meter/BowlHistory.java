package porebench.chart.meter;

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
 * What the plot of a bowl over time shows: the volume as each calibration found it, and the volume in force.
 *
 * @param found what calibrations found, the earliest first
 * @param steps from when on which volume counts, the earliest first
 * @param until the last day shown, to which the volume in force is drawn
 * @param unit the unit of all volumes, by its symbol
 */
public record BowlHistory(List<Found> found, List<Step> steps, LocalDate until, String unit) implements Plottable {
    public BowlHistory {
        found = List.copyOf(found);
        steps = List.copyOf(steps);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new BowlHistoryChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axes(words.get("axis.calibration-date"), words.get("axis.bowl", unit))
                .each(words.get("legend.volume-passes"), said(said, true))
                .each(words.get("legend.volume-fails"), said(said, false))
                .each(
                        words.get("legend.volume-in-force"),
                        steps.stream()
                                .map(step -> said.at(step.from().toString(), words.volume(step.volume())))
                                .toList())
                .sentences();
    }

    private List<String> said(PlotSaid said, boolean doPass) {
        PlotWords words = said.words();
        return found.stream()
                .filter(one -> one.passes() == doPass)
                .map(one -> said.at(
                        one.id() + ", " + one.on(),
                        words.volume(one.volume()) + " \u00B1 " + words.volume(one.expandedUncertainty())))
                .toList();
    }

    @Override
    public DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Found one : found) {
            rows.add(List.of(
                    "found",
                    one.id(),
                    one.on().toString(),
                    TableColumns.number(one.volume()),
                    TableColumns.number(one.expandedUncertainty()),
                    Integer.toString(one.fills()),
                    TableColumns.yes(one.passes())));
        }
        steps.forEach(step -> rows.add(
                List.of("in-force", "", step.from().toString(), TableColumns.number(step.volume()), "", "", "")));
        return new DataTable(
                List.of(
                        "series",
                        "calibration_id",
                        "from",
                        "volume_" + unit,
                        "expanded_uncertainty_" + unit,
                        "fills",
                        "passes"),
                rows);
    }

    /**
     * A volume that a calibration found.
     *
     * @param id the calibration
     * @param on its day
     * @param volume the mean of its fills
     * @param expandedUncertainty half of the bar, at least 0
     * @param fills how many fills there were
     * @param passes whether the bowl's size and shape pass
     */
    public record Found(
            String id, LocalDate on, double volume, double expandedUncertainty, int fills, boolean passes) {}

    /**
     * From when on a volume counts for trials.
     *
     * @param from the first day
     * @param volume the volume
     */
    public record Step(LocalDate from, double volume) {}
}
