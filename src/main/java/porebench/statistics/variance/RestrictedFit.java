package porebench.statistics.variance;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The variances at which the restricted likelihood is greatest, some of them perhaps at their bound 0.
 *
 * <p>Newton's method on the logarithms of the variances, held back where it would not climb. A variance that falls below a
 * billionth of the largest is put to 0; at the end each such one must make the likelihood smaller when it leaves 0, or it is
 * let go again. A variance that is given is left as it is.
 *
 * @param variances one a named layer, and last that of values
 * @param minusTwiceLog -2 ln L there, apart from a constant
 * @param mean the mean that belongs to them, less its origin
 * @param varianceOfMean its variance
 */
record RestrictedFit(double[] variances, double minusTwiceLog, double mean, double varianceOfMean) {
    private static final double AS_GOOD_AS_0 = 1e-9;
    private static final double FLAT = 1e-9;

    /** For the likelihood alone this is enough: it changes with the square of what is left. */
    private static final double NEARLY_FLAT = 1e-5;

    private static final double LONGEST_STEP = 2;
    private static final int MOST_STEPS = 200;
    private static final int MOST_ROUNDS = 20;
    private static final int MOST_HALVINGS = 40;
    private static final double LET_GO_AT = 1e-3;
    private static final double LEAST_STEEPENING = 0.01;
    private static final double STEEPEST = 1e12;
    private static final double DEFINITE = 1e-12;
    private static final double LAST_DIGITS = 1e-13;
    private static final int NONE = -1;

    /** Finds the greatest likelihood from a start. */
    static RestrictedFit of(RestrictedLikelihood likelihood, double... start) {
        return climb(likelihood, start, NONE, FLAT);
    }

    /**
     * Finds the greatest likelihood from a start, as nearly as the likelihood of very many values can be told: its variances to about
     * 1e-5 of what they are uncertain by.
     */
    static RestrictedFit near(RestrictedLikelihood likelihood, double... start) {
        return climb(likelihood, start, NONE, NEARLY_FLAT);
    }

    /** Finds the greatest likelihood with one of the variances given, to about 1e-10. */
    static RestrictedFit given(RestrictedLikelihood likelihood, int index, double variance, double... start) {
        double[] from = start.clone();
        from[index] = variance;
        return climb(likelihood, from, index, NEARLY_FLAT);
    }

    private static RestrictedFit climb(RestrictedLikelihood likelihood, double[] start, int given, double flat) {
        double[] variances = start.clone();
        boolean[] isFree = new boolean[variances.length];
        for (int i = 0; i < isFree.length; i++) {
            isFree[i] = i != given;
            if (isFree[i] && variances[i] <= 0) {
                variances[i] = LET_GO_AT * largest(variances);
            }
        }
        RestrictedLikelihood.At at = likelihood.at(variances);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            at = newton(likelihood, variances, isFree, at, flat);
            boolean isDone = true;
            for (int i = 0; i < variances.length; i++) {
                if (i != given && !isFree[i] && at.minusTwiceLog().slope(i) < 0) {
                    isFree[i] = true;
                    variances[i] = LET_GO_AT * largest(variances);
                    isDone = false;
                }
            }
            if (isDone) {
                break;
            }
            at = likelihood.at(variances);
        }
        return new RestrictedFit(variances, at.minusTwiceLog().value(), at.mean(), at.varianceOfMean());
    }

    private static double largest(double[] variances) {
        return Arrays.stream(variances).max().orElseThrow();
    }

    /** Changes the free variances until the likelihood is flat in them. */
    private static RestrictedLikelihood.At newton(
            RestrictedLikelihood likelihood,
            double[] variances,
            boolean[] isFree,
            RestrictedLikelihood.At from,
            double flat) {
        RestrictedLikelihood.At at = from;
        for (int step = 0; step < MOST_STEPS; step++) {
            double least = AS_GOOD_AS_0 * largest(variances);
            boolean isChanged = false;
            for (int i = 0; i < variances.length - 1; i++) {
                if (isFree[i] && variances[i] < least) {
                    variances[i] = 0;
                    isFree[i] = false;
                    isChanged = true;
                }
            }
            if (isChanged) {
                at = likelihood.at(variances);
            }
            int[] free =
                    IntStream.range(0, isFree.length).filter(i -> isFree[i]).toArray();
            double[] slope = logSlope(at.minusTwiceLog(), variances, free);
            if (steepest(slope) < flat) {
                break;
            }
            double[] move = move(logCurve(at.minusTwiceLog(), variances, free), slope);
            RestrictedLikelihood.At next = walk(likelihood, variances, free, move, at);
            if (next == at) {
                break;
            }
            at = next;
        }
        return at;
    }

    private static RestrictedLikelihood.At walk(
            RestrictedLikelihood likelihood,
            double[] variances,
            int[] free,
            double[] move,
            RestrictedLikelihood.At from) {
        double part = 1;
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            double[] tried = variances.clone();
            for (int i = 0; i < free.length; i++) {
                tried[free[i]] *= Math.exp(part * move[i]);
            }
            RestrictedLikelihood.At at = likelihood.at(tried);
            double gain = from.minusTwiceLog().value() - at.minusTwiceLog().value();
            boolean isBeyondDigits = Math.abs(gain)
                    <= LAST_DIGITS * Math.abs(from.minusTwiceLog().value());
            if (isBeyondDigits ? isFlatter(at, tried, from, variances, free) : gain > 0) {
                System.arraycopy(tried, 0, variances, 0, tried.length);
                return at;
            }
            if (isBeyondDigits) {
                break;
            }
            part /= 2;
        }
        return from;
    }

    /** Where the digits of the likelihood end, how flat it is still tells which of two places is nearer. */
    private static boolean isFlatter(
            RestrictedLikelihood.At at, double[] tried, RestrictedLikelihood.At from, double[] variances, int[] free) {
        return steepest(logSlope(at.minusTwiceLog(), tried, free))
                < steepest(logSlope(from.minusTwiceLog(), variances, free)) / 2;
    }

    private static double steepest(double[] slope) {
        return Arrays.stream(slope).map(Math::abs).max().orElse(0);
    }

    private static double[] logSlope(Jet jet, double[] variances, int[] free) {
        return Arrays.stream(free).mapToDouble(i -> variances[i] * jet.slope(i)).toArray();
    }

    private static double[][] logCurve(Jet jet, double[] variances, int[] free) {
        double[][] curve = new double[free.length][free.length];
        for (int i = 0; i < free.length; i++) {
            for (int j = 0; j < free.length; j++) {
                double second = jet.curve(free[i], free[j]);
                curve[i][j] = variances[free[i]] * variances[free[j]] * second;
            }
            curve[i][i] += variances[free[i]] * jet.slope(free[i]);
        }
        return curve;
    }

    /** Returns the step of Newton's method, with the curve steepened as far as it takes to go down. */
    private static double[] move(double[][] curve, double[] slope) {
        double[] move = new double[0];
        for (double steep = 0; move.length == 0 && steep < STEEPEST; steep = Math.max(LEAST_STEEPENING, steep * 4)) {
            move = solve(curve, slope, steep);
        }
        double[] found =
                move.length == 0 ? Arrays.stream(slope).map(part -> -part).toArray() : move;
        double longest = steepest(found);
        double scale = Math.min(1, LONGEST_STEP / longest);
        return Arrays.stream(found).map(part -> part * scale).toArray();
    }

    /** Solves (curve + steep I) x = -slope by Cholesky's method; empty where that is not positive definite. */
    private static double[] solve(double[][] curve, double[] slope, double steep) {
        int n = slope.length;
        double[][] root = new double[n][n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double left = curve[i][j] + (i == j ? steep : 0);
                for (int k = 0; k < j; k++) {
                    left -= root[i][k] * root[j][k];
                }
                if (i == j && !(left > DEFINITE)) {
                    return new double[0];
                }
                root[i][j] = i == j ? Math.sqrt(left) : left / root[j][j];
            }
        }
        for (int i = 0; i < n; i++) {
            double left = -slope[i];
            for (int k = 0; k < i; k++) {
                left -= root[i][k] * x[k];
            }
            x[i] = left / root[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double left = x[i];
            for (int k = i + 1; k < n; k++) {
                left -= root[k][i] * x[k];
            }
            x[i] = left / root[i][i];
        }
        return x;
    }
}
