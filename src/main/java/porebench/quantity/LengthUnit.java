package porebench.quantity;

/**
 * Units of length, each with its value in metres.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum LengthUnit implements Unit<Length> {
    METRE("m", 1),
    MILLIMETRE("mm", 1e-3),
    /** The international foot of exactly 0.3048 m. */
    FOOT("ft", 0.3048),
    /** The inch of exactly 25.4 mm. */
    INCH("in", 0.0254);

    private final String symbol;
    private final double metres;

    LengthUnit(String symbol, double metres) {
        this.symbol = symbol;
        this.metres = metres;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public Length of(double number) {
        return new Length(number * metres);
    }

    @Override
    public double in(Length quantity) {
        return quantity.metres() / metres;
    }
}
