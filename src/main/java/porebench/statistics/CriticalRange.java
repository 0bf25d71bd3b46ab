package porebench.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import porebench.quantity.Require;

/**
 * The range that several results may span when only a known repeatability is at work.
 *
 * <p>Results of one operator should lie within f(n) times the repeatability standard deviation in 95 of 100 cases.
 * The factor f(n) is the 0.95 quantile of the range of n standard normal values: the studentised range with
 * infinitely many degrees of freedom.
 *
 * <p>Source: ASTM C670, the table of multipliers for the range of n = 2 to 10 results, 2.8 3.3 3.6 3.9 4.0 4.2 4.3
 * 4.4 4.5; ISO 5725-6, critical range factors; both recalled. Differences from the source: none, the computed factors
 * round to the printed ones, and the printed one decides so that a verdict can be redone with the table in hand.
 */
public final class CriticalRange {
    private static final double PROBABILITY = 0.95;

    /** Ranges of decimal readings are not exact in binary: 0.5 - 0.4 is less than 0.1, and 5.4 - 5.3 is more. */
    private static final double BINARY_SLACK = 1e-9;

    private static final ConcurrentMap<Integer, Double> FACTORS = new ConcurrentHashMap<>();

    private CriticalRange() {}

    /**
     * What the check of a range says.
     *
     * @param range what the results span, in their own unit
     * @param limit the critical range, in the same unit
     * @param passes whether the range is not above the limit
     */
    public record Verdict(double range, double limit, boolean passes) {
        public Verdict {
            Require.atLeastZero("range", range);
            Require.positive("limit", limit);
        }
    }

    /**
     * Returns the exact factor f(n), integrated once for each n and then remembered.
     *
     * @param n how many results, at least 2
     * @throws IllegalArgumentException if n is less than 2
     */
    public static double factor(int n) {
        Require.atLeast("n", n, 2);
        return FACTORS.computeIfAbsent(n, CriticalRange::findFactor);
    }

    /**
     * Returns the factor as tables print it, rounded to one decimal with ties to even.
     *
     * @param n how many results, at least 2
     * @throws IllegalArgumentException if n is less than 2
     */
    public static double printedFactor(int n) {
        return BigDecimal.valueOf(factor(n)).setScale(1, RoundingMode.HALF_EVEN).doubleValue();
    }

    /**
     * Checks the range of some results against the printed factor times a repeatability standard deviation.
     *
     * <p>A range equal to the limit passes. The two are compared with a relative slack of 1e-9, far below any
     * reading, so that 5.4 and 5.3 differ by 0.1 here as they do on paper.
     *
     * @param range what the results span, at least 0
     * @param n how many results, at least 2
     * @param repeatabilityStandardDeviation of the method, in the unit of the range, greater than 0
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static Verdict check(double range, int n, double repeatabilityStandardDeviation) {
        Require.atLeastZero("range", range);
        Require.positive("repeatabilityStandardDeviation", repeatabilityStandardDeviation);
        double limit = printedFactor(n) * repeatabilityStandardDeviation;
        return new Verdict(range, limit, range <= limit * (1 + BINARY_SLACK));
    }

    private static double findFactor(int n) {
        // The solver's own default stops at 1e-6.
        return new BrentSolver(1e-13, 1e-13).solve(200, width -> probabilityWithin(width, n) - PROBABILITY, 1, 20);
    }

    /**
     * Returns the probability that n standard normal values span at most a width.
     *
     * <p>It is n times the integral over x of the density at x times (F(x + width) - F(x))^(n - 1), x being the
     * lowest value. The integrand is smooth and dies away on both sides, so the plain sum over equal steps is exact
     * to rounding.
     */
    static double probabilityWithin(double width, int n) {
        double step = 1.0 / 32;
        double sum = 0;
        for (int i = -320; i <= 320; i++) {
            double x = i * step;
            double density = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
            double others = Erf.erf(x / Math.sqrt(2), (x + width) / Math.sqrt(2)) / 2;
            sum += density * Math.pow(others, n - 1);
        }
        return n * sum * step;
    }
}
