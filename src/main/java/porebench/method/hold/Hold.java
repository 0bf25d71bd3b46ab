package porebench.method.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.control.CusumRunLength;
import porebench.statistics.control.EwmaChart;

/**
 * Whether a factor still holds, from air by the meter less air by density, as cumulative sums and weighted averages.
 *
 * <p>Each difference is scored against those before it, so that what the density scatters and how well that is known are in
 * the score; a constant error of the air-free density is in the mean and does no harm. high(t) = max(0, high(t-1) + score
 * - 0.5), low likewise, a signal above 5 from the eighth pair on. A score counts 3 at most, so that one pair adds 2.5 at
 * most and a signal rests on three pairs at least: a single pair never raises one. Only the sums ask for a recheck; the
 * average, z(t) = 0.2 score + 0.8 z(t-1) with its final limit of 2.962 standard deviations, is beside it to be looked at.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 and 6.3.2.4; seen. Differences from the source: scores
 * in place of deviations, and their limit.
 *
 * @param points one a pair, in order
 * @param spread standard deviation of the differences, in % air, those far out at their limit; none under two pairs
 * @param halfStep half a step of the reported factor, in % air
 * @param shift by how much the differences changed, where there was a signal
 */
public record Hold(List<HoldPoint> points, OptionalDouble spread, double halfStep, Optional<HoldShift> shift) {
    /** What a score may be without adding up. Source: common practice, no source. */
    public static final double SLACK = 0.5;

    /** What a sum may reach. Source: common practice, no source. */
    public static final double INTERVAL = 5;

    /** What a score counts at most. */
    public static final double LIMIT = 3;

    /** Pairs under which nothing is said. */
    public static final int LEAST_PAIRS = 8;

    /** A shift that can be told is one that is seen in so many pairs on average. */
    public static final int PAIRS_TO_TELL = 20;

    /** Gives a run length of about 500 with the weight of 0.2. Source: Lucas and Saccucci, Technometrics 32 (1990); recalled. */
    private static final double WIDTH = 2.962;

    /** How far the average may go. */
    public static final double AVERAGE_LIMIT = WIDTH * Math.sqrt(EwmaChart.USUAL_WEIGHT / (2 - EwmaChart.USUAL_WEIGHT));

    private static final int HALVINGS = 30;

    public Hold {
        points = List.copyOf(points);
        Require.positive("halfStep", halfStep);
    }

    /**
     * Charts pairs.
     *
     * @param pairs in the order of time, all under one revision of the factor
     * @param halfStep half a step of the reported factor, in % air, above 0
     */
    public static Hold of(List<AirPair> pairs, double halfStep) {
        Require.positive("halfStep", halfStep);
        // Differences that never change are those of a scale of one step: its own standard deviation.
        HoldScores scores = new HoldScores(2 * halfStep / Math.sqrt(12));
        List<HoldPoint> points = new ArrayList<>();
        double high = 0;
        double low = 0;
        double average = 0;
        for (AirPair pair : pairs) {
            OptionalDouble score = pair.isDoubted() ? OptionalDouble.empty() : scores.add(pair.difference());
            if (score.isPresent()) {
                high = Math.max(0, high + score.getAsDouble() - SLACK);
                low = Math.max(0, low - score.getAsDouble() - SLACK);
                average += EwmaChart.USUAL_WEIGHT * (score.getAsDouble() - average);
            }
            boolean isAsked = score.isPresent() && scores.count() >= LEAST_PAIRS;
            points.add(new HoldPoint(
                    pair,
                    score,
                    high,
                    low,
                    average,
                    isAsked && Math.max(high, low) > Slack.over(INTERVAL),
                    isAsked && Math.abs(average) > Slack.over(AVERAGE_LIMIT)));
        }
        return new Hold(
                points,
                scores.count() < 2 ? OptionalDouble.empty() : OptionalDouble.of(scores.spread()),
                halfStep,
                HoldShift.of(points));
    }

    /** Returns the pairs whose sum is above the interval. */
    public List<HoldPoint> signals() {
        return points.stream().filter(HoldPoint::isSignal).toList();
    }

    /** Returns how many pairs are charted: all but the doubted ones. */
    public int charted() {
        return (int) points.stream().filter(point -> !point.pair().isDoubted()).count();
    }

    public HoldVerdict verdict() {
        if (shift.isPresent()) {
            return HoldVerdict.RECHECK;
        }
        if (charted() < LEAST_PAIRS) {
            return HoldVerdict.TOO_FEW;
        }
        return charted() < pairsForHalfStep().orElseThrow() ? HoldVerdict.CANNOT_TELL : HoldVerdict.HOLDS_SO_FAR;
    }

    /** Returns the average number of pairs to a signal when nothing has changed. */
    public static double runLength() {
        return Lengths.IN_CONTROL;
    }

    /** Returns how many pairs a shift of half a step takes on average, when what was before is well known; more if not. */
    public OptionalDouble pairsForHalfStep() {
        return spread.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(lengthAt(halfStep / spread.getAsDouble()));
    }

    /** Returns the shift that takes {@link #PAIRS_TO_TELL} pairs on average to be seen, in % air. */
    public OptionalDouble tellable() {
        if (spread.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Lengths.TELLABLE * spread.getAsDouble());
    }

    /** What follows from the rule alone; it takes a while, and is worked out once. */
    private static final class Lengths {
        static final double IN_CONTROL = lengthAt(0);

        /** The shift that takes the pairs to tell, in standard deviations of the differences. */
        static final double TELLABLE = tellable();

        private static double tellable() {
            double low = 0;
            double high = LIMIT;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (low + high) / 2;
                if (lengthAt(middle) > PAIRS_TO_TELL) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high;
        }
    }

    private static double lengthAt(double shift) {
        return CusumRunLength.of(SLACK, INTERVAL, LIMIT, shift);
    }
}
