package porebench.method.simulate;

/** What can go wrong at the simulated bench without being written down. */
public enum Fault {
    /** The meter loses pressure while it is read: Type B reads high, Type A low, by another amount each time. */
    LEAK("leak"),
    /** The chamber is pumped, or the column pressed, 4 % too high: Type B reads low, Type A high. */
    LINE("line"),
    /** Foam is left under the cover: its air is read too, so the factor comes out high. */
    FOAM("foam"),
    /** The aggregate soaks a few minutes only: more of its pores still hold air, so the factor comes out high. */
    SOAK("soak");

    private final String symbol;

    Fault(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which the command line knows the fault. */
    public String symbol() {
        return symbol;
    }
}
