package porebench.statistics.uncertainty;

import java.util.Arrays;
import java.util.List;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * Several standard uncertainties combined into one, with its effective degrees of freedom.
 *
 * <p>The combined uncertainty is the root of the summed squares of sensitivity times standard uncertainty; the
 * effective degrees of freedom follow Welch and Satterthwaite and are used as they are, not cut to a whole number.
 * Of correlated contributions the covariances are added; those that hang together then count in that formula as one, with the
 * fewest degrees of freedom among them.
 *
 * <p>Source: JCGM 100:2008 (GUM), clause 5.1.2 for the sum, 5.2.2 for the covariances, G.4.1 for the degrees of freedom and
 * G.3.2 for the coverage factor; recalled. Differences from the source: G.4.1 lets the degrees of freedom be cut to the next
 * lower whole number; here t takes them uncut. It holds for independent contributions only: to count correlated ones as one is
 * ours, exact where all come from the same readings, as in H.2 and H.3.
 *
 * @param contributions the parts, at least one
 * @param combined the combined standard uncertainty, in the unit of the result; 0 when every part is 0
 * @param effectiveDegreesOfFreedom at least 0.5; infinite when no part with finitely many contributes anything
 */
public record UncertaintySum(List<Contribution> contributions, double combined, double effectiveDegreesOfFreedom) {

    /** Shares of the largest variance this small are rounding. */
    private static final double ROUNDING = 1e-12;

    public UncertaintySum {
        contributions = List.copyOf(contributions);
        Require.atLeast("count of contributions", contributions.size(), 1);
        Require.atLeastZero("combined", combined);
        StudentT.requireDegreesOfFreedom("effectiveDegreesOfFreedom", effectiveDegreesOfFreedom);
    }

    /**
     * One part of an uncertainty.
     *
     * @param name what it comes from
     * @param standardUncertainty of the input, in the input's unit, at least 0
     * @param sensitivity by how much the result moves for one unit of the input, of either sign
     * @param degreesOfFreedom at least 0.5; infinite when the uncertainty is taken as known exactly
     */
    public record Contribution(String name, double standardUncertainty, double sensitivity, double degreesOfFreedom) {
        public Contribution {
            Require.notBlank("name", name);
            Require.atLeastZero("standardUncertainty", standardUncertainty);
            Require.finite("sensitivity", sensitivity);
            StudentT.requireDegreesOfFreedom("degreesOfFreedom", degreesOfFreedom);
        }

        /** Returns a contribution already expressed in the unit of the result. */
        public static Contribution of(String name, double standardUncertainty, double degreesOfFreedom) {
            return new Contribution(name, standardUncertainty, 1, degreesOfFreedom);
        }

        /** Returns the part in the unit of the result, at least 0. */
        public double size() {
            return Math.abs(sensitivity) * standardUncertainty;
        }

        private double signed(double largest) {
            return Math.signum(sensitivity) * size() / largest;
        }
    }

    /**
     * Combines independent contributions.
     *
     * @throws IllegalArgumentException if there is none, or their sum is not finite
     */
    public static UncertaintySum of(List<Contribution> contributions) {
        double largest =
                contributions.stream().mapToDouble(Contribution::size).max().orElse(0);
        if (largest == 0) {
            return new UncertaintySum(contributions, 0, Double.POSITIVE_INFINITY);
        }
        double squares = 0;
        double fourths = 0;
        for (Contribution part : contributions) {
            // Shares of the largest part: their fourth powers neither overflow nor vanish.
            double share = part.size() / largest;
            squares += share * share;
            fourths += share * share * share * share / part.degreesOfFreedom();
        }
        return new UncertaintySum(contributions, largest * Math.sqrt(squares), squares * squares / fourths);
    }

    /**
     * Combines contributions, some of which err together.
     *
     * @param correlations between the contributions' inputs, by their places
     * @throws IllegalArgumentException if there is no contribution, or the correlations contradict one another
     */
    public static UncertaintySum of(List<Contribution> contributions, List<Correlation> correlations) {
        double largest =
                contributions.stream().mapToDouble(Contribution::size).max().orElse(0);
        if (correlations.isEmpty() || largest == 0) {
            return of(contributions);
        }
        int[] group = Correlation.groups(contributions.size(), correlations);
        double[] variances = new double[group.length];
        double[] degrees = new double[group.length];
        Arrays.fill(degrees, Double.POSITIVE_INFINITY);
        for (int i = 0; i < group.length; i++) {
            Contribution part = contributions.get(i);
            double share = part.size() / largest;
            variances[group[i]] += share * share;
            if (share > 0) {
                degrees[group[i]] = Math.min(degrees[group[i]], part.degreesOfFreedom());
            }
        }
        for (Correlation one : correlations) {
            variances[group[one.first()]] += 2
                    * one.coefficient()
                    * contributions.get(one.first()).signed(largest)
                    * contributions.get(one.second()).signed(largest);
        }
        double squares = 0;
        double fourths = 0;
        for (int i = 0; i < group.length; i++) {
            if (variances[i] < -ROUNDING) {
                throw new IllegalArgumentException(
                        "correlations must not contradict one another, but a variance is " + variances[i]);
            }
            double variance = variances[i] < ROUNDING ? 0 : variances[i];
            squares += variance;
            fourths += variance * variance / degrees[i];
        }
        return new UncertaintySum(
                contributions,
                largest * Math.sqrt(squares),
                squares == 0 ? Double.POSITIVE_INFINITY : squares * squares / fourths);
    }

    /** Combines independent contributions. */
    static UncertaintySum of(Contribution... contributions) {
        return of(List.of(contributions));
    }

    /**
     * Returns what part of the summed variances comes from one contribution, from 0 to 1; 0 when all are 0. Covariances are
     * left out, which belong to no single one.
     *
     * @param contribution one of the contributions
     */
    public double shareOf(Contribution contribution) {
        double all = apart();
        double part = all == 0 ? 0 : contribution.size() / all;
        return part * part;
    }

    /** Returns what the combined uncertainty would be if no contributions erred together. */
    public double apart() {
        return of(contributions).combined();
    }

    /**
     * Returns the expanded uncertainty, combined times the t factor for a confidence, in the unit of the result.
     *
     * @param confidence greater than 0 and less than 1; 0.95 for 95 %
     * @throws IllegalArgumentException if the confidence is not between 0 and 1
     */
    public double expanded(double confidence) {
        return combined * new StudentT(effectiveDegreesOfFreedom).coverageFactor(confidence);
    }

    /**
     * Returns the standard uncertainty of a reading on a scale of equal steps, step / sqrt(12).
     *
     * <p>The true value may lie anywhere within half a step of the reading. Degrees of freedom: infinite.
     *
     * <p>Source: JCGM 100:2008 (GUM), F.2.2.1; recalled.
     *
     * @param step of the scale, at least 0; the result is in the same unit
     * @throws IllegalArgumentException if the step is negative or not finite
     */
    public static double resolutionUncertainty(double step) {
        return Require.atLeastZero("step", step) / Math.sqrt(12);
    }
}
