package porebench.method;

import porebench.quantity.Symbolic;

/** The moisture state in which a mass is given. */
public enum MoistureState implements Symbolic {
    /** Saturated surface-dry: pores full, surface dry. */
    SSD,
    OVEN_DRY,
    /** As it lies in the stockpile or bin, with its total moisture. */
    STOCK;
}
