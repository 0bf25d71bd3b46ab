package porebench.method;

import java.math.RoundingMode;

/** What happens to a value exactly half way between two steps. */
public enum Ties {
    /** To the even step, as ASTM E29 rounds. */
    TO_EVEN("even", RoundingMode.HALF_EVEN),
    /** Away from zero, as taught at school. */
    AWAY_FROM_ZERO("away", RoundingMode.HALF_UP);

    private final String symbol;
    private final RoundingMode mode;

    Ties(String symbol, RoundingMode mode) {
        this.symbol = symbol;
        this.mode = mode;
    }

    /** Returns the word by which a profile's data knows the rule. */
    public String symbol() {
        return symbol;
    }

    RoundingMode mode() {
        return mode;
    }
}
