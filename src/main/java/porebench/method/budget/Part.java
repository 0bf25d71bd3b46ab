package porebench.method.budget;

/** What an uncertainty comes from. */
public enum Part {
    /** The scatter of the trials. */
    REPEATABILITY("repeatability", "% air"),
    /** How the mean of a determination differs between days, operators and meters. */
    OCCASIONS("occasions", "% air"),
    /** How readings of one load scatter among operators and meters. */
    FIELD_SCATTER("field-scatter", "% air"),
    /** The division of the scale that a reading lies within. */
    READING("reading", "% air"),
    /** Type A: the division that the reading after release lies within. */
    RELEASED("released", "% air"),
    /** The correction of the dial as its calibration found it. */
    DIAL("dial", "% air"),
    /** How far the measure of the known air may be wrong by which the dial was checked. */
    DIAL_MEASURE("dial-measure", "% air"),
    /** The volume of the bowl. */
    BOWL("bowl", "L"),
    /** The last digit of the water withdrawn. */
    WATER("water", "mL"),
    /** How far the measuring cylinder or the balance may be wrong. */
    WATER_MEASURE("water-measure", "mL"),
    /** The last digit of the water withdrawn, read off a vessel marked in shares of the bowl. */
    SHARE("share", "% bowl"),
    /** How far the marks of such a vessel may be wrong. */
    SHARE_MEASURE("share-measure", "% bowl"),
    /** The masses of the sample, to which the factor is proportional. */
    SAMPLE("sample", "kg"),
    /** The factor that is subtracted. */
    FACTOR("factor", "% air"),
    /** The rounding of the factor as it is handed out. */
    ROUNDING("rounding", "% air");

    private final String symbol;
    private final String unit;

    Part(String symbol, String unit) {
        this.symbol = symbol;
        this.unit = unit;
    }

    /** Returns the word by which data knows the part. */
    public String symbol() {
        return symbol;
    }

    /** Returns the unit of its value and standard uncertainty. */
    public String unit() {
        return unit;
    }
}
