package porebench.method.budget;

import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;

/**
 * What an uncertainty is worth: U of a factor beside the step in which it is reported and the tolerance of the mix's air.
 *
 * <p>The index is the half-width of the tolerance over U: how many times U goes into the tolerance to either side. An index of
 * {@link #AMPLE} or more leaves nearly all of the tolerance to the concrete.
 *
 * <p>Source: JCGM 106:2012, 7.6.3 (measurement capability index, T / (4 u) for a tolerance interval of length T, with U = 2 u;
 * recalled); 4 as ample: common practice, no source. Differences from the source: U as it is quoted stands for 2 u.
 *
 * @param uncertaintyPercent U at 95 %, in % air, greater than 0
 * @param stepPercent the step in which the factor is reported, in % air, greater than 0
 * @param tolerancePercent how far the mix's air may lie to either side of its target, in % air, greater than 0
 */
public record Capability(double uncertaintyPercent, double stepPercent, double tolerancePercent) {
    /** From this index on the uncertainty is small beside the tolerance. */
    public static final double AMPLE = 4;

    /** How an uncertainty stands to the tolerance. */
    public enum Standing implements Symbolic {
        /** It is small beside the tolerance. */
        AMPLE,
        /** It takes a part of the tolerance that should be reckoned with. */
        TAKES_PART,
        /** It is as wide as the tolerance, or wider. */
        TOO_WIDE;
    }

    public Capability {
        Require.positive("uncertaintyPercent", uncertaintyPercent);
        Require.positive("stepPercent", stepPercent);
        Require.positive("tolerancePercent", tolerancePercent);
    }

    /**
     * Returns what a factor's uncertainty is worth.
     *
     * @param result the budget of the factor
     * @param profile whose reporting step holds, and whose tolerance where the mix states none
     * @param mixTolerancePercent the tolerance that the mix states, in % air
     */
    public static Capability of(BudgetResult result, Profile profile, OptionalDouble mixTolerancePercent) {
        return new Capability(
                result.uncertaintyPercent(),
                profile.factorRounding().step().doubleValue(),
                mixTolerancePercent.orElseGet(() -> profile.number(FigureName.AIR_TOLERANCE)));
    }

    /** Returns the measurement capability index: the tolerance to one side over U. */
    public double index() {
        return tolerancePercent / uncertaintyPercent;
    }

    /** Returns how it stands to the tolerance. */
    public Standing standing() {
        if (index() >= Slack.under(AMPLE)) {
            return Standing.AMPLE;
        }
        return index() > Slack.over(1) ? Standing.TAKES_PART : Standing.TOO_WIDE;
    }

    /** Returns how many reporting steps U is. */
    public double steps() {
        return uncertaintyPercent / stepPercent;
    }
}
