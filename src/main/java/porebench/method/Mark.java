package porebench.method;

/** How sure a figure's source is. */
public enum Mark {
    /** Read in a published page. */
    SEEN("seen"),
    /** Recalled from memory: to be confirmed against a current copy before anyone relies on it. */
    RECALLED("recalled"),
    /** Follows from other figures by algebra. */
    DERIVED("derived"),
    /** The laboratory's own figure, or common practice with no source. */
    LABORATORY("laboratory");

    private final String symbol;

    Mark(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which a profile's data knows the mark. */
    public String symbol() {
        return symbol;
    }
}
