package porebench.desk.register;

import java.util.function.BiPredicate;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.hold.LaboratoryHolds;
import porebench.quantity.Symbolic;

/** Which mixes of the register are wanted. */
enum Wanted implements Symbolic {
    ALL((row, known) -> true),
    ATTENTION((row, known) -> needsAttention(row) || known.hasAlarm(row) || known.asksForRecheck(row)),
    WITHOUT((row, known) -> !row.state().isUsable()),
    DUE((row, known) -> row.state() == FactorState.RECHECK_DUE || row.state() == FactorState.LAPSED),
    CARDS((row, known) -> known.hasAlarm(row)),
    RECHECK_G((row, known) -> known.asksForRecheck(row));

    private final BiPredicate<RegisterRow, Known> rule;

    Wanted(BiPredicate<RegisterRow, Known> rule) {
        this.rule = rule;
    }

    /**
     * What is known beside the lines of the register.
     *
     * @param alarms cards that are out on a factor that no longer holds
     * @param holds mixes of which field readings and densities part
     */
    record Known(CardAlarms alarms, LaboratoryHolds holds) {
        boolean hasAlarm(RegisterRow row) {
            return alarms.has(row.mixId());
        }

        boolean asksForRecheck(RegisterRow row) {
            return holds.of(row.mixId()).isPresent();
        }
    }

    /** Returns whether a mix is among them. */
    boolean holds(RegisterRow row, Known known) {
        return rule.test(row, known);
    }

    /** Returns whether somebody should look at a mix: its factor does not simply hold, or something is missing. */
    private static boolean needsAttention(RegisterRow row) {
        return row.state() != FactorState.IN_FORCE || !row.missing().isEmpty();
    }
}
