package porebench.evidence.custody;

import porebench.evidence.FactorState;
import porebench.quantity.Symbolic;

/** How it stands with the factor on a card. */
public enum CardStanding implements Symbolic {
    HOLDS,
    RECHECK_DUE,
    /** Its hour has not come. */
    NOT_YET,
    /** A newer revision has begun. */
    SUPERSEDED,
    WITHDRAWN,
    LAPSED,
    SOURCE_CHANGED,
    EVIDENCE_CHANGED,
    NOT_VERIFIED;

    /** Returns how it stands with a card of the revision in force. */
    static CardStanding of(FactorState state) {
        return switch (state) {
            case IN_FORCE -> HOLDS;
            case RECHECK_DUE -> RECHECK_DUE;
            case LAPSED -> LAPSED;
            case SOURCE_CHANGED -> SOURCE_CHANGED;
            case EVIDENCE_CHANGED -> EVIDENCE_CHANGED;
            case NOT_VERIFIED -> NOT_VERIFIED;
            case NO_FACTOR, WITHDRAWN -> WITHDRAWN;
        };
    }

    /** Returns whether a card like this has to come back. */
    public boolean isRecalled() {
        return this != HOLDS && this != RECHECK_DUE && this != NOT_YET;
    }
}
