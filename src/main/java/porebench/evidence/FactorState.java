package porebench.evidence;

/** How it stands with a mix's factor. */
public enum FactorState {
    IN_FORCE("in force"),
    RECHECK_DUE("recheck due"),
    LAPSED("lapsed"),
    SOURCE_CHANGED("source changed"),
    EVIDENCE_CHANGED("evidence changed"),
    NOT_VERIFIED("not verified here"),
    NO_FACTOR("no factor"),
    WITHDRAWN("withdrawn");

    private final String symbol;

    FactorState(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the words by which files and the command line know the state. */
    public String symbol() {
        return symbol;
    }

    /** Returns whether a crew may go on subtracting the factor. */
    public boolean isUsable() {
        return this == IN_FORCE || this == RECHECK_DUE;
    }
}
