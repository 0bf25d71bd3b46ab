package porebench.method.simulate;

import porebench.quantity.Symbolic;

/** What can go wrong at the simulated bench without being written down. */
public enum Fault implements Symbolic {
    /** The meter loses pressure while it is read: Type B reads high, Type A low, by another amount each time. */
    LEAK,
    /** The chamber is pumped, or the column pressed, 4 % too high: Type B reads low, Type A high. */
    LINE,
    /** Foam is left under the cover: its air is read too, so the factor comes out high. */
    FOAM,
    /** The aggregate soaks a few minutes only: more of its pores still hold air, so the factor comes out high. */
    SOAK;
}
