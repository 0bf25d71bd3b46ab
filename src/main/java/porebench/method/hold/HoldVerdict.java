package porebench.method.hold;

import porebench.quantity.Symbolic;

/** What the pairs of a mix say of its factor. */
public enum HoldVerdict implements Symbolic {
    /** No lasting shift, and there are as many pairs as a shift of half a reporting step takes on average to be seen. */
    HOLDS_SO_FAR,
    /** The difference has shifted and stayed: the factor, or a mass or density of the mix, is not what it was. */
    RECHECK,
    /** There are fewer pairs than anything is said from. */
    TOO_FEW,
    /** No lasting shift, but pairs scatter too much for so few to show half a reporting step. */
    CANNOT_TELL
}
