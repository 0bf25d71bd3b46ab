package porebench.chart.study;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.port.DataTable;

/**
 * What share of a variance each of its components has.
 *
 * @param shares the components in the order of the study
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record ComponentShares(List<Share> shares, boolean isSimulated) implements Plottable {
    public ComponentShares {
        shares = List.copyOf(shares);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new ComponentSharesChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        said.axis(said.words().get("axis.share"));
        for (Share share : shares) {
            said.value(
                    share.name(),
                    share.sharePercent().isPresent()
                            ? said.words()
                                    .get(
                                            "label.share",
                                            said.words()
                                                    .share(share.sharePercent().getAsDouble() / 100))
                            : said.words().get("label.not-estimated"));
        }
        return said.simulated(isSimulated).sentences();
    }

    @Override
    public DataTable table() {
        return new TableColumns<Share>()
                .text("component", Share::name)
                .known("share_pct", Share::sharePercent)
                .known("standard_deviation", Share::standardDeviation)
                .text("remark", Share::words)
                .table(shares);
    }

    /**
     * One component.
     *
     * @param name what varies
     * @param sharePercent its share of the total variance, in %; empty where it is not estimated
     * @param standardDeviation the root of its variance, in the unit of the readings; empty where it is not estimated
     * @param words what is known of it, or why it is not estimated
     */
    public record Share(String name, OptionalDouble sharePercent, OptionalDouble standardDeviation, String words) {}
}
