package porebench.method.budget;

/** Where the figure of an uncertainty was taken from. */
public enum Origin {
    /** The scatter of the readings themselves. */
    SCATTER("scatter"),
    /** The scatter of these trials together with that of the laboratory's other determinations. */
    LABORATORY_SCATTER("laboratory-scatter"),
    /** The laboratory's determinations that were spread over several days, operators or meters. */
    OTHER_TRIALS("other-trials"),
    /** A figure of the profile, in place of readings. */
    PROFILE("profile"),
    /** What the laboratory states in its own profile. */
    LABORATORY("laboratory"),
    /** The division of a scale. */
    DIVISION("division"),
    /** The last digit that was written down. */
    DIGITS("digits"),
    /** A calibration of the meter. */
    CALIBRATION("calibration"),
    /** The calibration of the balance, cylinder or vessel in use. */
    EQUIPMENT("equipment"),
    /** What is usual, as nothing is known of the one used. */
    ASSUMED("assumed"),
    /** Another budget. */
    BUDGET("budget");

    private final String symbol;

    Origin(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which data knows it. */
    public String symbol() {
        return symbol;
    }
}
