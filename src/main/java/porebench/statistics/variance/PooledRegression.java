package porebench.statistics.variance;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;

/**
 * What each of some regressors adds to values that lie in groups within outer groups, with what the groups have in common drawn
 * towards nothing as far as their variances say: fixed shares of the regressors, random outer groups, groups and values.
 *
 * <p>The variances are those of restricted likelihood; the shares are those of generalised least squares with these variances,
 * and where one of them would fall below 0, of least squares with none below 0. Standard errors and intervals are those of the
 * free shares all the same: a bound that is reached makes them narrower than is known.
 *
 * <p>Source: S. R. Searle, G. Casella and C. E. McCulloch, Variance Components (1992), 6.6 and 7.1 (recalled), as R's lme4 gives
 * it; degrees of freedom of a prediction after F. E. Satterthwaite, Biometrics Bulletin 2 (1946) (recalled), as R's lmerTest.
 * Differences from the source: shares below 0 and degrees of freedom as {@link #predict} says.
 */
public final class PooledRegression {
    private static final double ROUNDING = 1e-20;
    private static final double SMALL_PART = 0.1;
    private static final int FEW_REGRESSORS = 60;

    private final RegressorColumns columns;
    private final Separation separation;
    private final int[] taken;
    private final PooledVariances variances;
    private final PooledSolution solution;
    private final PooledDegrees degrees;

    /**
     * What is foretold of the mean of some values of one group in a new outer group.
     *
     * @param mean in the unit of the values
     * @param variance of the difference between that and what would be found, greater than 0
     * @param degreesOfFreedom of that variance
     * @param low the low end of the interval
     * @param high its high end
     */
    public record Prediction(double mean, double variance, double degreesOfFreedom, double low, double high) {}

    private PooledRegression(
            RegressorColumns columns,
            Separation separation,
            PooledVariances variances,
            PooledSolution solution,
            PooledDegrees degrees) {
        this.columns = columns;
        this.separation = separation;
        this.taken = separation.taken();
        this.variances = variances;
        this.solution = solution;
        this.degrees = degrees;
    }

    /**
     * Finds the shares.
     *
     * @param all the groups
     * @param separation which of their regressors are told apart
     * @param leastVariance that a value has by the division of its scale alone, at least 0: where values do not scatter as much as that,
     *     they stood still
     * @return withheld where there are no more outer groups than regressors told apart, or where nothing scatters and no least variance
     *     is known
     */
    public static Judged<PooledRegression> of(RegressorColumns all, Separation separation, double leastVariance) {
        if (separation.rank() == 0 || separation.degreesOfFreedom() < 1) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        RegressorColumns columns = all.with(separation.taken());
        PooledLayers layers = PooledLayers.of(columns);
        double[] even = PooledSolution.even(columns);
        double[] rest = PooledSolution.rest(columns, even);
        double squares = Arrays.stream(rest).map(r -> r * r).sum();
        double size = Arrays.stream(columns.means).map(m -> m * m).sum();
        boolean hasRepeats = Arrays.stream(columns.counts).anyMatch(count -> count > 1);
        if (!layers.isTold(PooledLayers.VALUE) && squares <= ROUNDING * size) {
            return leastVariance > 0
                    ? known(
                            columns,
                            separation,
                            even,
                            rest,
                            new PooledVariances(0, 0, 0).atLeast(leastVariance, hasRepeats))
                    : Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        RestrictedLikelihood likelihood = new PooledLikelihood(columns, rest, layers);
        double[] found = climb(likelihood, columns, layers, squares / columns.groups);
        PooledVariances estimated = layers.named(found);
        PooledVariances variances = estimated.atLeast(leastVariance, hasRepeats);
        PooledSolution solution = PooledSolution.of(columns, even, rest, variances);
        Jet top = likelihood.at(found).minusTwiceLog();
        PooledDegrees degrees = variances.equals(estimated)
                ? new PooledDegrees(top, new PooledProducts(columns, rest, layers, found), layers, found, solution)
                : new PooledDegrees(top, layers, found, hasRepeats);
        return new Judged.Meaningful<>(new PooledRegression(columns, separation, variances, solution, degrees));
    }

    /** Takes variances as known, where values do not scatter at all. */
    private static Judged<PooledRegression> known(
            RegressorColumns columns, Separation separation, double[] even, double[] rest, PooledVariances variances) {
        PooledSolution solution = PooledSolution.of(columns, even, rest, variances);
        return new Judged.Meaningful<>(
                new PooledRegression(columns, separation, variances, solution, new PooledDegrees()));
    }

    private static double[] climb(
            RestrictedLikelihood likelihood, RegressorColumns columns, PooledLayers layers, double all) {
        double free = Math.max(1, Arrays.stream(columns.counts).sum() - columns.groups);
        double within = Arrays.stream(columns.squares).sum() / free;
        double some = Math.max(all, SMALL_PART * within);
        double[] start = layers.start(some / 2, some / 2, within);
        if (columns.regressors > FEW_REGRESSORS) {
            return RestrictedFit.near(likelihood, start).variances();
        }
        RestrictedFit one = RestrictedFit.of(likelihood, start);
        RestrictedFit other = RestrictedFit.of(likelihood, layers.start(SMALL_PART * some, some, within));
        return other.minusTwiceLog() < one.minusTwiceLog() ? other.variances() : one.variances();
    }

    /** Returns the variances between outer groups, between groups and between values. */
    public PooledVariances variances() {
        return variances;
    }

    /** Returns which regressors are told apart. */
    public Separation separation() {
        return separation;
    }

    private int place(int regressor) {
        return IntStream.range(0, taken.length)
                .filter(k -> taken[k] == regressor)
                .findFirst()
                .orElse(-1);
    }

    /** Returns the share of a regressor, at least 0; empty where it is not told apart from others. */
    public OptionalDouble share(int regressor) {
        return separation.isApart(regressor)
                ? OptionalDouble.of(solution.shares()[place(regressor)])
                : OptionalDouble.empty();
    }

    /** Returns whether the share of a regressor would be below 0 if it might, and stands at 0. */
    public boolean isAtZero(int regressor) {
        int place = place(regressor);
        return place >= 0 && solution.isAtZero(place);
    }

    /** Returns the covariance of the shares of two regressors, both told apart; of one with itself its variance. */
    public OptionalDouble covariance(int one, int other) {
        return separation.isApart(one) && separation.isApart(other)
                ? OptionalDouble.of(solution.wide()[place(one)][place(other)])
                : OptionalDouble.empty();
    }

    /**
     * Returns how many times larger the variance of a share is than it would be if the others were known; empty where the
     * regressor is not told apart.
     */
    public OptionalDouble inflation(int regressor) {
        int place = place(regressor);
        return separation.isApart(regressor)
                ? OptionalDouble.of(solution.wide()[place][place] * solution.product(place))
                : OptionalDouble.empty();
    }

    /**
     * Foretells the mean of some values of one group in a new outer group.
     *
     * <p>The interval is that of Student's t. Its degrees of freedom are those of the variance by Satterthwaite, but at least 1 and no
     * more than there are values beyond what is told apart.
     *
     * @param amounts one a regressor, such that {@link Separation#tells} says yes
     * @param values how many, at least 1
     * @param confidence greater than 0 and less than 1
     */
    public Prediction predict(double[] amounts, int values, double confidence) {
        double[] own = own(amounts);
        double mean = PooledSolution.dot(own, solution.shares());
        double variance =
                PooledSolution.quadratic(solution.wide(), own) + variances.ofMean(Require.atLeast("values", values, 1));
        double free = Math.max(1, Math.min(degrees.of(own, values, variance), allDegrees()));
        double half = new StudentT(free).coverageFactor(confidence) * Math.sqrt(variance);
        return new Prediction(mean, variance, free, mean - half, mean + half);
    }

    private double allDegrees() {
        return Arrays.stream(columns.counts).sum() - (double) separation.rank();
    }

    /**
     * Returns how far some amounts lie from those of the groups: the variance of the shares' sum there, over the greatest such variance at any group.
     * Above 1 they lie outside what the groups cover together, though each amount by itself may lie within.
     */
    public double reach(double... amounts) {
        return PooledSolution.quadratic(solution.wide(), own(amounts)) / solution.farthest();
    }

    /** Returns what each outer group left out would change, and how the groups are foretold without it. */
    public LeftOut leftOut() {
        return new LeftOut(columns, taken, solution, variances);
    }

    /** Returns the amounts of the regressors that are taken in. */
    double[] own(double... amounts) {
        return Arrays.stream(taken).mapToDouble(k -> amounts[k]).toArray();
    }
}
