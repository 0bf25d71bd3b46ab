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
 * @param factor its budget
 * @param dialCoefficient how far the correction of the dial errs together with that in the factor, from -1 to 1; 0 for another
 *     calibration
 * @param isMeasureShared whether the known air of both dials was made by one cylinder, balance or vessel
 * @param factorStepPercent the step to which the factor was rounded, in % air; empty when it is not rounded
 */
public record FieldInputs(
        double readingPercent,
        double divisionPercent,
        Optional<DialCorrection> dial,
        double scatterPercent,
        double factorPercent,
        Budget factor,
        double dialCoefficient,
        boolean isMeasureShared,
        OptionalDouble factorStepPercent) {
    public FieldInputs {
        Require.finite("readingPercent", readingPercent);
        Require.positive("divisionPercent", divisionPercent);
        Require.positive("scatterPercent", scatterPercent);
        Require.finite("factorPercent", factorPercent);
        Require.within("dialCoefficient", dialCoefficient, -1, 1);
        factorStepPercent.ifPresent(step -> Require.positive("factorStepPercent", step));
    }
}
