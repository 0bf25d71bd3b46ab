package porebench.statistics.control;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;
import porebench.statistics.summary.CriticalRange;

/**
 * The constants of control charts for subgroups of one size, computed from their definitions and then remembered.
 *
 * <p>Of n normal values with standard deviation 1, d2 is the mean of the range, d3 its standard deviation and c4 the mean
 * of the sample standard deviation. The others follow from them with limits three standard deviations out.
 *
 * <p>Source: ASTM E2587; D. C. Montgomery, Introduction to Statistical Quality Control, appendix VI; recalled. Differences
 * from the source: printed tables are rounded, and off by 1 in the last place for D3, D4 and d3 of some n.
 *
 * @param n values a subgroup, at least 2
 * @param d2 mean range over the standard deviation
 * @param d3 standard deviation of the range over that of the values
 * @param c4 mean sample standard deviation over the standard deviation
 */
public record ChartConstants(int n, double d2, double d3, double c4) {
    private static final double WIDTH = 3;

    /** Wider ranges do not happen, and between these points the range's distribution is smooth. */
    private static final double[] PIECES = {0, 4, 8, 18};

    private static final int POINTS = 40;
    private static final ConcurrentMap<Integer, ChartConstants> KNOWN = new ConcurrentHashMap<>();

    public ChartConstants {
        Require.atLeast("n", n, 2);
        Require.positive("d2", d2);
        Require.positive("d3", d3);
        Require.positive("c4", c4);
    }

    /**
     * Returns the constants for a size of subgroup.
     *
     * @param n values a subgroup, at least 2
     * @throws IllegalArgumentException if n is less than 2
     */
    public static ChartConstants of(int n) {
        Require.atLeast("n", n, 2);
        return KNOWN.computeIfAbsent(n, ChartConstants::compute);
    }

    private static ChartConstants compute(int n) {
        double mean = 0;
        double square = 0;
        GaussIntegratorFactory factory = new GaussIntegratorFactory();
        for (int i = 1; i < PIECES.length; i++) {
            var piece = factory.legendre(POINTS, PIECES[i - 1], PIECES[i]);
            mean += piece.integrate(width -> 1 - CriticalRange.probabilityWithin(width, n));
            square += piece.integrate(width -> 2 * width * (1 - CriticalRange.probabilityWithin(width, n)));
        }
        double c4 = Math.sqrt(2.0 / (n - 1)) * Math.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
        return new ChartConstants(n, mean, Math.sqrt(square - mean * mean), c4);
    }

    /** Returns how far the limits of a mean are out, in mean ranges. */
    public double a2() {
        return WIDTH / (d2 * Math.sqrt(n));
    }

    /** Returns how far the limits of a mean are out, in mean standard deviations. */
    public double a3() {
        return WIDTH / (c4 * Math.sqrt(n));
    }

    /** Returns the lower limit of the standard deviation, in mean standard deviations. */
    public double b3() {
        return Math.max(0, 1 - deviationReach());
    }

    /** Returns the upper limit of the standard deviation, in mean standard deviations. */
    public double b4() {
        return 1 + deviationReach();
    }

    /** Returns the lower limit of the range, in mean ranges. */
    public double lowD3() {
        return Math.max(0, 1 - WIDTH * d3 / d2);
    }

    /** Returns the upper limit of the range, in mean ranges. */
    public double highD4() {
        return 1 + WIDTH * d3 / d2;
    }

    /** Returns how far the limits of a single value are out, in mean ranges of n values. */
    public double e2() {
        return WIDTH / d2;
    }

    /** Returns the standard deviation of the sample standard deviation over that of the values, sqrt(1 - c4^2). */
    double c5() {
        return Math.sqrt(1 - c4 * c4);
    }

    private double deviationReach() {
        return WIDTH * c5() / c4;
    }
}
