package porebench.chart.meter;

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
 * What the plot of a dial check shows: the error of the dial, reading less true air, against the true air.
 *
 * @param calibration the calibration in which it was checked
 * @param points the amounts of air checked, in rising order
 * @param model the error that the meter's model predicts, in rising order of the air; empty when there is no model
 * @param tolerancePercent how far a reading may lie from the true air, in % air, greater than 0
 */
public record DialErrors(String calibration, List<Point> points, List<Predicted> model, double tolerancePercent)
        implements Plottable {
    public DialErrors {
        points = List.copyOf(points);
        model = List.copyOf(model);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new DialErrorChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axes(words.get("axis.true-air"), words.get("axis.dial-error"))
                .each(words.get("legend.point-passes"), said(said, true))
                .each(words.get("legend.point-fails"), said(said, false))
                .band(
                        words.get("legend.tolerance", words.percent(tolerancePercent)),
                        words.signed(-tolerancePercent),
                        words.signed(tolerancePercent))
                .each(
                        words.get("legend.model"),
                        model.stream()
                                .map(one -> said.at(words.percent(one.truePercent()), words.signed(one.errorPercent())))
                                .toList())
                .sentences();
    }

    private List<String> said(PlotSaid said, boolean doPass) {
        PlotWords words = said.words();
        return points.stream()
                .filter(point -> point.passes() == doPass)
                .map(point -> said.at(words.percent(point.truePercent()), words.signed(point.errorPercent())))
                .toList();
    }

    @Override
    public DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Point point : points) {
            rows.add(List.of(
                    "check-point",
                    calibration,
                    TableColumns.number(point.truePercent()),
                    TableColumns.number(point.errorPercent()),
                    TableColumns.number(point.expandedUncertaintyPercent()),
                    Integer.toString(point.count()),
                    TableColumns.yes(point.passes()),
                    TableColumns.number(tolerancePercent)));
        }
        for (Predicted predicted : model) {
            String at = TableColumns.number(predicted.truePercent());
            rows.add(List.of("model", calibration, at, TableColumns.number(predicted.errorPercent()), "", "", "", ""));
        }
        return new DataTable(
                List.of(
                        "series",
                        "calibration_id",
                        "true_air_pct",
                        "error_pct_air",
                        "expanded_uncertainty_pct_air",
                        "readings",
                        "passes",
                        "tolerance_pct_air"),
                rows);
    }

    /**
     * One amount of air.
     *
     * @param truePercent the true air, in % air
     * @param errorPercent the mean reading less the true air, in % air
     * @param expandedUncertaintyPercent half of the bar, in % air, at least 0
     * @param count how many readings it is the mean of
     * @param passes whether the error lies within the tolerance
     */
    public record Point(
            double truePercent, double errorPercent, double expandedUncertaintyPercent, int count, boolean passes) {}

    /**
     * The error that the model predicts at one amount of air.
     *
     * @param truePercent the true air, in % air
     * @param errorPercent the predicted reading less the true air, in % air
     */
    public record Predicted(double truePercent, double errorPercent) {}
}
