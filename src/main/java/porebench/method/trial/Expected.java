package porebench.method.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Mass;

/**
 * What a trial should have been, from its mix and its meter; what is not known is empty and then not checked.
 *
 * @param fine mass of fine aggregate of the correction sample
 * @param coarse mass of coarse aggregate of the correction sample
 * @param soakMinutes the mix's soak time, in minutes
 * @param targetAirPercent the air expected of the concrete, in %
 * @param scaleTopPercent the top of the meter's scale, in % air
 */
public record Expected(
        Optional<Mass> fine,
        Optional<Mass> coarse,
        OptionalDouble soakMinutes,
        OptionalDouble targetAirPercent,
        OptionalDouble scaleTopPercent) {
    /** Nothing is known: a trial sheet read without its mix. */
    public static final Expected UNKNOWN = new Expected(
            Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
