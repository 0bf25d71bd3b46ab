package porebench.method.meter;

/** Whether a meter may be trusted on a day. */
public enum MeterState {
    /** Calibrated and within its intervals. */
    OK("calibrated"),
    /** Calibrated, and a new calibration is due within the days of notice. */
    DUE("calibration due"),
    /** An interval has run out, or the meter was repaired or moved to a new project since. */
    OVERDUE("calibration overdue"),
    /** The last calibration did not pass. */
    FAILED("calibration failed"),
    /** Bowl, or dial or column, was never calibrated. */
    NEVER("never calibrated");

    private final String words;

    MeterState(String words) {
        this.words = words;
    }

    /** Returns the state in English words, as a file or the command line gives it. */
    public String words() {
        return words;
    }
}
