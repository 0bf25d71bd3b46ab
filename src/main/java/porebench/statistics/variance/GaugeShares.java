package porebench.statistics.variance;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import porebench.statistics.variance.MeanSquareIntervals.Weighted;

/**
 * The generalised confidence interval of the gauge's share of the total variance.
 *
 * <p>Each mean square is what its expected value makes of a chi-square number over its degrees of freedom; drawing those
 * numbers again and again gives the expected mean squares that could stand behind the ones observed, and from them the
 * share. A variance of samples below 0 counts as 0. The ends are the quantiles of the drawn shares.
 *
 * <p>Source: S. Weerahandi, J. Amer. Statist. Assoc. 88 (1993); M. Hamada and S. Weerahandi, J. Quality Technology 32 (2000),
 * measurement system assessment via generalised inference; recalled. Differences from the source: none.
 */
final class GaugeShares {
    private static final int DRAWS = 40_000;

    private GaugeShares() {}

    static Optional<VarianceInterval> interval(
            Weighted[] gauge, Weighted sample, int lessAt, double confidence, long seed) {
        return interval(gauge, sample, lessAt, confidence, seed, DRAWS);
    }

    /**
     * Draws the interval.
     *
     * @param gauge the parts that make up the gauge
     * @param sample the mean square of samples, weighted
     * @param lessAt which part of the gauge has the mean square that is taken from that of samples, with the same weight
     * @return empty where no mean square is above 0
     */
    static Optional<VarianceInterval> interval(
            Weighted[] gauge, Weighted sample, int lessAt, double confidence, long seed, int draws) {
        if (sample.value() == 0 && Arrays.stream(gauge).allMatch(part -> part.value() == 0)) {
            return Optional.empty();
        }
        RandomGenerator random = new Well19937c(seed);
        GammaDistribution[] chances = new GammaDistribution[gauge.length];
        for (int i = 0; i < gauge.length; i++) {
            chances[i] = chance(random, gauge[i]);
        }
        GammaDistribution ofSample = chance(random, sample);
        double[] shares = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            double reading = 0;
            double taken = 0;
            for (int i = 0; i < gauge.length; i++) {
                double drawn = gauge[i].degrees() / chances[i].sample();
                reading += gauge[i].value() * drawn;
                if (i == lessAt) {
                    taken = new Weighted(sample.weight(), gauge[i].of()).value() * drawn;
                }
            }
            double samples = sample.value() * sample.degrees() / ofSample.sample() - taken;
            shares[draw] = reading == 0 && samples <= 0 ? 0 : reading / (reading + Math.max(0, samples));
        }
        Arrays.sort(shares);
        double tail = (1 - confidence) / 2;
        return Optional.of(new VarianceInterval(quantile(shares, tail), quantile(shares, 1 - tail), confidence));
    }

    private static GammaDistribution chance(RandomGenerator random, Weighted part) {
        return new GammaDistribution(
                random, part.degrees() / 2.0, 2, GammaDistribution.DEFAULT_INVERSE_ABSOLUTE_ACCURACY);
    }

    private static double quantile(double[] sorted, double probability) {
        int place = (int) Math.round(probability * sorted.length - 0.5);
        return sorted[Math.max(0, Math.min(sorted.length - 1, place))];
    }
}
