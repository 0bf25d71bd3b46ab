package porebench.statistics.control;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import porebench.quantity.Require;

/**
 * What a control chart is drawn by, besides its points.
 *
 * @param baseCount how many of the first points the limits come from, at least 1; all when there are fewer
 * @param width how far the limits are out, in standard deviations, greater than 0; the zones of the run rules are its thirds
 * @param rules which patterns are signals
 * @param division the smallest step of the scale, in the unit of the values; 0 for none. A standard deviation smaller than
 *     division / sqrt(12), what the division alone gives, is not believed and raised to that.
 * @param knownCentre the centre from an earlier period, in place of the base's mean
 * @param knownSigma the standard deviation of a single value from an earlier period, in place of the base's, greater than 0
 */
public record ChartTerms(
        int baseCount,
        double width,
        Set<RunRule> rules,
        double division,
        OptionalDouble knownCentre,
        OptionalDouble knownSigma) {
    /** With fewer base points the limits are provisional. Source: common practice, no source. */
    public static final int FEWEST_FOR_LASTING_LIMITS = 20;

    private static final double USUAL_WIDTH = 3;

    public ChartTerms {
        Require.atLeast("baseCount", baseCount, 1);
        Require.positive("width", width);
        Require.atLeastZero("division", division);
        knownCentre.ifPresent(value -> Require.finite("knownCentre", value));
        knownSigma.ifPresent(value -> Require.positive("knownSigma", value));
        rules = Set.copyOf(rules);
    }

    /** Returns limits of 3 standard deviations from all points, and those limits as the only rule. */
    public static ChartTerms usual() {
        return new ChartTerms(
                Integer.MAX_VALUE,
                USUAL_WIDTH,
                EnumSet.of(RunRule.BEYOND_LIMITS),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public ChartTerms withBaseCount(int count) {
        return new ChartTerms(count, width, rules, division, knownCentre, knownSigma);
    }

    public ChartTerms withWidth(double sigmas) {
        return new ChartTerms(baseCount, sigmas, rules, division, knownCentre, knownSigma);
    }

    public ChartTerms withRules(Set<RunRule> others) {
        return new ChartTerms(baseCount, width, others, division, knownCentre, knownSigma);
    }

    public ChartTerms withDivision(double step) {
        return new ChartTerms(baseCount, width, rules, step, knownCentre, knownSigma);
    }

    ChartTerms withKnownCentre(double centre) {
        return new ChartTerms(baseCount, width, rules, division, OptionalDouble.of(centre), knownSigma);
    }

    ChartTerms withKnownSigma(double sigma) {
        return new ChartTerms(baseCount, width, rules, division, knownCentre, OptionalDouble.of(sigma));
    }
}
