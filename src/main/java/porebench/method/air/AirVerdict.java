package porebench.method.air;

import porebench.quantity.Symbolic;

/** What is said of the air of a load. */
public enum AirVerdict implements Symbolic {
    /** It is accepted. */
    PASSES,
    /** It lies within the tolerance, but too near its limit to be accepted with the guard band that was asked for. */
    GUARDED,
    /** It lies outside the tolerance. */
    FAILS
}
