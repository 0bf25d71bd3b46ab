package porebench.method;

import porebench.quantity.Symbolic;

/** What a constituent does in the concrete. */
public enum Role implements Symbolic {
    CEMENT,
    /** Supplementary cementitious material. */
    SCM,
    WATER,
    ADMIXTURE,
    FINE,
    COARSE;

    /** Returns whether the constituent is fine or coarse aggregate, and so part of the correction sample. */
    public boolean isAggregate() {
        return this == FINE || this == COARSE;
    }
}
