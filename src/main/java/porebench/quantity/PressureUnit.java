package porebench.quantity;

/**
 * Units of pressure, each with its value in pascals.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum PressureUnit implements Unit<Pressure> {
    PASCAL("Pa", 1),
    KILOPASCAL("kPa", 1000),
    MILLIBAR("mbar", 100),
    /** The pound-force per square inch: 0.453 592 37 kg under standard gravity on (25.4 mm) squared. */
    POUND_PER_SQUARE_INCH("psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254)),
    /** The conventional inch of mercury. */
    INCH_OF_MERCURY("inHg", 3386.389);

    private final String symbol;
    private final double pascals;

    PressureUnit(String symbol, double pascals) {
        this.symbol = symbol;
        this.pascals = pascals;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public Pressure of(double number) {
        return new Pressure(number * pascals);
    }

    @Override
    public double in(Pressure quantity) {
        return quantity.pascals() / pascals;
    }
}
