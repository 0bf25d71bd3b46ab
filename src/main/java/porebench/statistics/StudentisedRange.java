package porebench.statistics;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;

/**
 * The range of n normal values over a standard deviation that is itself estimated, from other values.
 *
 * <p>The probability that the range is at most q s is that of {@link CriticalRange} for a known deviation, averaged over how
 * s varies: s / sigma is the root of a chi-square value over its degrees of freedom. The average is an integral by Gauss
 * and Legendre.
 *
 * <p>Source: H. L. Harter, Annals of Mathematical Statistics 31 (1960), tables of the studentised range; recalled. Differences
 * from the source: computed.
 */
final class StudentisedRange {
    private static final double PROBABILITY = 0.95;
    private static final int POINTS = 96;

    /** In standard deviations of s / sigma, which are about 1 / sqrt(2 df). */
    private static final double FAR = 9;

    private static final int STEPS_A_UNIT = 8;

    private static final ConcurrentMap<Long, Double> KNOWN = new ConcurrentHashMap<>();

    private StudentisedRange() {}

    /**
     * Returns the q that the range over s stays below in 95 of 100 cases, found once for each pair and then remembered.
     *
     * @param n how many values, at least 2
     * @param degreesOfFreedom of s, at least 2: with one the points are wide beyond use
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    static double factor(int n, int degreesOfFreedom) {
        Require.atLeast("n", n, 2);
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 2);
        return KNOWN.computeIfAbsent(((long) n << 32) + degreesOfFreedom, pair -> find(n, degreesOfFreedom));
    }

    private static double find(int n, int degreesOfFreedom) {
        double known = CriticalRange.factor(n);
        return new BrentSolver(1e-11, 1e-11)
                .solve(200, q -> probabilityWithin(q, n, degreesOfFreedom) - PROBABILITY, known, 20 * known);
    }

    /** Returns the probability that n normal values span at most q times an s of some degrees of freedom. */
    static double probabilityWithin(double q, int n, int degreesOfFreedom) {
        double reach = FAR / Math.sqrt(2.0 * degreesOfFreedom);
        double half = degreesOfFreedom / 2.0;
        double constant = Math.log(2) + half * Math.log(half) - Gamma.logGamma(half);
        GaussIntegrator integrator = new GaussIntegratorFactory().legendre(POINTS, Math.max(0, 1 - reach), 1 + reach);
        return integrator.integrate(s -> Math.exp(constant + (degreesOfFreedom - 1) * Math.log(s) - half * s * s)
                * CriticalRange.probabilityWithin(q * s, n, STEPS_A_UNIT));
    }
}
