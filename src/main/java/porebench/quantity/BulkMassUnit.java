package porebench.quantity;

/**
 * Units in which a plant counts what it makes, each with its value in kilograms.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum BulkMassUnit implements Unit<Mass> {
    TONNE("t", 1000),
    KILOGRAM("kg", 1),
    /** The short ton of 2000 avoirdupois pounds. */
    SHORT_TON("ton", 2000 * 0.45359237),
    /** The avoirdupois pound, exactly 0.453 592 37 kg. */
    POUND("lb", 0.45359237);

    private final String symbol;
    private final double kilograms;

    BulkMassUnit(String symbol, double kilograms) {
        this.symbol = symbol;
        this.kilograms = kilograms;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public Mass of(double number) {
        return new Mass(number * kilograms);
    }

    @Override
    public double in(Mass quantity) {
        return quantity.kilograms() / kilograms;
    }
}
