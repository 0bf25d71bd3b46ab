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
 * value fewer in the same manner.
 *
 * <p>Source: the recursion over M: F. E. Grubbs, Annals of Mathematical Statistics 21 (1950); recalled. The double
 * integral is this program's own; it agrees with the published simulated tables.
 */
public final class PairDistribution {
    static final int FEWEST = 4;
    static final int MOST = 100;

    /** Divides a quarter turn; a multiple of three, so that the bend at 30 degrees is a node. */
    private static final int STEPS = 1200;

    private static final int DIRECTIONS = 200;

    /** Of four values nothing else is summed, and the bend of the sum lies between the nodes. */
    private static final int DIRECTIONS_OF_FOUR = 20_000;

    private static final double LEAST_SIGNIFICANCE = 1e-4;
    private static final double MOST_SIGNIFICANCE = 0.5;

    private static final ConcurrentMap<Integer, PairDistribution> KNOWN = new ConcurrentHashMap<>();

    private final int n;
    private final Ends ends;

    private PairDistribution(int n) {
        this.n = n;
        this.ends = Ends.of(n - 2);
    }

    public static PairDistribution of(int n) {
        Require.within("n", n, FEWEST, MOST);
        return KNOWN.computeIfAbsent(n, PairDistribution::new);
    }

    /** Returns the probability that the share of one chosen end is at most as given. */
    public double oneSided(double share) {
        Require.within("share", share, 0, 1);
        double sector = Math.atan(Math.sqrt(n / (n - 2.0)));
        int directions = n == FEWEST ? DIRECTIONS_OF_FOUR : DIRECTIONS;
        double step = sector / directions;
        double sum = 0;
        for (int i = 0; i < directions; i++) {
            sum += radial(lesser((i + 0.5) * step), Math.acos(Math.sqrt(share)));
        }
        return Math.min(1, n * (n - 1) / 2.0 * sum * step / Math.PI);
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

    /** Integrates over the radius, which is the tangent of an angle. */
    private double radial(double lesser, double fromAngle) {
        if (n == FEWEST) {
            // Two others lie on either side of their mean: M is a number, and the integral is closed.
            return Math.cos(Math.max(fromAngle, Math.atan(Ends.OF_TWO / lesser)));
        }
        int steps = STEPS / 4;
        double step = (Math.PI / 2 - fromAngle) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double angle = fromAngle + (i + 0.5) * step;
            double density = (n - 3) * Math.sin(angle) * Math.pow(Math.cos(angle), n - 4.0);
            sum += density * ends.below(lesser * Math.tan(angle));
        }
        return sum * step;
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
