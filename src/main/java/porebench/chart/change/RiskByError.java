package porebench.chart.change;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
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
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axes(words.get("axis.air-error"), words.get("axis.loads"))
                .value(words.get("legend.air-error"), words.signed(errorPercent))
                .value(words.get("legend.wrongly-passed"), loads(words, risk.wronglyPassed()))
                .value(words.get("legend.wrongly-failed"), loads(words, risk.wronglyFailed()))
                .range(
                        words.get("said.of", words.get("legend.wrongly-passed"), words.get("said.curve")),
                        curve.points().stream()
                                .mapToDouble(point -> point.risk().wronglyPassed()),
                        share -> loads(words, share))
                .range(
                        words.get("said.of", words.get("legend.wrongly-failed"), words.get("said.curve")),
                        curve.points().stream()
                                .mapToDouble(point -> point.risk().wronglyFailed()),
                        share -> loads(words, share))
                .sentences();
    }

    private static String loads(PlotWords words, double share) {
        return words.percent(100 * share);
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
