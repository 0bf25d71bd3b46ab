package porebench.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The confidence interval of one variance by its profile likelihood.
 *
 * <p>It holds the values for which -2 ln L, the other variances being made to fit best, is above its least by no more than
 * the upper point of chi-square with one degree of freedom. The low end is 0 where 0 itself is among them.
 *
 * <p>Source: Y. Pawitan, In All Likelihood (2001), 2.6, with the restricted likelihood; recalled. Differences from the
 * source: none.
 */
final class ProfileInterval {
    private static final double FACTOR = 3;
    private static final double FARTHEST = 1e15;
    private static final double NEAR_ENOUGH = 1e-9;
    private static final int MOST_EVALUATIONS = 200;

    private final RestrictedLikelihood likelihood;
    private final RestrictedFit best;
    private final int index;
    private final double rise;

    private ProfileInterval(RestrictedLikelihood likelihood, RestrictedFit best, int index, double confidence) {
        this.likelihood = likelihood;
        this.best = best;
        this.index = index;
        this.rise = new ChiSquare(1).upperPoint(1 - confidence);
    }

    static VarianceInterval of(RestrictedLikelihood likelihood, RestrictedFit best, int index, double confidence) {
        ProfileInterval interval = new ProfileInterval(likelihood, best, index, confidence);
        return new VarianceInterval(interval.low(), interval.high(), confidence);
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
