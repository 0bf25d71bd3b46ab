package porebench.quantity;

/**
 * Units of volume, each with its value in cubic metres.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B.
 */
public enum VolumeUnit implements Unit<Volume> {
    CUBIC_METRE("m3", 1),
    LITRE("L", 1e-3),
    MILLILITRE("mL", 1e-6),
    /** The cube of the international foot of exactly 0.3048 m. */
    CUBIC_FOOT("ft3", 0.3048 * 0.3048 * 0.3048),
    /** 27 cubic feet. */
    CUBIC_YARD("yd3", 27 * 0.3048 * 0.3048 * 0.3048),
    /** The cube of the inch of exactly 25.4 mm. */
    CUBIC_INCH("in3", 0.0254 * 0.0254 * 0.0254),
    /** The US liquid gallon, exactly 231 cubic inches. */
    US_GALLON("gal", 231 * 0.0254 * 0.0254 * 0.0254);

    private final String symbol;
    private final double cubicMetres;

    VolumeUnit(String symbol, double cubicMetres) {
        this.symbol = symbol;
        this.cubicMetres = cubicMetres;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public Volume of(double number) {
        return new Volume(number * cubicMetres);
    }

    @Override
    public double in(Volume quantity) {
        return quantity.cubicMetres() / cubicMetres;
    }
}
