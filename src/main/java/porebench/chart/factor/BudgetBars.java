package porebench.chart.factor;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.port.DataTable;
import porebench.quantity.Require;

/**
 * What the plot of an uncertainty budget shows: what each part contributes, and what they come to together.
 *
 * @param bars the parts from the top down, usually the largest first
 * @param combinedPercent the combined standard uncertainty, in % air, at least 0
 */
public record BudgetBars(List<Bar> bars, double combinedPercent) implements Plottable {
    public BudgetBars {
        bars = List.copyOf(bars);
        Require.atLeastZero("combinedPercent", combinedPercent);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new BudgetChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axis(words.get("axis.contribution"))
                .each(words.get("legend.found"), said(said, false))
                .each(words.get("legend.assumed"), said(said, true))
                .value(words.get("legend.together"), words.fine(combinedPercent))
                .sentences();
    }

    private List<String> said(PlotSaid said, boolean areAssumed) {
        PlotWords words = said.words();
        return bars.stream()
                .filter(bar -> bar.isAssumed() == areAssumed)
                .map(bar -> said.at(
                        bar.name(),
                        words.get("tip.contribution", words.fine(bar.contributionPercent()), words.share(bar.share()))))
                .toList();
    }

    @Override
    public DataTable table() {
        return new TableColumns<Bar>()
                .text("part", Bar::name)
                .number("contribution_pct_air", Bar::contributionPercent)
                .number("share_of_variance", Bar::share)
                .yes("assumed", Bar::isAssumed)
                .number("combined_pct_air", bar -> combinedPercent)
                .table(bars);
    }

    /**
     * One part.
     *
     * @param name what it is, as said on the axis
     * @param contributionPercent its contribution to the standard uncertainty, in % air, at least 0
     * @param share its share of the variance, from 0 to 1
     * @param isAssumed whether its figure is assumed, rather than found in the laboratory
     */
    public record Bar(String name, double contributionPercent, double share, boolean isAssumed) {
        public Bar {
            Require.atLeastZero("contributionPercent", contributionPercent);
            Require.within("share", share, 0, 1);
        }
    }
}
