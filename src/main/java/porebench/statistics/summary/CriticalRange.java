package porebench.statistics.summary;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import porebench.quantity.Require;
import porebench.quantity.Slack;

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
    /**
     * The share of honest results whose range a pooled deviation lets pass. It is asked beside the check of a stated
     * repeatability, which lets 0.95 pass; both at 0.95 would raise too many false alarms together.
     */
    public static final double POOLED_PROBABILITY = 0.99;

    private static final double PROBABILITY = 0.95;

    /** The printed factors of 2 to 10 results. */
    private static final List<Double> PRINTED = List.of(2.8, 3.3, 3.6, 3.9, 4.0, 4.2, 4.3, 4.4, 4.5);

    private static final int STEPS_A_UNIT = 32;

    private static final ConcurrentMap<Integer, Double> FACTORS = new ConcurrentHashMap<>();

    private CriticalRange() {}

    /**
     * What the check of a range says.
     *
     * @param range what the results span, in their own unit
     * @param limit the critical range, in the same unit
     * @param passes whether the range is not above the limit
     */
    public record RangeCheck(double range, double limit, boolean passes) {
        public RangeCheck {
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
     * Returns the factor as tables print it, rounded to one decimal with ties to even: that of the table for up to 10 results.
     *
     * @param n how many results, at least 2
     * @throws IllegalArgumentException if n is less than 2
     */
    public static double printedFactor(int n) {
        Require.atLeast("n", n, 2);
        return n - 2 < PRINTED.size() ? PRINTED.get(n - 2) : rounded(n);
    }

    /** Returns the exact factor rounded as tables round it. */
    static double rounded(int n) {
        return BigDecimal.valueOf(factor(n)).setScale(1, RoundingMode.HALF_EVEN).doubleValue();
    }

    /**
     * Checks the range of some results against the printed factor times a repeatability standard deviation.
     *
     * <p>A range equal to the limit passes. The two are compared with {@link Slack}, so that 5.4 and 5.3
     * differ by 0.1 here as they do on paper.
     *
     * @param range what the results span, at least 0
     * @param n how many results, at least 2
     * @param repeatabilityStandardDeviation of the method, in the unit of the range, greater than 0
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static RangeCheck check(double range, int n, double repeatabilityStandardDeviation) {
        Require.atLeastZero("range", range);
        Require.positive("repeatabilityStandardDeviation", repeatabilityStandardDeviation);
        double limit = printedFactor(n) * repeatabilityStandardDeviation;
        return new RangeCheck(range, limit, range <= Slack.over(limit));
    }

    /**
     * Returns the factor by which a repeatability standard deviation of few degrees of freedom is multiplied: larger than
     * {@link #factor(int)}, because such a deviation may itself be too small.
     *
     * @param n how many results, at least 2
     * @param degreesOfFreedom of the standard deviation, at least 2
     * @param probability that the range stays within, from 0.5 to 0.999
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double factor(int n, int degreesOfFreedom, double probability) {
        return StudentisedRange.factor(n, degreesOfFreedom, probability);
    }

    /**
     * Checks the range of some results against a standard deviation pooled over earlier ones.
     *
     * <p>The factor is the exact one for the degrees of freedom and {@link #POOLED_PROBABILITY}. On a divided scale the limit is never below one division,
     * and a pooled deviation below that of the division counts as the division's: a smaller one cannot be seen.
     *
     * @param range what the results span, at least 0
     * @param n how many results, at least 2
     * @param pooled the earlier results, with at least 2 degrees of freedom
     * @param division the smallest step of the scale, in the unit of the range; 0 for none
     * @param leastDeviation the standard deviation that the division alone makes, in the unit of the range; 0 for none
     * @throws IllegalArgumentException if an argument is outside these bounds, or nothing makes the limit greater than 0
     */
    public static RangeCheck check(
            double range, int n, PooledDeviation pooled, double division, double leastDeviation) {
        Require.atLeastZero("range", range);
        Require.atLeastZero("division", division);
        Require.atLeastZero("leastDeviation", leastDeviation);
        double usual = Math.max(leastDeviation, pooled.standardDeviation());
        double limit = Math.max(division, factor(n, pooled.degreesOfFreedom(), POOLED_PROBABILITY) * usual);
        return new RangeCheck(range, limit, range <= Slack.over(limit));
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
    public static double probabilityWithin(double width, int n) {
        return probabilityWithin(width, n, STEPS_A_UNIT);
    }

    /** Returns the same in larger steps, for those who average it over many widths; 8 a unit give nine digits. */
    static double probabilityWithin(double width, int n, int stepsAUnit) {
        double step = 1.0 / stepsAUnit;
        double sum = 0;
        for (int i = -10 * stepsAUnit; i <= 10 * stepsAUnit; i++) {
            double x = i * step;
            double density = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
            double others = Erf.erf(x / Math.sqrt(2), (x + width) / Math.sqrt(2)) / 2;
            sum += density * Math.pow(others, n - 1);
        }
        return n * sum * step;
    }
}
