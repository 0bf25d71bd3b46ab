package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;

/**
 * How much each of several layers of groups within groups varies, such as days within mixes and meters within days.
 *
 * <p>The variances are those of restricted maximum likelihood (REML), for any number of layers and for groups of any
 * sizes; none is below 0. Where all groups are of the same size and no estimate is at 0 they equal those of the analysis of
 * variance, which stand beside them. Intervals are those of {@link ProfileInterval}.
 *
 * <p>A layer is not estimated where the data cannot tell it apart: it has as many groups as the layer around it (or there
 * is one group in all), or its groups never differ. The layers around a layer that cannot be told apart then hold its
 * variance too.
 *
 * <p>Source: S. R. Searle, G. Casella and C. E. McCulloch, Variance Components (1992), chapters 3, 5 and 6; recalled.
 * Differences from the source: none.
 *
 * @param layers from the outermost
 * @param values the values within the groups of the last layer
 * @param count how many values
 * @param mean the mean that fits best, in the unit of the values
 * @param meanVariance the variance of that mean
 * @param isBalanced whether at every layer all groups hold as many groups or values
 */
public record VarianceLayers(
        List<Layer> layers, Layer values, int count, double mean, double meanVariance, boolean isBalanced) {
    /** Squares this much smaller than all of them are rounding. */
    private static final double ROUNDING = 1e-20;

    private static final double USUAL_START = 0.1;

    /** How a layer's variance stands. */
    public enum Standing {
        /** It is estimated. */
        ESTIMATED,
        /** The data show nothing of it: the estimate is at its bound, 0. */
        AT_ZERO,
        /** It has no degrees of freedom: the data cannot tell it from the layer around it. */
        NOT_TOLD_APART,
        /** What is in its groups never differs: the reading stood still. */
        STOOD_STILL
    }

    /**
     * One layer.
     *
     * @param groups how many groups it has in all; of the values, how many there are
     * @param squares its line of the analysis of variance
     * @param test whether it varies by more than what is within it explains
     * @param standing how its variance stands
     * @param variance by restricted likelihood, in the square of the unit of the values; empty where it is not estimated
     * @param interval of the variance; empty where that is not estimated
     * @param byAnova the variance that fits the mean squares, perhaps below 0; empty where there is none
     */
    public record Layer(
            int groups,
            MeanSquare squares,
            Judged<FTest> test,
            Standing standing,
            OptionalDouble variance,
            Optional<VarianceInterval> interval,
            OptionalDouble byAnova) {}

    /**
     * Estimates the variances.
     *
     * @param paths the names of each value's groups, from the outermost, all as many
     * @param confidence of the intervals, greater than 0 and less than 1
     * @param values finite
     * @return withheld as too few where no layer has degrees of freedom, and as without spread where all values are equal
     * @throws IllegalArgumentException if there is no value, one is not finite, or the paths do not fit
     */
    public static Judged<VarianceLayers> of(List<List<String>> paths, double confidence, double... values) {
        StudentT.requireProbability("confidence", confidence);
        NestedValues nested = NestedValues.of(paths, values);
        return whyNot(nested, values)
                .<Judged<VarianceLayers>>map(Judged::withheld)
                .orElseGet(() -> new Judged.Meaningful<>(new Estimation(nested, paths, values).estimate(confidence)));
    }

    /**
     * Estimates the variances alone, without their intervals, which take most of the time.
     *
     * @param paths the names of each value's groups, from the outermost, all as many
     * @param values finite
     * @return the variance of each layer, from the outermost, that of the values last, each empty where it is not estimated;
     *     withheld as by {@link #of}
     * @throws IllegalArgumentException if there is no value, one is not finite, or the paths do not fit
     */
    public static Judged<List<OptionalDouble>> variances(List<List<String>> paths, double... values) {
        NestedValues nested = NestedValues.of(paths, values);
        return whyNot(nested, values)
                .<Judged<List<OptionalDouble>>>map(Judged::withheld)
                .orElseGet(() -> new Judged.Meaningful<>(new Estimation(nested, paths, values).variances()));
    }

    private static Optional<Judged.Reason> whyNot(NestedValues nested, double[] values) {
        if (nested.count() < 2) {
            return Optional.of(Judged.Reason.TOO_FEW);
        }
        double low = Arrays.stream(values).min().orElseThrow();
        return low == Arrays.stream(values).max().orElseThrow()
                ? Optional.of(Judged.Reason.NO_SPREAD)
                : Optional.empty();
    }

    /** One estimation, from the data as they are to the data that tell something. */
    private static final class Estimation {
        private final NestedValues whole;
        private final List<MeanSquare> squares;
        private final Standing[] standings;
        private final List<Integer> told = new ArrayList<>();
        private final NestedValues telling;

        Estimation(NestedValues whole, List<List<String>> paths, double[] values) {
            this.whole = whole;
            squares = whole.squares();
            standings = new Standing[squares.size()];
            int last = lastThatVaries();
            for (int i = 0; i <= last; i++) {
                if (squares.get(i).degreesOfFreedom() > 0) {
                    told.add(i);
                } else {
                    standings[i] = Standing.NOT_TOLD_APART;
                }
            }
            if (last == whole.depth()) {
                telling = NestedValues.of(paths.stream().map(this::told).toList(), values);
            } else {
                NestedValues.Layer groups = whole.layers().get(last + 1);
                double[] means = Arrays.stream(groups.means())
                        .map(mean -> mean + whole.origin())
                        .toArray();
                telling =
                        NestedValues.of(groups.names().stream().map(this::told).toList(), means);
            }
        }

        /** Returns the innermost line with any spread; those within it are said not to be estimated. */
        private int lastThatVaries() {
            double all = squares.stream().mapToDouble(MeanSquare::sumOfSquares).sum();
            int last = squares.size() - 1;
            while (squares.get(last).sumOfSquares() <= ROUNDING * all) {
                boolean isStill = squares.get(last).degreesOfFreedom() > 0;
                standings[last] = isStill ? Standing.STOOD_STILL : Standing.NOT_TOLD_APART;
                last--;
            }
            return last;
        }

        /** Returns the names of those layers that can be told apart, without the last, whose groups are the values. */
        private List<String> told(List<String> path) {
            return told.subList(0, told.size() - 1).stream().map(path::get).toList();
        }

        VarianceLayers estimate(double confidence) {
            RestrictedLikelihood likelihood = new NestedLikelihood(telling);
            NestedAnova anova = NestedAnova.of(telling);
            List<OptionalDouble> byAnova = anova.variances();
            List<Judged<FTest>> tests = anova.tests();
            RestrictedFit fit = fit(likelihood, byAnova);
            List<Layer> lines = new ArrayList<>();
            for (int i = 0; i < squares.size(); i++) {
                int place = told.indexOf(i);
                if (place < 0) {
                    lines.add(new Layer(
                            groups(i),
                            squares.get(i),
                            Judged.withheld(Judged.Reason.TOO_FEW),
                            standings[i],
                            OptionalDouble.empty(),
                            Optional.empty(),
                            OptionalDouble.empty()));
                    continue;
                }
                double variance = fit.variances()[place];
                lines.add(new Layer(
                        groups(i),
                        squares.get(i),
                        tests.get(place),
                        variance == 0 ? Standing.AT_ZERO : Standing.ESTIMATED,
                        OptionalDouble.of(variance),
                        Optional.of(ProfileInterval.of(
                                likelihood, fit, place, squares.get(i).degreesOfFreedom(), confidence)),
                        byAnova.get(place)));
            }
            return new VarianceLayers(
                    List.copyOf(lines.subList(0, whole.depth())),
                    lines.get(whole.depth()),
                    whole.count(),
                    telling.origin() + fit.mean(),
                    fit.varianceOfMean(),
                    whole.isBalanced());
        }

        List<OptionalDouble> variances() {
            RestrictedFit fit =
                    fit(new NestedLikelihood(telling), NestedAnova.of(telling).variances());
            List<OptionalDouble> found = new ArrayList<>();
            for (int i = 0; i < squares.size(); i++) {
                int place = told.indexOf(i);
                found.add(place < 0 ? OptionalDouble.empty() : OptionalDouble.of(fit.variances()[place]));
            }
            return found;
        }

        private int groups(int line) {
            return line < whole.depth() ? whole.layers().get(line + 1).groups() : whole.count();
        }

        /** Climbs from two sides, lest one of them ends on a lower hill. */
        private static RestrictedFit fit(RestrictedLikelihood likelihood, List<OptionalDouble> byAnova) {
            double largest = byAnova.stream()
                    .mapToDouble(OptionalDouble::orElseThrow)
                    .max()
                    .orElseThrow();
            double[] start = byAnova.stream()
                    .mapToDouble(OptionalDouble::orElseThrow)
                    .map(raw -> Math.max(raw, USUAL_START * largest))
                    .toArray();
            double[] even = new double[start.length];
            Arrays.fill(even, largest);
            RestrictedFit one = RestrictedFit.of(likelihood, start);
            RestrictedFit other = RestrictedFit.of(likelihood, even);
            return other.minusTwiceLog() < one.minusTwiceLog() ? other : one;
        }
    }

    /** Returns the variances of all layers and of the values together, those not estimated left out. */
    public double total() {
        return layers.stream().mapToDouble(layer -> layer.variance().orElse(0)).sum()
                + values.variance().orElse(0);
    }

    /**
     * Returns the layer that varies most, or the values.
     *
     * @return empty where nothing can be said of it: every innermost group has one value, or fewer than two layers
     *     can be told apart
     */
    public Optional<Layer> largest() {
        List<Layer> all = new ArrayList<>(layers);
        all.add(values);
        long told = all.stream()
                .filter(layer -> layer.standing() != Standing.NOT_TOLD_APART)
                .count();
        if (values.standing() == Standing.NOT_TOLD_APART || told < 2) {
            return Optional.empty();
        }
        return all.stream()
                .filter(layer -> layer.variance().isPresent())
                .max(Comparator.comparingDouble(layer -> layer.variance().orElseThrow()));
    }

    /** Returns what share of the total variance some variance is. */
    public double share(double variance) {
        return Require.atLeastZero("variance", variance) / total();
    }
}
