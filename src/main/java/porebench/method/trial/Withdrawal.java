package porebench.method.trial;

import java.math.BigDecimal;

/**
 * Water taken out of the full bowl of a Type B meter, as it was measured.
 *
 * @param number the digits as typed
 * @param unit how it was measured
 */
public record Withdrawal(BigDecimal number, Unit unit) {
    /** How withdrawn water is measured. */
    public enum Unit {
        MILLILITRE("mL"),
        /** By weighing; its volume follows from the water's temperature. */
        GRAM("g"),
        /** As a share of the bowl, read off a vessel so marked. */
        PERCENT("pct");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        /** Returns the word by which files know the unit. */
        public String symbol() {
            return symbol;
        }
    }
}
