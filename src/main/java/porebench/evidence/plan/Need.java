package porebench.evidence.plan;

import porebench.evidence.FactorState;
import porebench.quantity.Symbolic;

/** Why a mix is to be tested, the most pressing reason first. */
public enum Need implements Symbolic {
    /** Its factor may no longer be used, and cards of it are out. */
    CARDS_OUT,
    /** Its factor may no longer be used: it lapsed, a source or its evidence changed, or it is not verified here. */
    NO_LONGER_HOLDS,
    /** It never had a factor. */
    NEVER_TESTED,
    /** Its factor holds, and has to be checked again soon. */
    DUE,
    /** A person put it on the plan. */
    BY_HAND;

    /**
     * Returns why a mix in a state is to be tested.
     *
     * @param cardsOut how many cards of its last factor left the laboratory
     * @param isByHand whether a person put it on the plan
     * @return {@link #BY_HAND} where nothing else asks for it
     */
    static Need of(FactorState state, int cardsOut, boolean isByHand) {
        return switch (state) {
            case IN_FORCE -> BY_HAND;
            case RECHECK_DUE -> DUE;
            case NO_FACTOR -> NEVER_TESTED;
            case WITHDRAWN -> isByHand ? BY_HAND : NO_LONGER_HOLDS;
            case LAPSED, SOURCE_CHANGED, EVIDENCE_CHANGED, NOT_VERIFIED -> cardsOut > 0 ? CARDS_OUT : NO_LONGER_HOLDS;
        };
    }

    /** Returns whether a mix in a state is on the plan without a person's doing; one that was withdrawn is not. */
    static boolean asksFor(FactorState state) {
        return state != FactorState.IN_FORCE && state != FactorState.WITHDRAWN;
    }
}
