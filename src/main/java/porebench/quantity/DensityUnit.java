package porebench.quantity;

/**
 * Units of density, each with its value in kilograms per cubic metre.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum DensityUnit implements Unit<Density> {
    KILOGRAM_PER_CUBIC_METRE("kg/m3", 1),
    GRAM_PER_CUBIC_CENTIMETRE("g/cm3", 1000),
    POUND_PER_CUBIC_FOOT("lb/ft3", 0.45359237 / (0.3048 * 0.3048 * 0.3048)),
    POUND_PER_CUBIC_YARD("lb/yd3", 0.45359237 / (27 * 0.3048 * 0.3048 * 0.3048));

    private final String symbol;
    private final double kilogramsPerCubicMetre;

    DensityUnit(String symbol, double kilogramsPerCubicMetre) {
        this.symbol = symbol;
        this.kilogramsPerCubicMetre = kilogramsPerCubicMetre;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public Density of(double number) {
        return new Density(number * kilogramsPerCubicMetre);
    }

    @Override
    public double in(Density quantity) {
        return quantity.kilogramsPerCubicMetre() / kilogramsPerCubicMetre;
    }
}
