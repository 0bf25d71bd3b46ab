package porebench.desk.register;

import java.util.function.BiPredicate;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardAlarms;
import porebench.quantity.Symbolic;

/** Which mixes of the register are wanted. */
enum Wanted implements Symbolic {
    ALL((row, alarms) -> true),
    ATTENTION((row, alarms) -> needsAttention(row) || alarms.has(row.mixId())),
    WITHOUT((row, alarms) -> !row.state().isUsable()),
    DUE((row, alarms) -> row.state() == FactorState.RECHECK_DUE || row.state() == FactorState.LAPSED),
    CARDS((row, alarms) -> alarms.has(row.mixId()));

    private final BiPredicate<RegisterRow, CardAlarms> rule;

    Wanted(BiPredicate<RegisterRow, CardAlarms> rule) {
        this.rule = rule;
    }

    /** Returns whether a mix is among them. */
    boolean holds(RegisterRow row, CardAlarms alarms) {
        return rule.test(row, alarms);
    }

    /** Returns whether somebody should look at a mix: its factor does not simply hold, or something is missing. */
    private static boolean needsAttention(RegisterRow row) {
        return row.state() != FactorState.IN_FORCE || !row.missing().isEmpty();
    }
}
