package porebench.method.hold;

import java.util.List;
import java.util.Optional;
import porebench.statistics.distribution.StudentT;

/**
 * By how much the differences changed: their mean since the change less the mean before it.
 *
 * <p>The change is put where the two means part the most, in the direction of the signal, counted in the standard error of
 * their difference: for normal differences the most likely place. Two pairs at least stand before it, three up to the signal after.
 *
 * <p>A signal comes sooner where chance helps, and the place is chosen by the same pairs: the interval of Student's t for two
 * means, of one scatter, would hold a small shift far too seldom. It is made twice as wide. Then it holds 95 of 100 shifts of
 * three quarters of the standard deviation or more, be they seen at the signal or twenty pairs later; smaller ones, which seldom
 * signal, are overstated and held less often. Source: simulated here ({@code HoldShiftPromise}).
 *
 * @param percent the change, in % air; positive where the meter reads more air than it did, as with a factor now too small
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param from index of the first pair after the change, counted from 0 among all pairs
 */
public record HoldShift(double percent, double low, double high, int from) {
    /** How often the interval holds a shift that is not small. */
    public static final double CONFIDENCE = 0.95;

    /** The least shift of which that is said, in standard deviations of the differences. */
    public static final double NOT_SMALL = 0.75;

    private static final double WIDER = 2;
    private static final int LEAST_BEFORE = 2;

    /** Returns the shift at the first signal, from all pairs before and since; none without a signal. */
    static Optional<HoldShift> of(List<HoldPoint> points) {
        int[] charted = new int[points.size()];
        double[] differences = new double[points.size()];
        int count = 0;
        int signal = -1;
        for (int i = 0; i < points.size(); i++) {
            HoldPoint point = points.get(i);
            if (!point.pair().isDoubted()) {
                signal = signal < 0 && point.isSignal() ? count : signal;
                charted[count] = i;
                differences[count] = point.pair().difference();
                count++;
            }
        }
        if (signal < 0) {
            return Optional.empty();
        }
        double direction = Math.signum(points.get(charted[signal]).larger());
        int place = place(differences, count, signal, direction);
        return Optional.of(between(differences, count, place, charted[place]));
    }

    /** Returns how many pairs stand before the change. */
    private static int place(double[] differences, int count, int signal, double direction) {
        double total = 0;
        for (int i = 0; i < count; i++) {
            total += differences[i];
        }
        double before = 0;
        double most = Double.NEGATIVE_INFINITY;
        int best = LEAST_BEFORE;
        for (int place = 1; place <= signal - 2; place++) {
            before += differences[place - 1];
            double after = (total - before) / (count - place);
            double parts = direction * (after - before / place) * Math.sqrt((double) place * (count - place) / count);
            if (place >= LEAST_BEFORE && parts > most) {
                most = parts;
                best = place;
            }
        }
        return best;
    }

    private static HoldShift between(double[] differences, int count, int place, int from) {
        double before = mean(differences, 0, place);
        double after = mean(differences, place, count);
        double squares = squares(differences, 0, place, before) + squares(differences, place, count, after);
        double error = Math.sqrt(squares / (count - 2) * (1.0 / place + 1.0 / (count - place)));
        double reach = WIDER * new StudentT(count - 2).coverageFactor(CONFIDENCE) * error;
        return new HoldShift(after - before, after - before - reach, after - before + reach, from);
    }

    private static double mean(double[] values, int from, int end) {
        double sum = 0;
        for (int i = from; i < end; i++) {
            sum += values[i];
        }
        return sum / (end - from);
    }

    private static double squares(double[] values, int from, int end, double mean) {
        double squares = 0;
        for (int i = from; i < end; i++) {
            squares += (values[i] - mean) * (values[i] - mean);
        }
        return squares;
    }
}
