package porebench.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;

/**
 * What comes out of a computation when its inputs take all the values they may have, by drawing them many times.
 *
 * <p>The same seed gives the same result on every machine. An end of a 95 % interval lies within about 3 / sqrt(draws) standard
 * uncertainties of where infinitely many draws would put it, for a result that is nearly normal: 0.003 with a million.
 *
 * <p>Source: JCGM 101:2008, clause 7: 7.6 for mean and standard deviation, 7.7 for the interval, of which the one with equal tails
 * takes the values r and r + q in order, q = p M and r = (M - q) / 2, a half rounded up; recalled. Differences from the source:
 * the number of draws is fixed and not adapted. Mean and standard deviation are withheld where an input has none (t of two
 * or three readings): however many draws, they would not settle.
 *
 * @param draws how many times the inputs were drawn, at least 1000
 * @param seed what the random numbers began with
 * @param confidence of the intervals, greater than 0 and less than 1
 * @param median the middle value
 * @param mean the mean; empty where an input has none
 * @param standardDeviation the standard uncertainty of the result; empty where an input has none
 * @param symmetric the interval with as much on either side
 * @param shortest the shortest interval
 */
public record MonteCarlo(
        int draws,
        long seed,
        double confidence,
        double median,
        OptionalDouble mean,
        OptionalDouble standardDeviation,
        Interval symmetric,
        Interval shortest) {
    /** The draws that JCGM 101 expects to give the ends of a 95 % interval to one or two digits. */
    public static final int USUAL_DRAWS = 1_000_000;

    private static final int FEWEST_DRAWS = 1000;

    /**
     * Values from one to another.
     *
     * @param low the lower end
     * @param high the upper end
     */
    public record Interval(double low, double high) {
        /** Returns half the width. */
        public double half() {
            return (high - low) / 2;
        }
    }

    public MonteCarlo {
        Require.atLeast("draws", draws, FEWEST_DRAWS);
        Require.finite("median", median);
    }

    /**
     * Draws inputs and computes with them.
     *
     * @param inputs what is not known exactly, at least one, independent of each other
     * @param model the computation; it is handed one value of every input, in their order, and may not keep the array
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     * @param confidence of the intervals, greater than 0 and less than 1; 0.95 for 95 %
     * @throws IllegalArgumentException if there is no input, too few draws, or the model gives what is not a number
     */
    public static MonteCarlo of(
            List<Uncertain> inputs, ToDoubleFunction<double[]> model, int draws, long seed, double confidence) {
        Require.atLeast("count of inputs", inputs.size(), 1);
        Require.atLeast("draws", draws, FEWEST_DRAWS);
        StudentT.requireProbability("confidence", confidence);
        // The algorithm of this class is part of its specification, so a seed means the same on every Java.
        Random random = new Random(seed);
        Uncertain[] each = inputs.toArray(Uncertain[]::new);
        double[] values = new double[each.length];
        double[] results = new double[draws];
        for (int i = 0; i < draws; i++) {
            for (int j = 0; j < each.length; j++) {
                values[j] = each[j].draw(random);
            }
            results[i] = Require.finite("result of the model", model.applyAsDouble(values));
        }
        Summary all = Summary.of(results);
        Arrays.sort(results);
        boolean hasMean = inputs.stream().allMatch(Uncertain::hasMean);
        boolean hasDeviation = inputs.stream().allMatch(Uncertain::hasStandardDeviation);
        return new MonteCarlo(
                draws,
                seed,
                confidence,
                (results[(draws - 1) / 2] + results[draws / 2]) / 2,
                hasMean ? OptionalDouble.of(all.mean()) : OptionalDouble.empty(),
                hasDeviation ? all.standardDeviation() : OptionalDouble.empty(),
                symmetric(results, confidence),
                shortest(results, confidence));
    }

    private static Interval symmetric(double[] sorted, double confidence) {
        int inside = inside(sorted.length, confidence);
        // Counted from 1 in the source.
        int first = Math.max(1, (sorted.length - inside + 1) / 2);
        return new Interval(sorted[first - 1], sorted[Math.min(sorted.length, first + inside) - 1]);
    }

    private static Interval shortest(double[] sorted, double confidence) {
        int inside = inside(sorted.length, confidence);
        int best = 0;
        for (int i = 1; i + inside < sorted.length; i++) {
            if (sorted[i + inside] - sorted[i] < sorted[best + inside] - sorted[best]) {
                best = i;
            }
        }
        return new Interval(sorted[best], sorted[best + inside]);
    }

    private static int inside(int draws, double confidence) {
        return Math.min(draws - 1, (int) Math.floor(confidence * draws + 0.5));
    }
}
