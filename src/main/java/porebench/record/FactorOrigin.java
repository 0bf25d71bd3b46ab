package porebench.record;

import porebench.quantity.Symbolic;

/** Where a revision of a factor was decided, and whether this laboratory stands for it. */
public enum FactorOrigin implements Symbolic {
    /** Issued in this lab book, or come in together with the trials and versions that bear it. */
    HERE,
    /** Came in from a file without evidence that bears it: not verified here until somebody confirms it. */
    IMPORTED,
    /** Came in from a file, and a person confirmed it on the trials of this lab book. */
    CONFIRMED;
}
