package porebench.chart.factor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

/**
 * What the plot of a mix over time shows: the trials of all its determinations and the factor in force.
 *
 * @param trials all trials of the mix
 * @param steps its factor issues, the earliest first
 * @param begun its determinations, the earliest first
 * @param until the last day shown, to which the factor in force is drawn
 */
public record FactorOverTime(List<TrialPoint> trials, List<Step> steps, List<Begun> begun, LocalDate until)
        implements Plottable {
    public FactorOverTime {
        trials = List.copyOf(trials);
        steps = List.copyOf(steps);
        begun = List.copyOf(begun);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new TrialTimeChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        return said.axes(words.get("axis.date"), words.get("axis.factor"))
                .trials(trials)
                .each(
                        words.get("legend.in-force"),
                        steps.stream().map(step -> said(said, step)).toList())
                .each(
                        words.get("legend.determination"),
                        begun.stream()
                                .map(one -> said.at(one.id(), one.on().toString()))
                                .toList())
                .sentences();
    }

    private static String said(PlotSaid said, Step step) {
        PlotWords words = said.words();
        return said.at(
                step.from().toString(),
                step.factorPercent().isPresent()
                        ? words.percent(step.factorPercent().getAsDouble())
                        : words.get("tip.no-factor"));
    }

    @Override
    public DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (TrialPoint trial : trials) {
            rows.add(List.of(
                    "trial",
                    trial.id(),
                    trial.testedAt().toString(),
                    trial.operator(),
                    trial.meter(),
                    TableColumns.number(trial.factorPercent()),
                    trial.state().symbol(),
                    trial.reason(),
                    TableColumns.yes(trial.isSimulated())));
        }
        for (Step step : steps) {
            String series = step.factorPercent().isPresent() ? "in-force" : "withdrawn";
            String factor = TableColumns.number(step.factorPercent());
            rows.add(List.of(
                    series, Integer.toString(step.revision()), step.from().toString(), "", "", factor, "", "", ""));
        }
        begun.forEach(
                one -> rows.add(List.of("determination", one.id(), one.on().toString(), "", "", "", "", "", "")));
        return new DataTable(
                List.of("series", "id", "at", "operator", "meter_id", "factor_pct_air", "state", "reason", "simulated"),
                rows);
    }

    /**
     * From when on a factor holds.
     *
     * @param revision the revision of the factor
     * @param from the first day
     * @param factorPercent the factor in % air; empty when the revision withdrew it
     */
    public record Step(int revision, LocalDate from, OptionalDouble factorPercent) {}

    /**
     * The beginning of a determination.
     *
     * @param id its name
     * @param on the day
     */
    public record Begun(String id, LocalDate on) {}
}
