package porebench.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of control chart that can be asked for. */
enum ChartKind {
    INDIVIDUALS,
    MEAN_RANGE,
    MEAN_SD,
    EWMA,
    CUSUM;

    /** Returns the name on the command line, such as {@code mean-range}. */
    String symbol() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<ChartKind> find(String symbol) {
        return Arrays.stream(values())
                .filter(kind -> kind.symbol().equals(symbol))
                .findFirst();
    }

    /** Returns whether the points stand for themselves, so that runs of them mean something. */
    boolean hasRunRules() {
        return this != EWMA && this != CUSUM;
    }
}
