package porebench.quantity;

/**
 * Units of mass, each with its value in kilograms.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum MassUnit implements Unit<Mass> {
    KILOGRAM("kg", 1),
    GRAM("g", 1e-3),
    /** The avoirdupois pound, exactly 0.453 592 37 kg. */
    POUND("lb", 0.45359237),
    /** The avoirdupois ounce, one sixteenth of a pound. */
    OUNCE("oz", 0.45359237 / 16);

    private final String symbol;
    private final double kilograms;

    MassUnit(String symbol, double kilograms) {
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
