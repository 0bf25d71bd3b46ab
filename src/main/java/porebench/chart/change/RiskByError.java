package porebench.chart.change;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.RiskCurve;
import porebench.port.DataTable;

/**
 * What the plot of loads wrongly judged shows: the shares wrongly passed and wrongly failed against the error of the air.
 *
 * @param curve the shares over the error
 * @param errorPercent the error asked about, in % air
 * @param risk its shares
 */
public record RiskByError(RiskCurve curve, double errorPercent, LoadRisk risk) implements Plottable {
    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new RiskChart(this, look, locale).chart();
    }

    @Override
    public DataTable table() {
        return new DataTable(
                List.of("error_pct_air", "wrongly_passed_share", "wrongly_failed_share"),
                curve.points().stream()
                        .map(point -> List.of(
                                TableColumns.number(point.errorPercent()),
                                TableColumns.number(point.risk().wronglyPassed()),
                                TableColumns.number(point.risk().wronglyFailed())))
                        .toList());
    }
}
