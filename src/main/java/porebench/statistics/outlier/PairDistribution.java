package porebench.statistics.outlier;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;

/**
 * How the sum of squares without the two highest of n normal values compares with that of all.
 *
 * <p>Let the two be u and v above the mean of the n - 2 others, and S the others' sum of squares. Their ends M = (highest
 * less mean) / sqrt(S) do not depend on S or on the mean. The two are the highest when both exceed M sqrt(S), and the
 * whole sum of squares is S + Q with Q = u^2 + v^2 - (u + v)^2 / n. In coordinates in which Q is a squared radius, its
 * direction is uniform and the radius over sqrt(S) exceeds r with probability (1 + r^2)^(-(n - 3) / 2). What is left is
 * a double integral over the direction and the radius with the distribution of M, which itself follows from that of one
 * value fewer in the same manner. It is summed once for each n: a share only says where the sum begins.
 *
 * <p>Source: the recursion over M: F. E. Grubbs, Annals of Mathematical Statistics 21 (1950); recalled. The double
 * integral is this program's own; it agrees with the published simulated tables.
 */
public final class PairDistribution {
    static final int FEWEST = 4;
    static final int MOST = 100;

    /** Divides a quarter turn; a multiple of three, so that the bend at 30 degrees is a node. */
    private static final int STEPS = 1200;

    private static final double STEP = Math.PI / 2 / STEPS;

    private static final int DIRECTIONS = 200;

    /** Of four values nothing else is summed, and the bend of the sum lies between the nodes. */
    private static final int DIRECTIONS_OF_FOUR = 20_000;

    private static final double LEAST_SIGNIFICANCE = 1e-4;
    private static final double MOST_SIGNIFICANCE = 0.5;

    private static final ConcurrentMap<Integer, PairDistribution> KNOWN = new ConcurrentHashMap<>();

    private final int n;
    private final Ends ends;
    /** The lesser of u and v on the circle of radius 1, in each direction. */
    private final double[] lesser;
    /** The integral from each node of the angle to a quarter turn; there is none of four values, whose integral is closed. */
    private final double[] beyond;

    private PairDistribution(int n) {
        this.n = n;
        this.ends = Ends.of(n - 2);
        this.lesser = new double[n == FEWEST ? DIRECTIONS_OF_FOUR : DIRECTIONS];
        for (int i = 0; i < lesser.length; i++) {
            lesser[i] = lesser((i + 0.5) * sector() / lesser.length);
        }
        this.beyond = new double[n == FEWEST ? 0 : STEPS + 1];
        for (int i = beyond.length - 2; i >= 0; i--) {
            beyond[i] = beyond[i + 1] + between(i * STEP, (i + 1) * STEP);
        }
    }

    public static PairDistribution of(int n) {
        Require.within("n", n, FEWEST, MOST);
        return KNOWN.computeIfAbsent(n, PairDistribution::new);
    }

    /** Returns the probability that the share of one chosen end is at most as given. */
    public double oneSided(double share) {
        Require.within("share", share, 0, 1);
        double fromAngle = Math.acos(Math.sqrt(share));
        double sum = n == FEWEST ? sumOfFour(fromAngle) : sum(fromAngle);
        return Math.min(1, n * (n - 1) / 2.0 * sum * sector() / lesser.length / Math.PI);
    }

    /** Returns the angle from the diagonal within which the lesser of u and v is positive. */
    private double sector() {
        return Math.atan(Math.sqrt(n / (n - 2.0)));
    }

    /** Returns the share that one chosen end stays below with a probability, to a relative error below 1e-4. */
    public double lowerPoint(double significance) {
        Require.within("significance", significance, LEAST_SIGNIFICANCE, MOST_SIGNIFICANCE);
        return new BrentSolver(1e-9, 1e-16, 0).solve(200, share -> oneSided(share) - significance, 0, 1);
    }

    /** Returns the lesser of u and v at a direction from their diagonal, on the circle of radius 1. */
    private double lesser(double direction) {
        return (Math.cos(direction) / Math.sqrt(1 - 2.0 / n) - Math.sin(direction)) / Math.sqrt(2);
    }

    /** Sums over the directions what lies beyond a radius, which is the tangent of an angle. */
    private double sum(double fromAngle) {
        int next = Math.min(STEPS, (int) (fromAngle / STEP) + 1);
        return beyond[next] + between(fromAngle, Math.max(fromAngle, next * STEP));
    }

    /** Two others lie on either side of their mean: M is a number, and the integral over the radius is closed. */
    private double sumOfFour(double fromAngle) {
        double sum = 0;
        for (double one : lesser) {
            sum += Math.cos(Math.max(fromAngle, Math.atan(Ends.OF_TWO / one)));
        }
        return sum;
    }

    /** Sums over the directions, between two angles so near to each other that the probability of M hardly changes. */
    private double between(double fromAngle, double toAngle) {
        double place = Math.tan((fromAngle + toAngle) / 2);
        double sum = 0;
        for (double one : lesser) {
            sum += ends.below(one * place);
        }
        return (beyondRadius(fromAngle) - beyondRadius(toAngle)) * sum;
    }

    /** Returns the probability that the radius exceeds the tangent of an angle. */
    private double beyondRadius(double angle) {
        return Math.pow(Math.cos(angle), n - 3.0);
    }

    /** The distribution of the highest of some normal values, less their mean, over the root of their sum of squares. */
    private static final class Ends {
        private static final double OF_TWO = Math.sqrt(0.5);
        private static final List<Ends> ALL = new ArrayList<>();

        private final double largest;
        /** The probability of a lesser value, by the angle whose sine is its share of the largest. */
        private final double[] below = new double[STEPS + 1];

        private Ends(int count) {
            this.largest = Math.sqrt((count - 1.0) / count);
        }

        static synchronized Ends of(int count) {
            while (ALL.size() < count - 1) {
                ALL.add(next(ALL.size() + 2));
            }
            return ALL.get(count - 2);
        }

        private static Ends next(int count) {
            Ends ends = new Ends(count);
            if (count == 2) {
                // The two lie equally far from their mean, so that nothing is below the largest.
                ends.below[STEPS] = 1;
                return ends;
            }
            double step = Math.PI / 2 / STEPS;
            double above = 0;
            ends.below[STEPS] = 1;
            for (int i = STEPS - 1; i >= 0; i--) {
                double at = ends.density(count, (i + 0.5) * step);
                above += at * step;
                ends.below[i] = Math.max(0, 1 - count * above);
            }
            return ends;
        }

        /** Returns the density of the angle of one value against the others, where it is the highest. */
        private double density(int count, double angle) {
            int freedom = count - 2;
            double scale =
                    Math.exp(Gamma.logGamma((freedom + 1) / 2.0) - Gamma.logGamma(freedom / 2.0)) / Math.sqrt(Math.PI);
            double place = Math.tan(angle) * Math.sqrt(count / (count - 1.0));
            return scale
                    * Math.pow(Math.cos(angle), freedom - 1.0)
                    * ALL.get(count - 3).below(place);
        }

        double below(double place) {
            double sine = place / largest;
            if (sine >= 1 - 1e-12) {
                return 1;
            }
            if (sine <= 0 || largest == OF_TWO) {
                return 0;
            }
            double at = Math.asin(sine) / (Math.PI / 2) * STEPS;
            int node = (int) at;
            return below[node] + (at - node) * (below[node + 1] - below[node]);
        }
    }
}
