package porebench.statistics;

import java.util.List;
import porebench.quantity.Require;

/**
 * Several independent standard uncertainties combined into one, with its effective degrees of freedom.
 *
 * <p>The combined uncertainty is the root of the summed squares of sensitivity times standard uncertainty; the
 * effective degrees of freedom follow Welch and Satterthwaite and are used as they are, not cut to a whole number.
 * Correlated contributions are outside this formula.
 *
 * <p>Source: JCGM 100:2008 (GUM), clause 5.1.2 for the sum, G.4.1 for the degrees of freedom and G.3.2 for the
 * coverage factor; recalled. Differences from the source: G.4.1 lets the degrees of freedom be cut to the next lower
 * whole number; here t takes them uncut.
 *
 * @param contributions the parts, at least one
 * @param combined the combined standard uncertainty, in the unit of the result; 0 when every part is 0
 * @param effectiveDegreesOfFreedom at least 0.5; infinite when no part with finitely many contributes anything
 */
public record UncertaintySum(List<Contribution> contributions, double combined, double effectiveDegreesOfFreedom) {

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

    /** Combines independent contributions. */
    public static UncertaintySum of(Contribution... contributions) {
        return of(List.of(contributions));
    }

    /**
     * Returns what part of the combined variance comes from one contribution, from 0 to 1; 0 when all are 0.
     *
     * @param contribution one of the contributions
     */
    public double shareOf(Contribution contribution) {
        double part = combined == 0 ? 0 : contribution.size() / combined;
        return part * part;
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
