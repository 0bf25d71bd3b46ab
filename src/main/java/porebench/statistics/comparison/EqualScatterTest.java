package porebench.statistics.comparison;

import java.util.List;
import java.util.SplittableRandom;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.uncertainty.UncertaintySum;

/**
 * The test of whether several sets of repeat values scatter alike, for values read on a divided scale.
 *
 * <p>The statistic is Bartlett's, f ln s^2 - sum f(i) ln s(i)^2, over variances no smaller than what the division makes by itself,
 * so that sets which stand still are no proof of a scatter of 0. Its probability is not that of chi-square, which ties upset:
 * faultless sets of the same sizes are drawn again and again, read on the same scale, and p is the share that differ as much.
 *
 * <p>Source: M. S. Bartlett, Proceedings of the Royal Society A 160 (1937), the statistic; A. C. Davison and D. V. Hinkley, Bootstrap
 * Methods and their Application (1997), 4.2.3, the probability; recalled. Differences from the source: the floor of the variances,
 * and no correction factor, which a drawn probability does not need.
 *
 * @param sets how many sets show their scatter, at least 2
 * @param statistic Bartlett's, a plain number
 * @param p the probability of so large a difference when all scatter alike
 */
public record EqualScatterTest(int sets, double statistic, double p) {
    /** Always the same, so that the same sets give the same probability. */
    private static final long SEED = 1;

    private static final int MOST_DRAWS = 999;
    private static final int FEWEST_DRAWS = 199;

    /** A scatter of less than this part of a division cannot be told from that of the division, and cannot be drawn like it. */
    private static final double LEAST_DIVISIONS = 0.4;

    /** Drawn values beyond which fewer draws are made, lest a person wait. */
    private static final int MOST_VALUES = 2_000_000;

    public EqualScatterTest {
        Require.atLeast("sets", sets, 2);
        Require.atLeastZero("statistic", statistic);
        Require.within("p", p, 0, 1);
    }

    /**
     * Tests sets read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the values, greater than 0
     * @param isDifference whether a value is the difference of two readings
     * @param sets each with its own scatter, any number
     * @return withheld as too few of fewer than two sets, and as too coarse a scale where they scatter little more than the
     *     division makes by itself
     */
    public static Judged<EqualScatterTest> judge(double division, boolean isDifference, List<PooledDeviation> sets) {
        Require.positive("division", division);
        if (sets.size() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double resolution = UncertaintySum.resolutionUncertainty(division);
        double floor = (isDifference ? 2 : 1) * resolution * resolution;
        double[] variances = sets.stream()
                .mapToDouble(set -> set.standardDeviation() * set.standardDeviation())
                .toArray();
        int[] degrees =
                sets.stream().mapToInt(PooledDeviation::degreesOfFreedom).toArray();
        double pooled = 0;
        int all = 0;
        for (int i = 0; i < variances.length; i++) {
            pooled += degrees[i] * variances[i];
            all += degrees[i];
        }
        double seen = statistic(variances, degrees, floor);
        double sigma = Math.sqrt(Math.max(0, pooled / all - floor));
        if (sigma < LEAST_DIVISIONS * division * (isDifference ? Math.sqrt(2) : 1)) {
            return Judged.withheld(Judged.Reason.SCALE_TOO_COARSE, seen);
        }
        int draws = Math.max(FEWEST_DRAWS, Math.min(MOST_DRAWS, MOST_VALUES / (all + sets.size())));
        SplittableRandom random = new SplittableRandom(SEED);
        double[] drawn = new double[variances.length];
        int asLarge = 0;
        for (int draw = 0; draw < draws; draw++) {
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = drawn(division, isDifference, sigma, sets.get(i), random);
            }
            // As large as makes no difference: ties in the readings are ties in the statistic.
            asLarge += statistic(drawn, degrees, floor) >= Slack.under(seen) - Slack.OF_ONE ? 1 : 0;
        }
        return new Judged.Meaningful<>(new EqualScatterTest(sets.size(), seen, (asLarge + 1.0) / (draws + 1)));
    }

    /** Returns Bartlett's statistic of variances no smaller than a floor. */
    private static double statistic(double[] variances, int[] degrees, double floor) {
        double pooled = 0;
        double logs = 0;
        int all = 0;
        for (int i = 0; i < variances.length; i++) {
            double variance = Math.max(floor, variances[i]);
            pooled += degrees[i] * variance;
            logs += degrees[i] * Math.log(variance);
            all += degrees[i];
        }
        return Math.max(0, all * Math.log(pooled / all) - logs);
    }

    /** Draws the variance of a set of as many parts and degrees of freedom, each part about a mean anywhere on the scale. */
    private static double drawn(
            double division, boolean isDifference, double sigma, PooledDeviation like, SplittableRandom random) {
        double squares = 0;
        int left = like.degreesOfFreedom();
        for (int parts = like.sets(); parts > 0; parts--) {
            int count = left / parts + 1;
            left -= count - 1;
            double mean = division * random.nextDouble();
            double first = division * random.nextDouble();
            double sum = 0;
            double sumOfSquares = 0;
            for (int i = 0; i < count; i++) {
                double read = isDifference
                        ? read(division, first + mean, sigma / Math.sqrt(2), random)
                                - read(division, first, sigma / Math.sqrt(2), random)
                        : read(division, mean, sigma, random);
                sum += read;
                sumOfSquares += read * read;
            }
            squares += (sumOfSquares - sum * sum / count) * division * division;
        }
        return Math.max(0, squares) / like.degreesOfFreedom();
    }

    /** Reads a scattering value, in divisions. */
    private static double read(double division, double mean, double sigma, SplittableRandom random) {
        return Math.rint((mean + sigma * random.nextGaussian()) / division);
    }
}
