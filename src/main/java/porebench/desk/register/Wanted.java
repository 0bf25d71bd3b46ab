package porebench.desk.register;

import java.util.function.Predicate;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.quantity.Symbolic;

/** Which mixes of the register are wanted. */
enum Wanted implements Symbolic {
    ALL(row -> true),
    ATTENTION(Wanted::needsAttention),
    WITHOUT(row -> !row.state().isUsable()),
    DUE(row -> row.state() == FactorState.RECHECK_DUE || row.state() == FactorState.LAPSED);

    private final Predicate<RegisterRow> rule;

    Wanted(Predicate<RegisterRow> rule) {
        this.rule = rule;
    }

    /** Returns whether a mix is among them. */
    boolean holds(RegisterRow row) {
        return rule.test(row);
    }

    /** Returns whether somebody should look at a mix: its factor does not simply hold, or something is missing. */
    private static boolean needsAttention(RegisterRow row) {
        return row.state() != FactorState.IN_FORCE || !row.missing().isEmpty();
    }
}
