package porebench.desk.overtime;

import porebench.evidence.FactorHistory;

/** What may begin a new phase. */
enum Split {
    /** Another stone from a source, or other aggregates in a mix. */
    SOURCE,
    /** A meter was calibrated or repaired. */
    CALIBRATION,
    /** Another profile. */
    METHOD;

    static Split of(FactorHistory.HistoryChange change) {
        return switch (change.of()) {
            case SOURCE, MIX -> SOURCE;
            case CALIBRATION, REPAIR -> CALIBRATION;
            case METHOD -> METHOD;
        };
    }
}
