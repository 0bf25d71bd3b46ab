package porebench.command.study;

import java.util.Locale;

/** The kinds of control chart that can be asked for. */
public enum ChartKind {
    INDIVIDUALS,
    MEANS,
    MEAN_RANGE,
    MEAN_SD,
    EWMA,
    CUSUM;

    /** Returns the name on the command line, such as {@code mean-range}. */
    public String symbol() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns whether the points stand for themselves, so that runs of them mean something. */
    boolean hasRunRules() {
        return this != EWMA && this != CUSUM;
    }
}
