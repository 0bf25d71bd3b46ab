package porebench.chart.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * A plot in words, for who does not see it: its axes, how many points of each kind there are and where they lie, its levels and limits,
 * and the points beyond them by their names. The words are those of its legend, the numbers those of its tips.
 */
public final class PlotSaid {
    /** So many points are named one by one; of more, it is said how many more there are. */
    private static final int MOST = 12;

    private final PlotWords words;
    private final List<String> sentences = new ArrayList<>();

    public PlotSaid(Locale locale) {
        words = new PlotWords(locale);
    }

    /** Returns the words and numbers of plots. */
    public PlotWords words() {
        return words;
    }

    /** Says what stands along the axes, both as they are drawn. */
    public PlotSaid axes(String across, String up) {
        sentences.add(words.get("said.axes", across, up));
        return this;
    }

    /** Says what stands along the axis of a plot of bars, or of one more plot below. */
    public PlotSaid axis(String along) {
        sentences.add(words.get("said.axis", along));
        return this;
    }

    /** Says that nothing was measured, where it was not. */
    public PlotSaid simulated(boolean isSimulated) {
        return isSimulated ? sentence(words.get("notice.simulated")) : this;
    }

    /** Says something in the words of the plot. */
    public PlotSaid sentence(String words) {
        sentences.add(words.endsWith(".") ? words : words + ".");
        return this;
    }

    /** Says a level, a limit or another figure by the word of the legend. */
    public PlotSaid value(String word, String value) {
        sentences.add(words.get("said.value", word, value));
        return this;
    }

    /** Says a figure where it is known. */
    public PlotSaid value(String word, OptionalDouble value, DoubleFunction<String> number) {
        value.ifPresent(known -> value(word, number.apply(known)));
        return this;
    }

    /** Says from where to where something reaches. */
    public PlotSaid band(String word, String low, String high) {
        sentences.add(words.get("said.band", word, low, high));
        return this;
    }

    /** Says how many points there are and between which values they lie; nothing where there is none. */
    public PlotSaid range(String word, DoubleStream values, DoubleFunction<String> number) {
        double[] all = values.sorted().toArray();
        if (all.length > 0) {
            String count = Integer.toString(all.length);
            sentences.add(
                    words.get("said.range", word, count, number.apply(all[0]), number.apply(all[all.length - 1])));
        }
        return this;
    }

    /** Says how many points there are and names them; nothing where there is none. */
    public PlotSaid each(String word, List<String> points) {
        if (!points.isEmpty()) {
            String named = String.join("; ", points.subList(0, Math.min(MOST, points.size())));
            int more = points.size() - MOST;
            String list = more > 0 ? words.get("said.more", named, Integer.toString(more)) : named;
            sentences.add(words.get("said.each", word, Integer.toString(points.size()), list));
        }
        return this;
    }

    /** Names a point with what stands at it. */
    public String at(String name, String value) {
        return words.get("said.at", name, value);
    }

    /** Says trials: those of each state by name, and of many that count between which factors they lie. */
    public PlotSaid trials(List<TrialPoint> trials) {
        for (TrialPoint.State state : TrialPoint.State.values()) {
            List<TrialPoint> some =
                    trials.stream().filter(trial -> trial.state() == state).toList();
            String word = words.get("legend." + state.symbol());
            if (some.size() > MOST) {
                range(word, factors(some), words::percent);
            }
            if (some.size() <= MOST || state != TrialPoint.State.COUNTED) {
                each(word, some.stream().map(this::named).toList());
            }
        }
        simulated(trials.stream().anyMatch(TrialPoint::isSimulated));
        return trials.isEmpty() ? sentence(words.get("nothing")) : this;
    }

    private static DoubleStream factors(List<TrialPoint> trials) {
        return trials.stream().map(TrialPoint::factorPercent).flatMapToDouble(OptionalDouble::stream);
    }

    private String named(TrialPoint trial) {
        String factor = trial.factorPercent().isPresent()
                ? words.percent(trial.factorPercent().getAsDouble())
                : words.get("tip.no-factor");
        return at(trial.id(), factor);
    }

    /** Returns what was said, a sentence each. */
    public List<String> sentences() {
        return List.copyOf(sentences);
    }
}
