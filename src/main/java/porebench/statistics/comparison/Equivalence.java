package porebench.statistics.comparison;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;
import porebench.statistics.distribution.Normal;
import porebench.statistics.distribution.StudentT;

/**
 * Two one-sided t tests of whether a difference lies within a margin to either side of 0, each at 5 %: it does where the 90 %
 * interval of the difference does.
 *
 * <p>Source: D. J. Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15 (1987), 657-680; recalled. Differences from the
 * source: the degrees of freedom may be any number, as Welch's are.
 *
 * @param margin in the unit of the difference, greater than 0
 * @param low the lower end of the 90 % interval, in that unit
 * @param high its upper end, in that unit
 * @param pLow the probability of so high a difference if the true one were -margin
 * @param pHigh the probability of so low a difference if the true one were +margin
 */
public record Equivalence(double margin, double low, double high, double pLow, double pHigh) {
    /** Of each of the two tests. */
    public static final double LEVEL = 0.05;

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
    private static final int POINTS = 24;
    private static final int PIECES = 16;
    /** Scatter this many of its own standard deviations from the middle does not occur. */
    private static final double NEVER_BEYOND = 9;

    private static final double NOTHING = 1e-12;

    public Equivalence {
        Require.positive("margin", margin);
        Require.finite("low", low);
        Require.within("high", high, low, Double.MAX_VALUE);
        Require.within("pLow", pLow, 0, 1);
        Require.within("pHigh", pHigh, 0, 1);
    }

    /**
     * Tests a difference.
     *
     * @param difference in some unit
     * @param precision of the difference, in that unit
     * @param margin in that unit, greater than 0
     */
    static Equivalence of(double difference, Precision precision, double margin) {
        Require.positive("margin", margin);
        double half = precision.factor(LEVEL) * precision.standardError();
        StudentT t = new StudentT(precision.degreesOfFreedom());
        return new Equivalence(
                margin,
                difference - half,
                difference + half,
                t.upperTail((difference + margin) / precision.standardError()),
                t.upperTail((margin - difference) / precision.standardError()));
    }

    /** Returns whether both tests find that the difference lies within the margin. */
    public boolean isEquivalent() {
        return Math.max(pLow, pHigh) <= LEVEL;
    }

    /**
     * Returns how often the two tests find a difference within a margin, from 0 to 1.
     *
     * <p>The mean over the chance of the standard error s, s^2 being that of chi-square, of
     * F((d - x) / e - t s / e) - F((-d - x) / e + t s / e), nothing where it is negative; F is that of the normal distribution.
     * Integrated by Gauss and Legendre, which leaves less than 1e-10.
     *
     * <p>Source: K. F. Phillips, Journal of Pharmacokinetics and Biopharmaceutics 18 (1990), 137-144 (exact power of the two one-sided
     * tests); recalled. Differences from the source: as many degrees of freedom as Welch's formula says, so that it is exact where both
     * sides scatter alike and are equally many.
     *
     * @param trueDifference in some unit
     * @param precision of the difference, in that unit
     * @param margin in that unit, greater than 0
     */
    static double power(double trueDifference, Precision precision, double margin) {
        double error = precision.standardError();
        double degrees = precision.degreesOfFreedom();
        double factor = precision.factor(LEVEL);
        double above = (Require.positive("margin", margin) - trueDifference) / error;
        double below = (-margin - trueDifference) / error;
        // Beyond this share of the true standard error the 90 % interval alone is wider than both margins.
        double most = margin / error / factor;
        double usual = NEVER_BEYOND / Math.sqrt(2 * degrees);
        if (usual < 1e-4) {
            return most < 1 ? 0 : between(above, below, factor, 1);
        }
        double low = Math.sqrt(Math.max(0, 1 - usual));
        double high = Math.sqrt(Math.min(most, 1 + 2 * usual));
        if (high - low < NOTHING) {
            return 0;
        }
        double logConstant = Math.log(2) + degrees / 2 * Math.log(degrees / 2) - Gamma.logGamma(degrees / 2);
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            GaussIntegrator piece =
                    GAUSS.legendre(POINTS, low + (high - low) * i / PIECES, low + (high - low) * (i + 1) / PIECES);
            // In the root of the share, lest half a degree of freedom have a pole at 0.
            sum += piece.integrate(root -> {
                double share = root * root;
                double density =
                        2 * Math.exp(logConstant + (2 * degrees - 1) * Math.log(root) - degrees * share * share / 2);
                return density * between(above, below, factor, share);
            });
        }
        return Math.min(1, sum);
    }

    private static double between(double above, double below, double factor, double share) {
        return Math.max(0, Normal.cumulative(above - factor * share) - Normal.cumulative(below + factor * share));
    }
}
