package porebench.statistics.outlier;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.Summary;

/**
 * Many small sets of repeat values summed up in one pass over columns of primitives, such as every determination of a lab
 * book.
 *
 * <p>A set gets the same figures as from {@link Summary}, {@link MeanInterval} at 95 %, {@link CriticalRange} and {@link
 * GrubbsTest#isOutlier}; here they stand in columns, no object a set. A figure that does not exist is not a number (NaN):
 * the spread of a single value, the Grubbs statistic of fewer than three or of equal values.
 *
 * <p>Source: as named at those classes. Differences from them: values are not scaled first, so that their squares have to
 * be finite.
 */
public final class RepeatSets {
    /** The fewest values of a set among which one can be singled out. */
    public static final int FEWEST_TO_JUDGE = 4;

    private static final double CONFIDENCE = 0.95;
    private static final int FEWEST_TO_TEST = 3;

    private final double[] means;
    private final double[] deviations;
    private final double[] ranges;
    private final double[] halfWidths;
    private final double[] statistics;
    private final int[] farthest;
    private final boolean[] within;
    private final boolean[] outlying;
    private final int[] ends;

    /**
     * What sets are judged by.
     *
     * @param repeatability the repeatability standard deviation of the method, in the unit of the values, greater than 0
     * @param division the smallest step of the scale, in the unit of the values, 0 for none
     * @param significance the accepted probability of a false outlier, both sides together, such as 0.05
     */
    public record Judging(double repeatability, double division, double significance) {
        public Judging {
            Require.positive("repeatability", repeatability);
            Require.atLeastZero("division", division);
            StudentT.requireProbability("significance", significance);
        }
    }

    /** What depends on the size of a set alone, looked up once a size. */
    private static final class BySize {
        private final double[] halfWidths;
        private final double[] limits;
        private final double[] criticals;

        BySize(int[] ends, Judging judging) {
            int largest = 0;
            int start = 0;
            for (int end : ends) {
                largest = Math.max(largest, end - start);
                start = end;
            }
            halfWidths = new double[largest + 1];
            limits = new double[largest + 1];
            criticals = new double[largest + 1];
            start = 0;
            for (int end : ends) {
                fill(end - start, judging);
                start = end;
            }
        }

        private void fill(int n, Judging judging) {
            if (n < 2 || limits[n] > 0) {
                return;
            }
            halfWidths[n] = new StudentT(n - 1).coverageFactor(CONFIDENCE) / Math.sqrt(n);
            limits[n] = Slack.over(CriticalRange.printedFactor(n) * judging.repeatability);
            criticals[n] = n < FEWEST_TO_TEST
                    ? Double.POSITIVE_INFINITY
                    : GrubbsTest.oneSidedCritical(n, judging.significance / 2);
        }
    }

    private RepeatSets(int[] ends) {
        this.ends = ends;
        int sets = ends.length;
        means = new double[sets];
        deviations = new double[sets];
        ranges = new double[sets];
        halfWidths = new double[sets];
        statistics = new double[sets];
        farthest = new int[sets];
        within = new boolean[sets];
        outlying = new boolean[sets];
    }

    /**
     * Sums up sets of values that stand one behind the other in a column.
     *
     * @param values all values, set by set, each finite
     * @param ends the position behind the last value of each set, rising; the last one is the count of values
     * @throws IllegalArgumentException if a set is empty, the ends do not cover the values, or a value or the square of
     *     its distance from the mean is not finite
     */
    public static RepeatSets of(double[] values, int[] ends, Judging judging) {
        int start = 0;
        for (int i = 0; i < ends.length; i++) {
            if (ends[i] <= start) {
                throw new IllegalArgumentException(
                        "ends[" + i + "] must be at least " + (start + 1) + ", but is " + ends[i]);
            }
            start = ends[i];
        }
        if (start != values.length) {
            throw new IllegalArgumentException(
                    "last of ends must be the count of values, " + values.length + ", but is " + start);
        }
        RepeatSets sets = new RepeatSets(ends.clone());
        BySize bySize = new BySize(ends, judging);
        start = 0;
        for (int set = 0; set < ends.length; set++) {
            sets.fill(set, values, start, ends[set], bySize, judging.division);
            start = ends[set];
        }
        return sets;
    }

    private void fill(int set, double[] values, int start, int end, BySize bySize, double division) {
        int n = end - start;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int i = start; i < end; i++) {
            double value = values[i];
            low = value < low ? value : low;
            high = value > high ? value : high;
            sum += value;
        }
        double range = high - low;
        double mean = range == 0 ? low : corrected(sum / n, values, start, end);
        double squares = 0;
        double left = 0;
        double most = 0;
        double beyond = 0;
        int far = start;
        for (int i = start; i < end; i++) {
            double deviation = values[i] - mean;
            squares += deviation * deviation;
            left += deviation;
            double distance = Math.abs(deviation);
            if (distance > beyond) {
                most = distance;
                beyond = Slack.over(distance);
                far = i;
            }
        }
        if (!Double.isFinite(squares)) {
            throw new IllegalArgumentException(
                    "values from " + start + " to " + (end - 1) + " must have finite squares, but have " + squares);
        }
        // The deviations should add up to 0; what is left of the rounded mean is taken out.
        double deviation = n == 1 ? Double.NaN : Math.sqrt(Math.max(0, squares - left * left / n) / (n - 1));
        boolean tested = n >= FEWEST_TO_TEST && range > 0;
        double statistic = tested ? most / deviation : Double.NaN;
        means[set] = mean;
        deviations[set] = deviation;
        ranges[set] = range;
        halfWidths[set] = n == 1 ? Double.NaN : bySize.halfWidths[n] * deviation;
        within[set] = n == 1 || range <= bySize.limits[n];
        statistics[set] = statistic;
        farthest[set] = tested ? far - start : -1;
        outlying[set] = n >= FEWEST_TO_JUDGE && most > Slack.over(division) && statistic > bySize.criticals[n];
    }

    /** Adds to a rounded mean what the deviations from it leave. */
    private static double corrected(double mean, double[] values, int start, int end) {
        double left = 0;
        for (int i = start; i < end; i++) {
            left += values[i] - mean;
        }
        return mean + left / (end - start);
    }

    /** Returns how many sets there are. */
    public int size() {
        return ends.length;
    }

    /** Returns how many values a set has. */
    public int count(int set) {
        return ends[set] - (set == 0 ? 0 : ends[set - 1]);
    }

    /**
     * Returns the standard deviation that all sets share, whatever the mean of each, in the unit of the values; empty when no
     * set has two values.
     */
    public OptionalDouble pooledStandardDeviation() {
        double squares = 0;
        int degrees = 0;
        for (int set = 0; set < ends.length; set++) {
            int n = count(set);
            if (n > 1) {
                squares += (n - 1) * deviations[set] * deviations[set];
                degrees += n - 1;
            }
        }
        return degrees == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / degrees));
    }

    /** Returns the mean of a set, in the unit of the values. */
    public double mean(int set) {
        return means[set];
    }

    /** Returns the sample standard deviation of a set, in the unit of the values; NaN for a single value. */
    public double standardDeviation(int set) {
        return deviations[set];
    }

    /** Returns the highest value of a set less the lowest, in the unit of the values. */
    public double range(int set) {
        return ranges[set];
    }

    /** Returns half the width of the 95 % interval of the mean, in the unit of the values; NaN for a single value. */
    public double halfWidth(int set) {
        return halfWidths[set];
    }

    /** Returns whether a set spans no more than the repeatability allows; a single value always does. */
    public boolean isWithinCriticalRange(int set) {
        return within[set];
    }

    /** Returns the Grubbs statistic of a set; NaN for fewer than three values and for equal ones. */
    public double grubbs(int set) {
        return statistics[set];
    }

    /** Returns the position within its set, from 0, of the value farthest from the mean; none without a statistic. */
    public OptionalInt farthest(int set) {
        return farthest[set] < 0 ? OptionalInt.empty() : OptionalInt.of(farthest[set]);
    }

    /** Returns whether the farthest value is an outlier worth a question, as {@link GrubbsTest#isOutlier} says it. */
    public boolean hasOutlier(int set) {
        return outlying[set];
    }
}
