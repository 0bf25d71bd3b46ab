package porebench.statistics.distribution;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds the value above 0 beyond which a distribution has a given tail, however small.
 *
 * <p>Both the value and the tail are searched on their logarithms, so that neither loses digits near 0: the error is about
 * 1e-12 of the value. Whoever asks takes the smaller of the two tails, since the larger one says little.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4; recalled. Differences from the
 * source: none.
 */
final class TailPoint {
    private static final int MOST_EVALUATIONS = 400;
    private static final double NEAR_ENOUGH = 1e-13;

    private TailPoint() {}

    /**
     * Returns the value at which a tail is as given.
     *
     * @param tail of the distribution beyond a value, from 0 to 1, rising or falling all the way
     * @param probability greater than 0 and at most about one half
     * @param near a value in the middle of the distribution, greater than 0
     */
    static double of(DoubleUnaryOperator tail, double probability, double near) {
        double wanted = Math.log(probability);
        DoubleUnaryOperator away = log -> logOf(tail.applyAsDouble(Math.exp(log))) - wanted;
        double inner = Math.log(near);
        double atInner = away.applyAsDouble(inner);
        if (atInner == 0) {
            return near;
        }
        boolean isFalling = away.applyAsDouble(inner + 1) < away.applyAsDouble(inner - 1);
        double step = atInner > 0 == isFalling ? 1 : -1;
        double outer = inner + step;
        while (away.applyAsDouble(outer) * atInner > 0) {
            inner = outer;
            step *= 2;
            outer += step;
        }
        return Math.exp(new BrentSolver(NEAR_ENOUGH, NEAR_ENOUGH, 0)
                .solve(MOST_EVALUATIONS, away::applyAsDouble, Math.min(inner, outer), Math.max(inner, outer)));
    }

    /** A tail below the smallest number is as good as that number. */
    private static double logOf(double tail) {
        return Math.log(Math.max(tail, Double.MIN_VALUE));
    }
}
