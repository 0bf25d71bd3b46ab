package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * How much each of several layers that cross one another varies: operators and meters that come together in any way.
 *
 * <p>The model is y = mean + one effect a layer + what is left; the same name is the same thing wherever it stands, unlike in
 * {@link VarianceLayers}. The variances are those of restricted maximum likelihood (REML), for layers that meet as often or as
 * seldom as they do; none is below 0. Intervals are those of {@link ProfileInterval}.
 *
 * <p>Source: S. R. Searle, G. Casella and C. E. McCulloch, Variance Components (1992), chapters 4 and 6; recalled.
 * Differences from the source: none.
 *
 * @param layers in the order given
 * @param values what is left besides the layers
 * @param count how many values
 * @param mean the mean that fits best, in the unit of the values
 * @param meanVariance the variance of that mean
 */
public record CrossedVariances(List<Layer> layers, Layer values, int count, double mean, double meanVariance) {
    /** What is left is at least this share of all there is, unless the layers explain every digit. */
    private static final double EXPLAINED = 1e-9;

    private static final double START = 0.1;

    /**
     * One layer.
     *
     * @param groups how many groups it has; of the values, how many there are
     * @param variance by restricted likelihood, in the square of the unit of the values, at least 0
     * @param interval of the variance
     */
    public record Layer(int groups, double variance, VarianceInterval interval) {}

    public CrossedVariances {
        layers = List.copyOf(layers);
    }

    /**
     * Returns which layers cannot be told from the others by values in such groups, whatever the values are.
     *
     * @param names the names of each value's groups, one a layer, all as many
     * @return the places of such layers, from 0; what is left besides the layers has the place after the last layer
     */
    public static List<Integer> notToldApart(List<List<String>> names) {
        return CrossedGroups.of(names, new double[names.size()]).notToldApart();
    }

    /**
     * Estimates the variances.
     *
     * @param names the names of each value's groups, one a layer, all as many
     * @param confidence of the intervals, greater than 0 and less than 1
     * @param values finite
     * @return withheld as without spread where all values are equal, and as too coarse a scale where the layers explain every
     *     value to its last digit
     * @throws IllegalArgumentException if there is no value, one is not finite, the names do not fit, or a layer cannot be
     *     told from the others
     */
    public static Judged<CrossedVariances> of(List<List<String>> names, double confidence, double... values) {
        StudentT.requireProbability("confidence", confidence);
        CrossedGroups data = CrossedGroups.of(names, values);
        List<Integer> notToldApart = data.notToldApart();
        if (!notToldApart.isEmpty()) {
            throw new IllegalArgumentException("layers must be told apart, but are not: " + notToldApart);
        }
        double spread = Math.pow(Summary.of(data.left()).standardDeviation().orElse(0), 2);
        if (spread == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        RestrictedLikelihood likelihood = new CrossedLikelihood(data);
        RestrictedFit fit = fit(likelihood, data.layers().size(), spread);
        int last = data.layers().size();
        if (fit.variances()[last] < EXPLAINED * spread) {
            return Judged.withheld(Judged.Reason.SCALE_TOO_COARSE);
        }
        List<Layer> lines = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            int groups = i < last ? data.layers().get(i).groups() : data.count();
            int degrees = i < last ? groups - 1 : data.degreesLeft();
            lines.add(
                    new Layer(groups, fit.variances()[i], ProfileInterval.of(likelihood, fit, i, degrees, confidence)));
        }
        return new Judged.Meaningful<>(new CrossedVariances(
                lines.subList(0, last),
                lines.get(last),
                data.count(),
                data.origin() + fit.mean(),
                fit.varianceOfMean()));
    }

    /** Climbs from several sides, one with most of the spread in each layer, lest it ends on a lower hill. */
    private static RestrictedFit fit(RestrictedLikelihood likelihood, int layers, double spread) {
        return IntStream.rangeClosed(0, layers)
                .mapToObj(most -> {
                    double[] start = new double[layers + 1];
                    Arrays.fill(start, START * spread);
                    start[most] = spread;
                    return RestrictedFit.of(likelihood, start);
                })
                .min(Comparator.comparingDouble(RestrictedFit::minusTwiceLog))
                .orElseThrow();
    }

    /** Returns the variances of all layers and of what is left together. */
    public double total() {
        return IntStream.range(0, layers.size())
                        .mapToDouble(i -> layers.get(i).variance())
                        .sum()
                + values.variance();
    }
}
