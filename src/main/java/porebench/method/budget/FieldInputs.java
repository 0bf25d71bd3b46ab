package porebench.method.budget;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;

/**
 * Everything that the budget of a corrected field reading is made of.
 *
 * @param readingPercent the reading, in % air
 * @param divisionPercent a division of the scale there, in % air, greater than 0
 * @param dial the correction of that meter's dial at the reading; empty when it was never checked
 * @param scatterPercent the standard deviation that readings of one load have among operators and meters, in % air, as the
 *     profile states it, greater than 0
 * @param factorPercent the factor that is subtracted, in % air
 * @param factorUncertaintyPercent its combined standard uncertainty, in % air, at least 0
 * @param factorDegreesOfFreedom its effective degrees of freedom, at least 0.5
 * @param factorStepPercent the step to which the factor was rounded, in % air; empty when it is not rounded
 */
public record FieldInputs(
        double readingPercent,
        double divisionPercent,
        Optional<Dial> dial,
        double scatterPercent,
        double factorPercent,
        double factorUncertaintyPercent,
        double factorDegreesOfFreedom,
        OptionalDouble factorStepPercent) {
    public FieldInputs {
        Require.finite("readingPercent", readingPercent);
        Require.positive("divisionPercent", divisionPercent);
        Require.positive("scatterPercent", scatterPercent);
        Require.finite("factorPercent", factorPercent);
        Require.atLeastZero("factorUncertaintyPercent", factorUncertaintyPercent);
        factorStepPercent.ifPresent(step -> Require.positive("factorStepPercent", step));
    }
}
