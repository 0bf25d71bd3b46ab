package porebench.chart.change;

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
 * What the plot of a comparison shows: the difference with its two intervals, against the margin.
 *
 * @param differencePercent after less before, in % air
 * @param half95Percent half the width of its 95 % interval, in % air, at least 0
 * @param half90Percent half the width of its 90 % interval, in % air, at least 0
 * @param marginPercent how far a factor may move before it matters, in % air, greater than 0
 */
public record DifferenceShown(
        double differencePercent, double half95Percent, double half90Percent, double marginPercent)
        implements Plottable {
    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new DifferenceChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axis(words.get("axis.difference"))
                .value(words.get("legend.difference"), words.fine(differencePercent))
                .band(words.get("legend.difference-95"), end(words, -half95Percent), end(words, half95Percent))
                .band(words.get("legend.difference-90"), end(words, -half90Percent), end(words, half90Percent))
                .band(
                        words.get("legend.margin", words.threeDecimals(marginPercent)),
                        words.fine(-marginPercent),
                        words.fine(marginPercent))
                .sentences();
    }

    private String end(PlotWords words, double half) {
        return words.fine(differencePercent + half);
    }

    @Override
    public DataTable table() {
        return new DataTable(
                List.of(
                        "difference_pct_air",
                        "low_95_pct_air",
                        "high_95_pct_air",
                        "low_90_pct_air",
                        "high_90_pct_air",
                        "margin_pct_air"),
                List.of(List.of(
                        TableColumns.number(differencePercent),
                        TableColumns.number(differencePercent - half95Percent),
                        TableColumns.number(differencePercent + half95Percent),
                        TableColumns.number(differencePercent - half90Percent),
                        TableColumns.number(differencePercent + half90Percent),
                        TableColumns.number(marginPercent))));
    }
}
