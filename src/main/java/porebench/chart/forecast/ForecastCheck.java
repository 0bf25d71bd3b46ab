package porebench.chart.forecast;

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
 * What was measured of every determination against what the trials of the other mixes had let expect of it.
 *
 * @param points one a determination that the other mixes tell of
 * @param untold how many determinations they tell nothing of
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record ForecastCheck(List<Point> points, int untold, boolean isSimulated) implements Plottable {
    public ForecastCheck {
        points = List.copyOf(points);
    }

    /**
     * One determination.
     *
     * @param mix its mix
     * @param determination its name
     * @param forecastPercent what the other mixes say of it, in % air
     * @param measuredPercent the mean of its trials, in % air
     */
    public record Point(String mix, String determination, double forecastPercent, double measuredPercent) {}

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new ForecastCheckChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        said.axes(words.get("axis.forecast"), words.get("axis.measured"))
                .each(
                        words.get("legend.forecast-determination"),
                        points.stream()
                                .map(point -> said.at(
                                        point.determination(),
                                        words.get(
                                                "tip.forecast",
                                                words.percent(point.measuredPercent()),
                                                words.percent(point.forecastPercent()))))
                                .toList());
        if (untold > 0) {
            said.sentence(words.get("note.untold", untold));
        }
        return said.simulated(isSimulated).sentences();
    }

    @Override
    public DataTable table() {
        return new TableColumns<Point>()
                .text("mix_id", Point::mix)
                .text("determination_id", Point::determination)
                .text("forecast_without_its_mix_pct_air", point -> TableColumns.number(point.forecastPercent()))
                .text("measured_pct_air", point -> TableColumns.number(point.measuredPercent()))
                .table(points);
    }
}
