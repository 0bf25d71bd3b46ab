package porebench.statistics.distribution;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Erf;

/**
 * Student's t distribution with any number of degrees of freedom, whole or not, or infinitely many.
 *
 * <p>The probability of a tail is computed from that tail, so that a small one keeps its digits, and one near one half from
 * what is missing to one half. Points are found to a relative error below 1e-9 for tails from 1e-30 to 1 less 1e-15.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.1 with 26.5 (the tail as an
 * incomplete beta function) and 26.7.5 (the series about the normal point, used from 100 000 degrees of freedom);
 * recalled. Differences from the source: none.
 *
 * @param degreesOfFreedom at least 0.5, what JCGM 100:2008 G.4.2 gives an uncertainty that is itself known to no better
 *     than 100 %; positive infinity gives the normal distribution
 */
public record StudentT(double degreesOfFreedom) {
    private static final double LEAST_DEGREES = 0.5;
    private static final double LEAST_TAIL = 1e-30;
    private static final double SERIES_FROM = 1e5;
    /** A tail above this is found by its distance from one half, which has more digits. */
    private static final double NEAR_THE_MIDDLE = 0.3;

    /** From here the tail of so nearly normal a distribution is below the smallest double. */
    private static final double NOTHING_BEYOND = 40;

    private static final int MOST_STEPS = 100;
    private static final double USUAL_CONFIDENCE = 0.95;

    public StudentT {
        requireDegreesOfFreedom("degreesOfFreedom", degreesOfFreedom);
    }

    /** The factors that every determination asks for, found once. */
    private static final class Usual {
        private static final double[] FACTORS = new double[64];

        static {
            for (int i = 0; i < FACTORS.length; i++) {
                FACTORS[i] = new StudentT(i + 1).findUpperPoint((1 - USUAL_CONFIDENCE) / 2);
            }
        }
    }

    /**
     * Returns the value that t stays below with the given probability.
     *
     * @param probability at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double quantile(double probability) {
        requireProbability("probability", probability);
        return probability < 0.5 ? -findUpperPoint(probability) : findUpperPoint(1 - probability);
    }

    /**
     * Returns the value that t exceeds with the given probability, the upper critical value.
     *
     * @param probability of the upper tail, at least 1e-30 and less than 1
     * @throws IllegalArgumentException if the probability is outside these bounds
     */
    public double upperPoint(double probability) {
        requireProbability("probability", probability);
        return probability > 0.5 ? -findUpperPoint(1 - probability) : findUpperPoint(probability);
    }

    /**
     * Returns the factor k for which t lies from -k to k with the given confidence.
     *
     * @param confidence greater than 0 and less than 1; 0.95 for 95 %
     * @throws IllegalArgumentException if the confidence is not between 0 and 1
     */
    public double coverageFactor(double confidence) {
        requireProbability("confidence", confidence);
        boolean listed = confidence == USUAL_CONFIDENCE
                && degreesOfFreedom >= 1
                && degreesOfFreedom <= Usual.FACTORS.length
                && degreesOfFreedom == Math.rint(degreesOfFreedom);
        return listed ? Usual.FACTORS[(int) degreesOfFreedom - 1] : findUpperPoint((1 - confidence) / 2);
    }

    /**
     * Returns the probability that t exceeds a value.
     *
     * @param t any number; the infinities give 0 and 1
     * @throws IllegalArgumentException if t is NaN
     */
    public double upperTail(double t) {
        if (Double.isNaN(t)) {
            throw new IllegalArgumentException("t must be a number, but is NaN");
        }
        if (t < 0) {
            return 1 - upperTail(-t);
        }
        if (Double.isInfinite(t)) {
            return 0;
        }
        if (degreesOfFreedom >= SERIES_FROM) {
            return t > NOTHING_BEYOND ? 0 : normalTail(normalDeviate(t));
        }
        // Each branch takes the argument that is not a difference of nearly equal numbers.
        double ratio = t / Math.sqrt(degreesOfFreedom);
        double square = ratio * ratio;
        return t < 1 ? 0.5 - fromTheMiddle(t) : 0.5 * Beta.regularizedBeta(1 / (1 + square), degreesOfFreedom / 2, 0.5);
    }

    /** Finds the point of an upper tail of at most one half. */
    private double findUpperPoint(double tail) {
        if (tail == 0.5) {
            return 0;
        }
        if (degreesOfFreedom >= SERIES_FROM) {
            return series(normalPoint(tail));
        }
        if (tail > NEAR_THE_MIDDLE) {
            return TailPoint.of(this::fromTheMiddle, 0.5 - tail, 0.5);
        }
        // Commons Math's own inverse stops at a relative error of about 1e-10.
        return newton(tail, this::upperTail, new TDistribution(null, degreesOfFreedom)::density);
    }

    /** Returns the point of an upper tail of the normal distribution of at most one half. */
    private static double normalPoint(double tail) {
        return tail > NEAR_THE_MIDDLE
                ? TailPoint.of(x -> Erf.erf(x / Math.sqrt(2)) / 2, 0.5 - tail, 0.5)
                : newton(tail, StudentT::normalTail, StudentT::normalDensity);
    }

    /** Returns the probability of a value from 0 to t. */
    private double fromTheMiddle(double t) {
        double square = t * t / degreesOfFreedom;
        return 0.5 * Beta.regularizedBeta(square / (1 + square), 0.5, degreesOfFreedom / 2);
    }

    private interface Curve {
        double at(double t);
    }

    /** Solves by Newton's method on the logarithm of the tail, starting from a bound on the normal point. */
    private static double newton(double tail, Curve upperTail, Curve density) {
        double t = Math.sqrt(-2 * Math.log(2 * tail));
        for (int step = 0; step < MOST_STEPS; step++) {
            double reached = upperTail.at(t);
            double move = reached / density.at(t) * Math.log(reached / tail);
            t += move;
            // The error left after a step is of the order of its square.
            if (Math.abs(move) <= 1e-10 * Math.abs(t)) {
                break;
            }
        }
        return t;
    }

    private static double normalTail(double x) {
        return Erf.erfc(x / Math.sqrt(2)) / 2;
    }

    private static double normalDensity(double x) {
        return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }

    /** Returns the t whose tail is that of a normal deviate. */
    private double series(double x) {
        double square = x * x;
        double first = x * (square + 1) / 4;
        double second = x * ((5 * square + 16) * square + 3) / 96;
        double third = x * (((3 * square + 19) * square + 17) * square - 15) / 384;
        return x + (first + (second + third / degreesOfFreedom) / degreesOfFreedom) / degreesOfFreedom;
    }

    /** Inverts the series; each round leaves about a hundredth of the error. */
    private double normalDeviate(double t) {
        double x = t;
        for (int round = 0; round < 12; round++) {
            x -= series(x) - t;
        }
        return x;
    }

    public static void requireDegreesOfFreedom(String name, double value) {
        // Infinity is welcome here, so that Require does not fit.
        if (!(value >= LEAST_DEGREES)) {
            throw new IllegalArgumentException(name + " must be at least " + LEAST_DEGREES + ", but is " + value);
        }
    }

    public static void requireProbability(String name, double value) {
        if (!(value >= LEAST_TAIL && value < 1)) {
            throw new IllegalArgumentException(name + " must be at least 1e-30 and less than 1, but is " + value);
        }
    }
}
