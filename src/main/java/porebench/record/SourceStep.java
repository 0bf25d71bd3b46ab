package porebench.record;

import porebench.quantity.Symbolic;

/** What a new version of a source is: an act of its own, so that another stone and a typing mistake are never mixed up. */
public enum SourceStep implements Symbolic {
    /** Another stone from a day on: a new ledge, bench, lot or deposit. */
    CHANGED,
    /** The same stone; what was written of it was mistaken. */
    CORRECTED,
    /** The last change was declared by mistake: it is still the stone from before. */
    WITHDRAWN;
}
