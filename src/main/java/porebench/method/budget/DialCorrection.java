package porebench.method.budget;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import porebench.quantity.Require;

/**
 * The correction of a Type B dial at the readings in question, as its calibration found it.
 *
 * @param correctionPercent true air less reading, in % air
 * @param standardUncertaintyPercent of the correction, in % air, at least 0
 * @param degreesOfFreedom at least 0.5; infinite when it rests on steps of scales alone
 * @param restsOnBowl whether the true air of the calibration was worked out with the same volume of the bowl: an error of
 *     that volume then changes reading and water withdrawn alike and hardly touches their difference
 * @param measure by which the known air was made; empty when nothing is known of it
 */
public record DialCorrection(
        double correctionPercent,
        double standardUncertaintyPercent,
        double degreesOfFreedom,
        boolean restsOnBowl,
        Optional<Measure> measure) {
    /**
     * The cylinder, balance or vessel by which known air was made.
     *
     * @param limitPercent how far it may be wrong, in % air, greater than 0
     * @param origin where that was taken from
     * @param isOfTheTrials whether the water of the trials was measured by the same one: its error then moves both alike
     * @param wanting what is to be said of it, in the order of the omissions; empty when nothing
     */
    public record Measure(double limitPercent, Origin origin, boolean isOfTheTrials, Set<Omission> wanting) {
        public Measure {
            Set<Omission> ordered = EnumSet.noneOf(Omission.class);
            ordered.addAll(wanting);
            wanting = Collections.unmodifiableSet(ordered);
            Require.positive("limitPercent", limitPercent);
        }

        /** Makes a measure of which nothing more is to be said. */
        public Measure(double limitPercent, Origin origin, boolean isOfTheTrials) {
            this(limitPercent, origin, isOfTheTrials, Set.of());
        }

        BudgetLine line() {
            return BudgetLine.limited(BudgetPart.DIAL_MEASURE, 0, limitPercent, 1, origin);
        }
    }

    public DialCorrection {
        Require.finite("correctionPercent", correctionPercent);
        Require.atLeastZero("standardUncertaintyPercent", standardUncertaintyPercent);
    }

    BudgetLine line() {
        return BudgetLine.known(
                BudgetPart.DIAL,
                correctionPercent,
                standardUncertaintyPercent,
                1,
                degreesOfFreedom,
                Origin.CALIBRATION);
    }
}
