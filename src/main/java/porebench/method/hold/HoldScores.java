package porebench.method.hold;

import java.util.OptionalDouble;
import porebench.statistics.distribution.Normal;
import porebench.statistics.distribution.StudentT;

/**
 * Scores of differences, each against the mean and standard deviation of those before it.
 *
 * <p>With n - 1 differences before it, t = (x - mean) / (s sqrt(n / (n - 1))) has n - 2 degrees of freedom; the score is the
 * normal deviate of the same tail. In control the scores are independent and standard normal however few pairs there are.
 *
 * <p>Source: D. M. Hawkins, The Statistician 36 (1987), 299-315, self-starting sums; recalled. Differences from the source:
 * scores stop at a limit, and a difference beyond it enters mean and standard deviation at the limit.
 */
final class HoldScores {
    private final double leastSpread;
    private int count;
    private double mean;
    private double squares;

    HoldScores(double leastSpread) {
        this.leastSpread = leastSpread;
    }

    int count() {
        return count;
    }

    /** Returns the standard deviation of the differences so far, in % air; at least two are there. */
    double spread() {
        return Math.max(Math.sqrt(squares / (count - 1)), leastSpread);
    }

    /** Adds a difference and returns its score; none for the first two. */
    OptionalDouble add(double difference) {
        if (count < 2) {
            keep(difference);
            return OptionalDouble.empty();
        }
        StudentT student = new StudentT(count - 1);
        double unit = spread() * Math.sqrt((count + 1.0) / count);
        double t = (difference - mean) / unit;
        double tail = student.upperTail(Math.abs(t));
        double beyond = Normal.upperTail(Hold.LIMIT);
        if (tail <= beyond) {
            keep(mean + Math.signum(t) * unit * student.upperPoint(beyond));
            return OptionalDouble.of(Math.signum(t) * Hold.LIMIT);
        }
        keep(difference);
        return OptionalDouble.of(Math.signum(t) * Normal.quantile(1 - tail));
    }

    private void keep(double value) {
        count++;
        double off = value - mean;
        mean += off / count;
        squares += off * (value - mean);
    }
}
