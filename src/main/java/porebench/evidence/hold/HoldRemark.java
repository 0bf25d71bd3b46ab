package porebench.evidence.hold;

import java.time.LocalDateTime;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.hold.HoldShift;
import porebench.record.id.MixId;

/**
 * That the factor of a mix is to be checked again, because field readings and densities part. It changes no state of the factor.
 *
 * @param mixId the mix
 * @param shift by how much the difference changed, and how sure that is
 * @param since when the first pair after the change was read
 * @param pairs how many pairs were charted
 */
public record HoldRemark(MixId mixId, HoldShift shift, LocalDateTime since, int pairs) {
    /** Returns it as a doubt, to be said in words. */
    public Problem asProblem() {
        return Problem.warning(
                "factor",
                "register.recheck-g",
                MixHold.percent(shift.percent(), Digits.AIR),
                MixHold.percent(shift.low(), Digits.AIR),
                MixHold.percent(shift.high(), Digits.AIR),
                since.toLocalDate().toString(),
                pairs);
    }
}
