package porebench.command.study;

import porebench.quantity.Symbolic;

/** The kinds of control chart that can be asked for. */
public enum ChartKind implements Symbolic {
    INDIVIDUALS,
    MEANS,
    MEAN_RANGE,
    MEAN_SD,
    EWMA,
    CUSUM;

    /** Returns whether the points stand for themselves, so that runs of them mean something. */
    boolean hasRunRules() {
        return this != EWMA && this != CUSUM;
    }
}
