package porebench.method.budget;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;

/**
 * Everything that the budget of a corrected field reading is made of.
 *
 * @param readingPercent the reading, or the mean of several of one load, in % air
 * @param divisionPercent a division of the scale there, in % air, greater than 0
 * @param dial the correction of that meter's dial at the reading; empty when it was never checked
 * @param scatter how readings of one load scatter; empty when only one was made
 * @param factorPercent the factor that is subtracted, in % air
 * @param factorUncertaintyPercent its combined standard uncertainty, in % air, at least 0
 * @param factorDegreesOfFreedom its effective degrees of freedom, at least 0.5
 * @param factorStepPercent the step to which the factor was rounded, in % air; empty when it is not rounded
 */
public record FieldInputs(
        double readingPercent,
        double divisionPercent,
        Optional<Dial> dial,
        Optional<Scatter> scatter,
        double factorPercent,
        double factorUncertaintyPercent,
        double factorDegreesOfFreedom,
        OptionalDouble factorStepPercent) {
    public FieldInputs {
        Require.finite("readingPercent", readingPercent);
        Require.positive("divisionPercent", divisionPercent);
        Require.finite("factorPercent", factorPercent);
        Require.atLeastZero("factorUncertaintyPercent", factorUncertaintyPercent);
        factorStepPercent.ifPresent(step -> Require.positive("factorStepPercent", step));
    }

    /**
     * How several readings of one load scatter.
     *
     * @param standardDeviationPercent in % air, at least 0
     * @param count how many readings were made, at least 2
     */
    public record Scatter(double standardDeviationPercent, int count) {
        public Scatter {
            Require.atLeastZero("standardDeviationPercent", standardDeviationPercent);
            Require.atLeast("count", count, 2);
        }
    }
}
