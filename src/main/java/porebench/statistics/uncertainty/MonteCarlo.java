package porebench.statistics.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * What comes out of a computation when its inputs take all the values they may have, by drawing them many times.
 *
 * <p>The same seed gives the same result on every machine. An end of a 95 % interval lies within about 3 / sqrt(draws) standard
 * uncertainties of where infinitely many draws would put it, for a result that is nearly normal: 0.003 with a million.
 *
 * <p>Source: JCGM 101:2008, clause 7: 7.6 for mean and standard deviation, 7.7 for the interval, of which the one with equal tails
 * takes the values r and r + q in order, q = p M and r = (M - q) / 2, a half rounded up; 7.9 for drawing until it settles;
 * recalled. Differences from the source: mean and standard deviation are withheld where an input has none (t of two or three
 * readings): however many draws, they would not settle. Only the two ends, which settle last, are watched; and drawing ends after a
 * stated number in any case, which is said.
 *
 * @param draws how many times the inputs were drawn, at least 1000
 * @param seed what the random numbers began with
 * @param confidence of the intervals, greater than 0 and less than 1
 * @param median the middle value
 * @param mean the mean; empty where an input has none
 * @param standardDeviation the standard uncertainty of the result; empty where an input has none
 * @param symmetric the interval with as much on either side
 * @param shortest the shortest interval
 * @param settling how well the ends have settled; empty where the number of draws was given
 */
public record MonteCarlo(
        int draws,
        long seed,
        double confidence,
        double median,
        OptionalDouble mean,
        OptionalDouble standardDeviation,
        Interval symmetric,
        Interval shortest,
        Optional<Settling> settling) {
    /** The draws that JCGM 101 expects to give the ends of a 95 % interval to one or two digits. */
    public static final int USUAL_DRAWS = 1_000_000;

    /** The draws of one block, whose ends are compared with those of others. */
    public static final int BLOCK = 10_000;

    private static final int FEWEST_DRAWS = 1000;

    /**
     * Values from one to another.
     *
     * @param low the lower end
     * @param high the upper end
     */
    public record Interval(double low, double high) {
        /** Returns half the width. */
        double half() {
            return (high - low) / 2;
        }
    }

    public MonteCarlo {
        Require.atLeast("draws", draws, FEWEST_DRAWS);
        Require.finite("median", median);
    }

    /**
     * Draws independent inputs and computes with them.
     *
     * @param inputs what is not known exactly, at least one
     * @param model the computation; it is handed one value of every input, in their order, and may not keep the array
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     * @param confidence of the intervals, greater than 0 and less than 1; 0.95 for 95 %
     * @throws IllegalArgumentException if there is no input, too few draws, or the model gives what is not a number
     */
    static MonteCarlo of(
            List<Uncertain> inputs, ToDoubleFunction<double[]> model, int draws, long seed, double confidence) {
        return of(inputs, List.of(), model, draws, seed, confidence);
    }

    /**
     * Draws inputs, some of which err together, and computes with them.
     *
     * @param inputs what is not known exactly, at least one
     * @param correlations between them, by their places
     * @param model the computation; it is handed one value of every input, in their order, and may not keep the array
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     * @param confidence of the intervals, greater than 0 and less than 1; 0.95 for 95 %
     * @throws IllegalArgumentException if there is no input, too few draws, the model gives what is not a number, or the
     *     correlations cannot be
     */
    public static MonteCarlo of(
            List<Uncertain> inputs,
            List<Correlation> correlations,
            ToDoubleFunction<double[]> model,
            int draws,
            long seed,
            double confidence) {
        Require.atLeast("draws", draws, FEWEST_DRAWS);
        return new Drawing(inputs, correlations, model, seed, confidence).of(draws);
    }

    /**
     * Draws inputs until the ends of the interval have settled: block by block, until twice the standard deviation that their
     * mean over the blocks has is no larger than a tolerance.
     *
     * @param inputs what is not known exactly, at least one
     * @param correlations between them, by their places
     * @param model the computation; it is handed one value of every input, in their order, and may not keep the array
     * @param tolerance in the unit of the result, greater than 0
     * @param mostDraws after which drawing ends all the same, at least two blocks
     * @param seed of the random numbers
     * @param confidence of the intervals, greater than 0 and less than 1; 0.95 for 95 %
     */
    public static MonteCarlo settled(
            List<Uncertain> inputs,
            List<Correlation> correlations,
            ToDoubleFunction<double[]> model,
            double tolerance,
            int mostDraws,
            long seed,
            double confidence) {
        Require.positive("tolerance", tolerance);
        Require.atLeast("mostDraws", mostDraws, 2 * BLOCK);
        return new Drawing(inputs, correlations, model, seed, confidence).settled(tolerance, mostDraws);
    }

    /** One run of random numbers. */
    private static final class Drawing {
        private final List<Uncertain> inputs;
        private final JointDraw joint;
        private final ToDoubleFunction<double[]> model;
        private final long seed;
        private final double confidence;
        private final Random random;
        private final double[] values;

        Drawing(
                List<Uncertain> inputs,
                List<Correlation> correlations,
                ToDoubleFunction<double[]> model,
                long seed,
                double confidence) {
            Require.atLeast("count of inputs", inputs.size(), 1);
            StudentT.requireProbability("confidence", confidence);
            this.inputs = inputs;
            this.joint = new JointDraw(inputs, correlations);
            this.model = model;
            this.seed = seed;
            this.confidence = confidence;
            // The algorithm of this class is part of its specification, so a seed means the same on every Java.
            this.random = new Random(seed);
            this.values = new double[inputs.size()];
        }

        MonteCarlo of(int draws) {
            double[] results = new double[draws];
            fill(results, 0, draws);
            return result(results, Optional.empty());
        }

        MonteCarlo settled(double tolerance, int mostDraws) {
            double[] results = new double[mostDraws];
            List<Interval> blocks = new ArrayList<>();
            int drawn = 0;
            double reached = Double.MAX_VALUE;
            while (reached > tolerance && drawn + BLOCK <= mostDraws) {
                fill(results, drawn, drawn + BLOCK);
                double[] block = Arrays.copyOfRange(results, drawn, drawn + BLOCK);
                Arrays.sort(block);
                blocks.add(symmetric(block, confidence));
                drawn += BLOCK;
                if (blocks.size() > 1) {
                    reached = Math.max(
                            unsettled(blocks.stream().mapToDouble(Interval::low).toArray()),
                            unsettled(
                                    blocks.stream().mapToDouble(Interval::high).toArray()));
                }
            }
            return result(
                    Arrays.copyOf(results, drawn), Optional.of(new Settling(tolerance, reached, reached <= tolerance)));
        }

        private static double unsettled(double[] ends) {
            return 2 * Summary.of(ends).standardError().orElseThrow();
        }

        private void fill(double[] results, int from, int to) {
            for (int i = from; i < to; i++) {
                joint.draw(random, values);
                results[i] = Require.finite("result of the model", model.applyAsDouble(values));
            }
        }

        private MonteCarlo result(double[] results, Optional<Settling> settling) {
            Summary all = Summary.of(results);
            Arrays.sort(results);
            boolean hasMean = inputs.stream().allMatch(Uncertain::hasMean);
            boolean hasDeviation = inputs.stream().allMatch(Uncertain::hasStandardDeviation);
            int draws = results.length;
            return new MonteCarlo(
                    draws,
                    seed,
                    confidence,
                    (results[(draws - 1) / 2] + results[draws / 2]) / 2,
                    hasMean ? OptionalDouble.of(all.mean()) : OptionalDouble.empty(),
                    hasDeviation ? all.standardDeviation() : OptionalDouble.empty(),
                    symmetric(results, confidence),
                    shortest(results, confidence),
                    settling);
        }
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
