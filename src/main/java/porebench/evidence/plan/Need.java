package porebench.evidence.plan;

import java.util.Optional;
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
    /** Its factor holds, but field readings and densities ask for a recheck. */
    RECHECK_G,
    /** A person put it on the plan. */
    BY_HAND,
    /** It stands on a plan that was kept, and nothing asks for its test any more. */
    NO_MORE;

    /**
     * Returns why a mix in a state asks for a test.
     *
     * @param cardsOut how many cards of its last factor left the laboratory
     * @return empty where its factor holds, or was withdrawn: somebody decided that it needs none
     */
    static Optional<Need> of(FactorState state, int cardsOut) {
        return switch (state) {
            case IN_FORCE, WITHDRAWN -> Optional.empty();
            case RECHECK_DUE -> Optional.of(DUE);
            case NO_FACTOR -> Optional.of(NEVER_TESTED);
            case LAPSED, SOURCE_CHANGED, EVIDENCE_CHANGED, NOT_VERIFIED ->
                Optional.of(cardsOut > 0 ? CARDS_OUT : NO_LONGER_HOLDS);
        };
    }
}
