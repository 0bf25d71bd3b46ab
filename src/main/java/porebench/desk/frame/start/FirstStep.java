package porebench.desk.frame.start;

import porebench.quantity.Symbolic;

/** One thing to enter before the first factor, in the order of the work. */
public enum FirstStep implements Symbolic {
    LABORATORY,
    METER,
    CALIBRATION,
    SOURCES,
    MIX,
    TRIAL
}
