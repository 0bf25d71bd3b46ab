package porebench.method;

import porebench.quantity.Symbolic;

/** How sure a figure's source is. */
public enum Mark implements Symbolic {
    /** Read in a published page. */
    SEEN,
    /** Recalled from memory: to be confirmed against a current copy before anyone relies on it. */
    RECALLED,
    /** Follows from other figures by algebra. */
    DERIVED,
    /** The laboratory's own figure, or common practice with no source. */
    LABORATORY;
}
