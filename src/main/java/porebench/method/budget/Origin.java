package porebench.method.budget;

import porebench.quantity.Symbolic;

/** Where the figure of an uncertainty was taken from. */
public enum Origin implements Symbolic {
    /** The scatter of the readings themselves. */
    SCATTER,
    /** The scatter of these trials together with that of the laboratory's other determinations. */
    LABORATORY_SCATTER,
    /** The laboratory's determinations that were spread over several days, operators or meters. */
    OTHER_TRIALS,
    /** A figure of the profile, in place of readings. */
    PROFILE,
    /** What the laboratory states in its own profile. */
    LABORATORY,
    /** The division of a scale. */
    DIVISION,
    /** The last digit that was written down. */
    DIGITS,
    /** A calibration of the meter. */
    CALIBRATION,
    /** The calibration of the balance, cylinder or vessel in use. */
    EQUIPMENT,
    /** What is usual, as nothing is known of the one used. */
    ASSUMED,
    /** Another budget. */
    BUDGET;
}
