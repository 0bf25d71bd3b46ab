package porebench.chart.look;

import java.time.LocalDateTime;
import java.util.OptionalDouble;
import porebench.quantity.Symbolic;

/**
 * One trial in a plot.
 *
 * @param id its name
 * @param testedAt when it was made, by the laboratory's clock
 * @param operator who made it
 * @param meter the meter it was made on
 * @param factorPercent its factor in % air, not rounded; empty when it has none, and then it is a mark at the foot
 * @param state whether it counts
 * @param reason why it does not count, in words; empty for one that counts
 * @param isSimulated whether it was made by the simulated bench, for training
 */
public record TrialPoint(
        String id,
        LocalDateTime testedAt,
        String operator,
        String meter,
        OptionalDouble factorPercent,
        State state,
        String reason,
        boolean isSimulated) {
    /** Whether a trial enters the numbers. */
    public enum State implements Symbolic {
        COUNTED,
        STRUCK,
        VOID
    }
}
