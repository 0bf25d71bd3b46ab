package porebench.method;

/** The moisture state in which a mass is given. */
public enum MoistureState {
    /** Saturated surface-dry: pores full, surface dry. */
    SSD("ssd"),
    OVEN_DRY("oven-dry"),
    /** As it lies in the stockpile or bin, with its total moisture. */
    STOCK("stock");

    private final String symbol;

    MoistureState(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which files know the state. */
    public String symbol() {
        return symbol;
    }
}
