package porebench.chart.factor;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

/**
 * What the plot of a determination shows: the factor of each trial in the order in which they were made.
 *
 * @param trials all trials, those that do not count among them
 * @param meanPercent the mean of those that count, in % air; empty when none counts
 * @param interval the 95 % interval of the mean; empty for fewer than two
 * @param reportedPercent the factor as reported, in % air; empty when none counts
 */
public record FactorByTrial(
        List<TrialPoint> trials,
        OptionalDouble meanPercent,
        Optional<Interval> interval,
        OptionalDouble reportedPercent)
        implements Plottable {
    public FactorByTrial {
        trials = List.copyOf(trials);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new TrialOrderChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        said.axes(words.get("axis.trial"), words.get("axis.factor"))
                .trials(trials)
                .value(words.get("legend.mean"), meanPercent, words::percent);
        interval.ifPresent(known -> said.band(
                words.get("legend.interval"), words.percent(known.lowPercent()), words.percent(known.highPercent())));
        return said.value(words.get("legend.reported"), reportedPercent, words::percent)
                .sentences();
    }

    @Override
    public DataTable table() {
        return new TableColumns<TrialPoint>()
                .text("trial_id", TrialPoint::id)
                .text("tested_at", trial -> trial.testedAt().toString())
                .text("operator", TrialPoint::operator)
                .text("meter_id", TrialPoint::meter)
                .known("factor_pct_air", TrialPoint::factorPercent)
                .text("state", trial -> trial.state().symbol())
                .text("reason", TrialPoint::reason)
                .yes("simulated", TrialPoint::isSimulated)
                .known("mean_pct_air", trial -> meanPercent)
                .text("interval_low_pct_air", trial -> end(Interval::lowPercent))
                .text("interval_high_pct_air", trial -> end(Interval::highPercent))
                .known("reported_pct_air", trial -> reportedPercent)
                .table(trials);
    }

    private String end(Function<Interval, Double> end) {
        return interval.map(end).map(TableColumns::number).orElse("");
    }

    /**
     * An interval of the factor.
     *
     * @param lowPercent its lower end, in % air
     * @param highPercent its upper end, in % air
     */
    public record Interval(double lowPercent, double highPercent) {}
}
