package porebench.chart.factor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.Plottable;
import porebench.port.DataTable;

/**
 * What the plot of a register over time shows: how many mixes there were, and how many of them had a factor that might be used.
 *
 * @param steps the days on which either number changes, the earliest first; each holds until the next
 * @param until the last day shown
 */
public record CoverageOverTime(List<Step> steps, LocalDate until) implements Plottable {
    public CoverageOverTime {
        steps = List.copyOf(steps);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new CoverageChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        return said.axes(said.words().get("axis.day"), said.words().get("axis.mixes"))
                .each(said.words().get("legend.covered"), newest(said, Step::covered))
                .each(said.words().get("legend.mixes"), newest(said, Step::mixes))
                .sentences();
    }

    /** Says how it stood from each day on, the newest first. */
    private List<String> newest(PlotSaid said, ToIntFunction<Step> count) {
        List<String> days = new ArrayList<>();
        steps.forEach(step -> days.add(0, said.at(step.from().toString(), Integer.toString(count.applyAsInt(step)))));
        return days;
    }

    @Override
    public DataTable table() {
        return new DataTable(
                List.of("from", "mixes", "covered"),
                steps.stream()
                        .map(step -> List.of(
                                step.from().toString(),
                                Integer.toString(step.mixes()),
                                Integer.toString(step.covered())))
                        .toList());
    }

    /**
     * How it stood from a day on.
     *
     * @param from the day
     * @param mixes how many mixes there were
     * @param covered how many of them had a factor that might be used
     */
    public record Step(LocalDate from, int mixes, int covered) {}
}
