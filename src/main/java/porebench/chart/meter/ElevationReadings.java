package porebench.chart.meter;

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
 * What the plot of a Type A meter away from home shows: what it reads of one amount of air, by elevation.
 *
 * @param readings the predicted readings, in rising order of the elevation
 * @param truePercent the true air, in % air
 * @param calibratedMetres where the meter was calibrated, in m above sea level
 * @param limitMetres how far up or down it may be moved, in m, greater than 0
 */
public record ElevationReadings(List<Reading> readings, double truePercent, double calibratedMetres, double limitMetres)
        implements Plottable {
    public ElevationReadings {
        readings = List.copyOf(readings);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new ElevationChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        said.axes(words.get("axis.elevation"), words.get("axis.reads"));
        if (!readings.isEmpty()) {
            Reading first = readings.get(0);
            Reading last = readings.get(readings.size() - 1);
            said.each(
                    words.get("legend.reads", words.percent(truePercent)),
                    List.of(
                            said.at(words.plain(first.elevationMetres()), words.percent(first.readingPercent())),
                            said.at(words.plain(last.elevationMetres()), words.percent(last.readingPercent()))));
        }
        return said.value(words.get("legend.calibrated-here"), words.plain(calibratedMetres))
                .band(
                        words.get("legend.may-be-moved"),
                        words.plain(calibratedMetres - limitMetres),
                        words.plain(calibratedMetres + limitMetres))
                .sentences();
    }

    @Override
    public DataTable table() {
        return new TableColumns<Reading>()
                .number("elevation_m", Reading::elevationMetres)
                .number("reading_pct_air", Reading::readingPercent)
                .number("true_air_pct", reading -> truePercent)
                .number("calibrated_at_m", reading -> calibratedMetres)
                .number("limit_m", reading -> limitMetres)
                .table(readings);
    }

    /**
     * One predicted reading.
     *
     * @param elevationMetres where the meter is used, in m above sea level
     * @param readingPercent what it reads there, in % air
     */
    public record Reading(double elevationMetres, double readingPercent) {}
}
