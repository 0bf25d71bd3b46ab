package porebench.statistics.variance;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;
import porebench.statistics.distribution.ChiSquare;

/**
 * The confidence interval of one variance by its profile likelihood.
 *
 * <p>It holds the values for which -2 ln L, the other variances being made to fit best, is above its least by no more than
 * the upper point of chi-square with one degree of freedom, times Bartlett's factor. The low end is 0 where 0 itself is among
 * them.
 *
 * <p>The rise follows chi-square with many degrees of freedom only. Of a single normal variance with f degrees of freedom, its
 * mean is f (ln(f / 2) - psi(f / 2)), 1.27 with one and 1.03 with ten, instead of 1; dividing by the mean is Bartlett's
 * correction, here applied with the degrees of freedom of the layer. Of the chance to be wrong nine tenths are used.
 *
 * <p>Source: Y. Pawitan, In All Likelihood (2001), 2.6, with the restricted likelihood; M. S. Bartlett, Proceedings of the
 * Royal Society A 160 (1937); recalled. Differences from the source: the factor is that of one variance by
 * itself, and the nine tenths are ours.
 */
final class ProfileInterval {
    /** A variance at its bound 0 and rounded values take half a point of 95 %: the promises show what is left. */
    private static final double CHANCE_USED = 0.9;

    private static final double FACTOR = 3;
    private static final double FARTHEST = 1e15;
    private static final double NEAR_ENOUGH = 1e-9;
    private static final int MOST_EVALUATIONS = 200;

    private final RestrictedLikelihood likelihood;
    private final RestrictedFit best;
    private final int index;
    private final double rise;

    private ProfileInterval(RestrictedLikelihood likelihood, RestrictedFit best, int index, double rise) {
        this.likelihood = likelihood;
        this.best = best;
        this.index = index;
        this.rise = rise;
    }

    /**
     * Finds the interval of a variance.
     *
     * @param index which of the variances of the likelihood
     * @param degreesOfFreedom of its layer, at least 1
     * @param confidence greater than 0 and less than 1
     */
    static VarianceInterval of(
            RestrictedLikelihood likelihood, RestrictedFit best, int index, int degreesOfFreedom, double confidence) {
        double rise = new ChiSquare(1).upperPoint(CHANCE_USED * (1 - confidence)) * meanRise(degreesOfFreedom);
        ProfileInterval interval = new ProfileInterval(likelihood, best, index, rise);
        return new VarianceInterval(interval.low(), interval.high(), confidence);
    }

    private static double meanRise(int degreesOfFreedom) {
        double half = degreesOfFreedom / 2.0;
        return degreesOfFreedom * (Math.log(half) - Gamma.digamma(half));
    }

    private double low() {
        double estimate = best.variances()[index];
        boolean isOfValues = index == best.variances().length - 1;
        if (estimate == 0 || (!isOfValues && isWithin(0))) {
            return 0;
        }
        double outside = estimate / FACTOR;
        while (isWithin(outside)) {
            outside /= FACTOR;
        }
        return between(outside, outside * FACTOR);
    }

    private double high() {
        double estimate = best.variances()[index];
        double inside = estimate;
        if (estimate == 0) {
            inside = best.variances()[best.variances().length - 1];
            while (!isWithin(inside)) {
                inside /= FACTOR;
            }
        }
        double outside = inside * FACTOR;
        while (isWithin(outside)) {
            outside *= FACTOR;
            if (outside > inside * FARTHEST) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return between(outside, outside / FACTOR);
    }

    private boolean isWithin(double variance) {
        return riseAt(variance) <= rise;
    }

    private double riseAt(double variance) {
        return RestrictedFit.given(likelihood, index, variance, best.variances())
                        .minusTwiceLog()
                - best.minusTwiceLog();
    }

    /** Finds where the rise is just reached, between a variance outside the interval and one within. */
    private double between(double outside, double inside) {
        double one = Math.log(Math.min(outside, inside));
        double other = Math.log(Math.max(outside, inside));
        return Math.exp(new BrentSolver(0, NEAR_ENOUGH)
                .solve(MOST_EVALUATIONS, log -> riseAt(Math.exp(log)) - rise, one, other));
    }
}
