package porebench.chart.study;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.port.DataTable;
import porebench.quantity.Symbolic;
import porebench.statistics.comparison.Mandel;

/**
 * Mandel's h or k of laboratories that tested the same materials.
 *
 * @param statistic which of the two
 * @param laboratories the laboratories, in the order of the study
 * @param levels the levels, in the order of the study
 * @param values one for each level and laboratory that tested it, level by level
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record MandelPlot(
        Statistic statistic, List<String> laboratories, List<String> levels, List<Value> values, boolean isSimulated)
        implements Plottable {
    public MandelPlot {
        laboratories = List.copyOf(laboratories);
        levels = List.copyOf(levels);
        values = List.copyOf(values);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new MandelChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        said.axes(words.get("axis.laboratory"), words.get("axis.mandel", statistic.symbol()));
        for (MandelLook look : MandelLook.values()) {
            said.each(
                    words.get(look.key(), statistic.symbol()),
                    values.stream()
                            .filter(value -> MandelLook.of(value) == look)
                            .map(value -> said(said, value))
                            .toList());
        }
        return said.simulated(isSimulated).sentences();
    }

    private String said(PlotSaid said, Value value) {
        PlotWords words = said.words();
        String who = words.get("note.at-level", laboratories.get(value.laboratory()), levels.get(value.level()));
        return value.found()
                .map(found -> said.at(
                        who,
                        words.get(
                                "tip.mandel",
                                statistic.symbol(),
                                words.threeDecimals(found.statistic()),
                                words.threeDecimals(found.critical5()),
                                words.threeDecimals(found.critical1()))))
                .orElse(who);
    }

    @Override
    public DataTable table() {
        return new TableColumns<Value>()
                .text("statistic", value -> statistic.symbol())
                .text("laboratory", value -> laboratories.get(value.laboratory()))
                .text("level", value -> levels.get(value.level()))
                .whole("results", Value::results)
                .text("value", value -> value.figure(Mandel::statistic))
                .text("critical_5", value -> value.figure(Mandel::critical5))
                .text("critical_1", value -> value.figure(Mandel::critical1))
                .text(
                        "verdict",
                        value ->
                                value.found.map(one -> one.suspicion().symbol()).orElse(""))
                .text("reason", Value::whyNot)
                .table(values);
    }

    /** Which statistic is plotted. */
    public enum Statistic implements Symbolic {
        /** Between laboratories: of either sign. */
        H,
        /** Within laboratories: never below 0. */
        K;
    }

    /**
     * What one laboratory has at one level.
     *
     * @param laboratory the place of the laboratory among them, from 0
     * @param level the place of the level among them, from 0
     * @param results how many results it gave
     * @param found the statistic with its critical values; empty where it would mean nothing
     * @param whyNot a sentence why there is none; blank where there is one
     */
    public record Value(int laboratory, int level, int results, Optional<Mandel> found, String whyNot) {
        private String figure(Function<Mandel, Double> figure) {
            return found.map(figure).map(TableColumns::number).orElse("");
        }
    }

    /** Returns whether a level has the statistic of any laboratory. */
    boolean isJudged(int level) {
        return !judged(level).isEmpty();
    }

    /**
     * Returns whether k of a level says next to nothing: of two laboratories with two results each it is above its 5 % value
     * only where one spread is more than tan(0.95 pi / 2), or 12.7, times the other.
     */
    boolean isTwoOfTwo(int level) {
        List<Value> judged = judged(level);
        return statistic == Statistic.K
                && judged.size() == 2
                && judged.stream().allMatch(value -> value.results() == 2);
    }

    private List<Value> judged(int level) {
        return values.stream()
                .filter(value -> value.level() == level && value.found().isPresent())
                .toList();
    }
}
