package porebench.statistics.outlier;

import porebench.quantity.Require;
import porebench.quantity.Symbolic;

/**
 * How far something stands out, in the words of ISO 5725-2.
 *
 * <p>Source: ISO 5725-2:1994, 7.1 and 7.3.2; recalled.
 */
public enum Suspicion implements Symbolic {
    /** Not above the 5 % critical value. */
    NONE,
    /** Above the 5 % critical value, not above that of 1 %: to be looked into, and kept. */
    STRAGGLER,
    /** Above the 1 % critical value: a statistical outlier, to be left out only where a cause is found. */
    OUTLIER;

    public static final double STRAGGLING = 0.05;
    public static final double OUTLYING = 0.01;

    /** Returns what a probability of standing out by chance amounts to. */
    public static Suspicion ofProbability(double p) {
        Require.within("p", p, 0, 1);
        return p < OUTLYING ? OUTLIER : p < STRAGGLING ? STRAGGLER : NONE;
    }

    public static Suspicion of(double statistic, double critical5, double critical1) {
        return statistic > critical1 ? OUTLIER : statistic > critical5 ? STRAGGLER : NONE;
    }
}
