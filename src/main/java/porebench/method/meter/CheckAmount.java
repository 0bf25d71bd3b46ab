package porebench.method.meter;

import java.math.BigDecimal;

/**
 * All the water taken out of the full bowl up to one check point, as it was measured.
 *
 * @param number the digits as typed
 * @param unit how it was measured
 */
public record CheckAmount(BigDecimal number, Unit unit) {
    /** How the water is measured. */
    public enum Unit {
        /** Fills of the calibration vessel. */
        VESSELS("vessels"),
        MILLILITRE("mL"),
        /** By weighing; its volume follows from the water's temperature. */
        GRAM("g"),
        /** As a share of the bowl. */
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
