package porebench.record;

import java.util.Arrays;
import java.util.Optional;

/** Where a revision of a factor was decided, and whether this laboratory stands for it. */
public enum FactorOrigin {
    /** Issued in this lab book, or come in together with the trials and versions that bear it. */
    HERE("here"),
    /** Came in from a file without evidence that bears it: not verified here until somebody confirms it. */
    IMPORTED("imported"),
    /** Came in from a file, and a person confirmed it on the trials of this lab book. */
    CONFIRMED("confirmed");

    private final String symbol;

    FactorOrigin(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which the lab book knows it. */
    public String symbol() {
        return symbol;
    }

    /** Returns the origin with a symbol. */
    public static Optional<FactorOrigin> ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(origin -> origin.symbol.equals(symbol))
                .findFirst();
    }
}
