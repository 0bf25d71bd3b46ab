package porebench.evidence;

import porebench.method.Problem;

/** How it stands with a mix's factor. */
public enum FactorState {
    IN_FORCE("in force", "in-force"),
    RECHECK_DUE("recheck due", "recheck-due"),
    LAPSED("lapsed", "lapsed"),
    SOURCE_CHANGED("source changed", "source-changed"),
    EVIDENCE_CHANGED("evidence changed", "evidence-changed"),
    NOT_VERIFIED("not verified here", "not-verified"),
    NO_FACTOR("no factor", "no-factor"),
    WITHDRAWN("withdrawn", "factor-withdrawn");

    private final String symbol;
    private final String word;

    FactorState(String symbol, String word) {
        this.symbol = symbol;
        this.word = word;
    }

    /** Returns the words by which files and the command line know the state. */
    public String symbol() {
        return symbol;
    }

    /** Returns the state as a word inside a problem's message. */
    public Problem.Word word() {
        return new Problem.Word(word);
    }

    /** Returns whether a crew may go on subtracting the factor. */
    public boolean isUsable() {
        return this == IN_FORCE || this == RECHECK_DUE;
    }
}
