package porebench.statistics.summary;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import porebench.quantity.Require;
import porebench.statistics.distribution.ChiSquare;
import porebench.statistics.distribution.Normal;
import porebench.statistics.distribution.StudentT;

/**
 * The range that holds a stated share of all values of a normal population, with a stated confidence, from a few of them.
 *
 * <p>Mean +- k s. k is the exact two-sided factor: over the mean's own chance the probability that s is large enough is integrated,
 * and k is sought for which it is the confidence.
 *
 * <p>Source: ISO 16269-6:2014, annex on two-sided intervals with unknown mean and variance; NIST/SEMATECH e-Handbook of Statistical
 * Methods, 7.2.6.3 (the same, approximated); recalled. Differences from the source: none.
 *
 * @param count how many values it is made of, at least 2
 * @param low its lower end, in the unit of the values
 * @param high its upper end, in the unit of the values
 */
public record ToleranceInterval(int count, double low, double high) {
    private static final int STEPS = 160;
    private static final int MOST_STEPS = 200;
    private static final double RELATIVE = 1e-11;

    /** No interval worth having is narrower than so many standard deviations. */
    private static final double LEAST = 1e-6;

    /** Beyond so many standard deviations of the mean there is nothing worth adding up. */
    private static final double FARTHEST = 8;

    public ToleranceInterval {
        Require.atLeast("count", count, 2);
        Require.within("low", low, Double.NEGATIVE_INFINITY, high);
    }

    /**
     * Returns the interval of some values.
     *
     * @param values at least two
     * @param leastDeviation a standard deviation below which theirs is not believed, in the unit of the values, at least 0
     * @param content the share of all values that it should hold, greater than 0 and less than 1
     * @param confidence how sure it should be, greater than 0 and less than 1
     */
    public static ToleranceInterval of(Summary values, double leastDeviation, double content, double confidence) {
        Require.atLeast("values", values.count(), 2);
        Require.atLeastZero("leastDeviation", leastDeviation);
        double s = Math.max(leastDeviation, values.standardDeviation().orElseThrow());
        double half = factor(values.count(), content, confidence) * s;
        return new ToleranceInterval(values.count(), values.mean() - half, values.mean() + half);
    }

    /**
     * Returns the factor k.
     *
     * @param count how many values, at least 2
     * @param content the share of all values that the interval should hold, greater than 0 and less than 1
     * @param confidence how sure it should be, greater than 0 and less than 1
     */
    public static double factor(int count, double content, double confidence) {
        Require.atLeast("count", count, 2);
        StudentT.requireProbability("content", content);
        StudentT.requireProbability("confidence", confidence);
        double[] halves = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            halves[i] = half(FARTHEST * i / STEPS / Math.sqrt(count), content);
        }
        double low = LEAST;
        double high = 1;
        while (confidence(count, halves, high) < confidence) {
            low = high;
            high *= 2;
        }
        return new BrentSolver(RELATIVE, RELATIVE)
                .solve(MOST_STEPS, k -> confidence(count, halves, k) - confidence, low, high);
    }

    /** Returns the half-width about a mean off by some standard deviations that holds the content, in standard deviations. */
    private static double half(double off, double content) {
        return new BrentSolver(RELATIVE, RELATIVE)
                .solve(
                        MOST_STEPS,
                        half -> Normal.cumulative(off + half) - Normal.cumulative(off - half) - content,
                        0,
                        off + FARTHEST);
    }

    /** Adds up by Simpson's rule, over how far the mean may be off, the probability that k s reaches far enough. */
    private static double confidence(int count, double[] halves, double k) {
        int degrees = count - 1;
        ChiSquare chiSquare = new ChiSquare(degrees);
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double x = FARTHEST * i / STEPS;
            int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            double wanted = halves[i] / k;
            sum += weight * chiSquare.upperTail(degrees * wanted * wanted) * Math.exp(-x * x / 2);
        }
        return 2 * sum * FARTHEST / STEPS / 3 / Math.sqrt(2 * Math.PI);
    }
}
