package porebench.statistics.summary;

import java.util.Arrays;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.Normal;

/**
 * The Shapiro-Wilk test of whether values may come from a normal distribution, its mean and spread unknown.
 *
 * <p>W compares the spread that the values in order would have on a straight line of normal scores with the spread they
 * have; 1 is perfectly straight, small values speak against the normal distribution.
 *
 * <p>Readings of a divided scale are never normal: they are tied. {@link #judge} withholds the probability when the
 * spread is only a few divisions, and below ten values, from which next to nothing can be told.
 *
 * <p>Source: P. Royston, Algorithm AS R94, Applied Statistics 44 (1995); recalled. Differences from the source: no
 * censored values; a W too small for the transformation of 4 to 11 values gives p = 0.
 *
 * @param count how many values, 3 to 5000
 * @param statistic W, a plain number up to 1
 * @param p the probability of so small a W with normal values
 */
public record ShapiroWilkTest(int count, double statistic, double p) {
    /** With fewer values next to nothing can be told: {@link #judge} says nothing then. */
    public static final int FEWEST_TO_JUDGE = Normality.FEWEST;

    /** The most values the test is made for. */
    public static final int MOST = 5000;

    static final int FEWEST = 3;

    private static final double[] LAST_SCORE = {0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056};
    private static final double[] LAST_BUT_ONE = {0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633};
    private static final double[] SMALL_BOUND = {-2.273, 0.459};
    private static final double[] SMALL_MEAN = {0.544, -0.39978, 0.025054, -6.714e-4};
    private static final double[] SMALL_LOG_SPREAD = {1.3822, -0.77857, 0.062767, -0.0020322};
    private static final double[] LARGE_MEAN = {-1.5861, -0.31082, -0.083751, 0.0038915};
    private static final double[] LARGE_LOG_SPREAD = {-0.4803, -0.082676, 0.0030302};
    private static final int LAST_SMALL = 11;

    public ShapiroWilkTest {
        Require.within("count", count, FEWEST, MOST);
        Require.within("statistic", statistic, 0, 1);
        Require.within("p", p, 0, 1);
    }

    /**
     * Tests some values as they are, without asking on what scale they were read.
     *
     * @param values at least one, each finite
     * @return the result; empty for fewer than 3 or more than 5000 values and for equal values
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Optional<ShapiroWilkTest> of(double... values) {
        Summary all = Summary.of(values);
        int n = values.length;
        if (n < FEWEST || n > MOST || all.range() == 0) {
            return Optional.empty();
        }
        double shortfall = shortfall(values, all);
        return Optional.of(new ShapiroWilkTest(n, 1 - shortfall, probability(shortfall, n)));
    }

    /**
     * Tests values read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param values at least one, each finite
     * @return the result, or why it would mean nothing
     * @throws IllegalArgumentException if there is no value, one is not finite, or the division is negative
     */
    public static Judged<ShapiroWilkTest> judge(double division, double... values) {
        Optional<Judged.Reason> reason = Normality.reason(Summary.of(values), division);
        Optional<ShapiroWilkTest> test = of(values);
        if (reason.isEmpty() && values.length > MOST) {
            return Judged.withheld(Judged.Reason.TOO_MANY);
        }
        if (reason.isEmpty()) {
            return new Judged.Meaningful<>(test.orElseThrow());
        }
        return test.map(done -> Judged.<ShapiroWilkTest>withheld(reason.get(), done.statistic()))
                .orElseGet(() -> Judged.withheld(reason.get()));
    }

    /** Returns 1 - W, which keeps its digits when W is near 1. */
    private static double shortfall(double[] values, Summary all) {
        int n = values.length;
        double[] x = Arrays.stream(values)
                .map(value -> (value - all.mean()) / all.range())
                .sorted()
                .toArray();
        double[] weights = weights(n);
        double squaredWeights = 0;
        double squares = 0;
        double products = 0;
        double mean = Arrays.stream(x).sum() / n;
        for (int i = 0; i < n; i++) {
            // The middle value of an odd number has no weight.
            double weight = 2 * i == n - 1 ? 0 : i < n / 2 ? -weights[i] : weights[n - 1 - i];
            squaredWeights += weight * weight;
            squares += (x[i] - mean) * (x[i] - mean);
            products += weight * (x[i] - mean);
        }
        double both = Math.sqrt(squaredWeights * squares);
        return Math.max(0, (both - products) * (both + products) / (squaredWeights * squares));
    }

    /** Returns the weights of the upper half, the largest value's first. */
    private static double[] weights(int n) {
        double[] weights = new double[n / 2];
        if (n == FEWEST) {
            weights[0] = Math.sqrt(0.5);
            return weights;
        }
        double[] scores = new double[n / 2];
        double squares = 0;
        for (int i = 0; i < scores.length; i++) {
            scores[i] = -Normal.quantile((i + 1 - 0.375) / (n + 0.25));
            squares += 2 * scores[i] * scores[i];
        }
        double length = Math.sqrt(squares);
        double inverseRoot = 1 / Math.sqrt(n);
        int set = n > 5 ? 2 : 1;
        weights[0] = polynomial(LAST_SCORE, inverseRoot) + scores[0] / length;
        if (set == 2) {
            weights[1] = polynomial(LAST_BUT_ONE, inverseRoot) + scores[1] / length;
        }
        double above = squares;
        double below = 1;
        for (int i = 0; i < set; i++) {
            above -= 2 * scores[i] * scores[i];
            below -= 2 * weights[i] * weights[i];
        }
        double scale = Math.sqrt(above / below);
        for (int i = set; i < weights.length; i++) {
            weights[i] = scores[i] / scale;
        }
        return weights;
    }

    private static double probability(double shortfall, int n) {
        if (n == FEWEST) {
            double p = 6 / Math.PI * (Math.asin(Math.sqrt(1 - shortfall)) - Math.asin(Math.sqrt(0.75)));
            return Math.min(1, Math.max(0, p));
        }
        double y = Math.log(shortfall);
        if (n > LAST_SMALL) {
            double logarithm = Math.log(n);
            double spread = Math.exp(polynomial(LARGE_LOG_SPREAD, logarithm));
            return Normal.upperTail((y - polynomial(LARGE_MEAN, logarithm)) / spread);
        }
        double bound = polynomial(SMALL_BOUND, n);
        if (y >= bound) {
            return 0;
        }
        double spread = Math.exp(polynomial(SMALL_LOG_SPREAD, n));
        return Normal.upperTail((-Math.log(bound - y) - polynomial(SMALL_MEAN, n)) / spread);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
