package porebench.method.hold;

import java.util.List;
import java.util.Optional;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * By how much the differences changed: their mean since the sum that signalled left 0, less the mean before.
 *
 * <p>The interval is that of Student's t for two means of one common scatter. It is conditional on a signal, which comes
 * sooner where chance helps: a small shift is overstated, and the interval holds it less often than 95 in 100 times.
 *
 * @param percent the change, in % air; positive where the meter reads more air than it did, as with a factor now too small
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 * @param from index of the first pair after the change, counted from 0 among all pairs
 */
public record HoldShift(double percent, double low, double high, int from) {
    private static final double CONFIDENCE = 0.95;

    /** Returns the shift at the first signal, from all pairs before and since; none without a signal. */
    static Optional<HoldShift> of(List<HoldPoint> points) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).isSignal()) {
                return Optional.of(between(points, onset(points, i)));
            }
        }
        return Optional.empty();
    }

    /** Returns the first pair that the sum of a signal is made of. */
    private static int onset(List<HoldPoint> points, int signal) {
        boolean isUp = points.get(signal).larger() > 0;
        int first = signal;
        while (isUp ? points.get(first - 1).high() > 0 : points.get(first - 1).low() > 0) {
            first--;
        }
        return first;
    }

    /** There are two pairs at least before the onset, as these have no score, and three at least after it. */
    private static HoldShift between(List<HoldPoint> points, int onset) {
        Summary before = summary(points.subList(0, onset));
        Summary after = summary(points.subList(onset, points.size()));
        int degrees = before.count() + after.count() - 2;
        double scatter = Math.sqrt((squares(before) + squares(after)) / degrees);
        double error = scatter * Math.sqrt(1.0 / before.count() + 1.0 / after.count());
        double change = after.mean() - before.mean();
        double reach = new StudentT(degrees).coverageFactor(CONFIDENCE) * error;
        return new HoldShift(change, change - reach, change + reach, onset);
    }

    private static double squares(Summary summary) {
        double deviation = summary.standardDeviation().orElseThrow();
        return (summary.count() - 1) * deviation * deviation;
    }

    private static Summary summary(List<HoldPoint> points) {
        return Summary.of(points.stream()
                .filter(point -> !point.pair().isDoubted())
                .mapToDouble(point -> point.pair().difference())
                .toArray());
    }
}
