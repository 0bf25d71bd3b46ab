package porebench.method;

/** What a constituent does in the concrete. */
public enum Role {
    CEMENT("cement"),
    /** Supplementary cementitious material. */
    SCM("scm"),
    WATER("water"),
    ADMIXTURE("admixture"),
    FINE("fine"),
    COARSE("coarse");

    private final String symbol;

    Role(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which files know the role. */
    public String symbol() {
        return symbol;
    }

    /** Returns whether the constituent is fine or coarse aggregate, and so part of the correction sample. */
    public boolean isAggregate() {
        return this == FINE || this == COARSE;
    }
}
