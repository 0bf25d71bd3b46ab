package porebench.statistics.control;

import java.util.OptionalDouble;
import java.util.Random;
import porebench.quantity.Require;

/**
 * How often a control chart signals although nothing has changed, found by drawing many charts like it.
 *
 * <p>Each chart is drawn as the real one is: readings are rounded to the division, subgroups have their own sizes and differ by
 * themselves, centre and limits come from the drawn base, all charts shown together and all rules asked are looked at.
 * Signals at points that follow each other are one alarm. What is drawn spreads as the real base was found to spread.
 *
 * <p>Source: definition; simulated, with the random numbers of {@link Random}. Differences from the source: none. The mean run
 * length of the books is that of limits that are known; by limits from few points it is mostly that of the lucky bases, so
 * points are counted by alarms here.
 *
 * @param charts how many charts were drawn
 * @param seed the seed of the random numbers
 * @param withAlarm of how many charts as long as the real one at least one point signals
 * @param points how many points were drawn after the base
 * @param alarms how many alarms they gave
 */
public record FalseAlarms(int charts, long seed, int withAlarm, long points, long alarms) {
    /** How many points follow the base in each chart: about as many as a laboratory makes until it looks at its base anew. */
    public static final int FOLLOWING = 50;

    /** The seed unless another is asked for. */
    public static final long USUAL_SEED = 1987;

    /** So many points are drawn that the answer comes within a second. */
    private static final int POINTS = 60_000;

    private static final int MOST_CHARTS = 1000;
    private static final int FEWEST_CHARTS = 100;

    /** With fewer alarms, how rare they are is hardly known. */
    private static final int FEWEST_ALARMS = 10;

    /** With fewer alarms than those there are, with 95 % confidence, no more than these in the long run (Poisson, 9 seen). */
    private static final double NO_MORE_THAN = 15.7;

    public FalseAlarms {
        Require.atLeast("charts", charts, 1);
        Require.within("withAlarm", withAlarm, 0, charts);
        Require.atLeastZero("alarms", alarms);
    }

    /** Says which points signal. */
    @FunctionalInterface
    public interface Signals {
        /** Returns for each of the points drawn whether it signals, in whichever chart. */
        boolean[] of(DrawnPoints drawn);
    }

    /**
     * Draws charts.
     *
     * @param process what points are like
     * @param real finds the signals of a chart as long as the real one
     * @param base how many points the limits of the newest phase come from, at least 1
     * @param following finds the signals of a chart whose limits come from that many first points
     * @param charts how many charts to draw, at least 1
     * @param seed the seed of the random numbers
     */
    public static FalseAlarms simulated(
            DrawnPoints.Process process, Signals real, int base, Signals following, int charts, long seed) {
        Require.atLeast("base", base, 1);
        Require.atLeast("charts", charts, 1);
        Random random = new Random(seed);
        int withAlarm = 0;
        long alarms = 0;
        for (int i = 0; i < charts; i++) {
            boolean[] marked = real.of(DrawnPoints.of(process, process.sizes().size(), process.base(), random));
            withAlarm += spells(marked, 0) > 0 ? 1 : 0;
            alarms += spells(
                    following.of(
                            DrawnPoints.of(process, base + FOLLOWING, new PhasedChart.Base(0, base, true), random)),
                    base);
        }
        return new FalseAlarms(charts, seed, withAlarm, (long) charts * FOLLOWING, alarms);
    }

    /**
     * Returns how many charts to draw, so that the answer comes soon and is known to some parts in a hundred.
     *
     * @param process what points are like
     * @param base how many points the limits come from
     */
    public static int usualCharts(DrawnPoints.Process process, int base) {
        int each = process.sizes().size() + base + FOLLOWING;
        return Math.max(FEWEST_CHARTS, Math.min(MOST_CHARTS, POINTS / each));
    }

    private static int spells(boolean[] marked, int from) {
        int spells = 0;
        for (int i = from; i < marked.length; i++) {
            spells += marked[i] && !(i > from && marked[i - 1]) ? 1 : 0;
        }
        return spells;
    }

    /** Returns in how many points after the base there is one alarm, on average; empty where they are too rare to tell. */
    public OptionalDouble pointsPerAlarm() {
        return alarms < FEWEST_ALARMS ? OptionalDouble.empty() : OptionalDouble.of((double) points / alarms);
    }

    /** Returns in how many points there is less than one alarm, where they are too rare to tell more. */
    public double rarerThan() {
        return points / NO_MORE_THAN;
    }

    /** Returns of what share of charts as long as the real one at least one point signals. */
    public double shareWithAlarm() {
        return (double) withAlarm / charts;
    }
}
