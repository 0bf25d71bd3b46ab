package porebench.statistics.summary;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;
import porebench.statistics.distribution.ChiSquare;

/**
 * The range of n normal values over a standard deviation that is itself estimated, from other values.
 *
 * <p>The probability that the range is at most q s is that of {@link CriticalRange} for a known deviation, averaged over how
 * s varies: s / sigma is the root of a chi-square value over its degrees of freedom. The average is an integral by Gauss
 * and Legendre. Points agree to 1e-9 with the definition integrated elsewhere, for 2 to 1000 values, any degrees of freedom
 * from 2 to a million and probabilities from 0.5 to 0.999; what lies outside is refused.
 *
 * <p>Source: H. L. Harter, Annals of Mathematical Statistics 31 (1960), tables of the studentised range; recalled. Differences
 * from the source: computed.
 */
public final class StudentisedRange {
    private static final int MOST_VALUES = 1000;
    private static final int POINTS = 96;

    /** In standard deviations of s / sigma, which are about 1 / sqrt(2 df). */
    private static final double FAR = 9;

    private static final int STEPS_A_UNIT = 8;

    private record Point(int n, int degreesOfFreedom, double probability) {}

    /** No range of normal values is as wide as this many standard deviations, to all digits. */
    private static final double WIDEST = 13;

    /** From here three terms of Stirling's series are exact to rounding. */
    private static final double STIRLING_FROM = 50;

    private static final int NODES_A_UNIT = 80;

    /** Remembers the places and weights, which take longest to find. */
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    private static final ConcurrentMap<Point, Double> KNOWN = new ConcurrentHashMap<>();

    /** The probability that n values span at most a width, by n: the integral below asks for it thousands of times. */
    private static final ConcurrentMap<Integer, PolynomialSplineFunction> WITHIN = new ConcurrentHashMap<>();

    private StudentisedRange() {}

    /**
     * Returns the q that the range over s stays below with a probability, found once and then remembered.
     *
     * @param n how many values, from 2 to 1000
     * @param degreesOfFreedom of s, from 2 to a million: with one the points are wide beyond use
     * @param probability from 0.5 to 0.999
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double factor(int n, int degreesOfFreedom, double probability) {
        Require.within("n", Require.atLeast("n", n, 2), 2, MOST_VALUES);
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 2);
        Require.within("degreesOfFreedom", degreesOfFreedom, 2, ChiSquare.MOST_DEGREES);
        Require.within("probability", probability, 0.5, 0.999);
        return KNOWN.computeIfAbsent(new Point(n, degreesOfFreedom, probability), StudentisedRange::find);
    }

    private static double find(Point point) {
        return new BrentSolver(1e-11, 1e-11)
                .solve(
                        200,
                        q -> probabilityWithin(q, point.n(), point.degreesOfFreedom()) - point.probability(),
                        0.1,
                        40 * CriticalRange.factor(point.n()));
    }

    /** Returns the probability that n normal values span at most q times an s of some degrees of freedom. */
    public static double probabilityWithin(double q, int n, int degreesOfFreedom) {
        double reach = FAR / Math.sqrt(2.0 * degreesOfFreedom);
        double half = degreesOfFreedom / 2.0;
        double constant = logOfPeak(half);
        PolynomialSplineFunction within = WITHIN.computeIfAbsent(n, StudentisedRange::spline);
        // Beyond the widest range only the chance of so large an s is left, and what is before it is smooth.
        double cut = Math.min(1 + reach, WIDEST / q);
        double beyond = new ChiSquare(degreesOfFreedom).upperTail(degreesOfFreedom * cut * cut);
        double low = Math.max(0, 1 - reach);
        if (cut <= low) {
            return 1;
        }
        GaussIntegrator integrator = GAUSS.legendre(POINTS, low, cut);
        return beyond
                + integrator.integrate(s -> Math.exp(constant - half * (s * s - 1 - 2 * Math.log(s)) - Math.log(s))
                        * within.value(Math.min(WIDEST, q * s)));
    }

    /** Returns the logarithm of the density of s / sigma at 1, without the difference of large numbers. */
    private static double logOfPeak(double half) {
        if (half < STIRLING_FROM) {
            return Math.log(2) + half * Math.log(half) - half - Gamma.logGamma(half);
        }
        double inverse = 1 / half;
        double series = inverse * (1.0 / 12 - inverse * inverse * (1.0 / 360 - inverse * inverse / 1260));
        return Math.log(2) + Math.log(half / (2 * Math.PI)) / 2 - series;
    }

    /**
     * Returns a curve through exact probabilities, good to about 1e-10 between them.
     *
     * <p>They are the sums of {@link CriticalRange}, n density(x) (F(x + width) - F(x))^(n - 1) over equal steps of x, whose
     * places all lie on the grid of the widths, so that F is looked up.
     */
    private static PolynomialSplineFunction spline(int n) {
        int nodes = (int) (WIDEST * NODES_A_UNIT) + 1;
        int stride = NODES_A_UNIT / STEPS_A_UNIT;
        double[] widths = new double[nodes];
        double[] probabilities = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            widths[i] = (double) i / NODES_A_UNIT;
            for (int x = -Grid.END; x <= Grid.END; x += stride) {
                probabilities[i] += Grid.density(x) * Math.pow(Grid.below(x + i) - Grid.below(x), n - 1.0);
            }
            probabilities[i] *= (double) n / STEPS_A_UNIT;
        }
        return new SplineInterpolator().interpolate(widths, probabilities);
    }

    /** The normal distribution at the places of a grid, counted from 0 in both directions. */
    private static final class Grid {
        /** Ten standard deviations. */
        static final int END = 10 * NODES_A_UNIT;

        private static final double[] BELOW = new double[2 * END + 1];

        static {
            for (int i = 0; i < BELOW.length; i++) {
                BELOW[i] = Erf.erfc(-(i - END) / (Math.sqrt(2) * NODES_A_UNIT)) / 2;
            }
        }

        static double below(int place) {
            return place > END ? 1 : BELOW[place + END];
        }

        static double density(int place) {
            double x = (double) place / NODES_A_UNIT;
            return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
        }
    }
}
