package porebench.evidence;

/** How it stands with a piece of equipment on a day. */
public enum EquipmentState {
    /** It has a calibration that holds. */
    CALIBRATED,
    /** Its calibration holds, and runs out soon. */
    DUE,
    /** Its calibration has run out. */
    OVERDUE,
    /** It has no calibration. */
    NOT_CALIBRATED,
    /** It is not in use. */
    OUT_OF_USE
}
