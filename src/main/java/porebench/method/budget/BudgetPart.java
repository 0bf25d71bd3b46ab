package porebench.method.budget;

import porebench.quantity.Symbolic;

/** What an uncertainty comes from. */
public enum BudgetPart implements Symbolic {
    /** The scatter of the trials. */
    REPEATABILITY("% air"),
    /** How the mean of a determination differs between days, operators and meters. */
    OCCASIONS("% air"),
    /** How readings of one load scatter among operators and meters. */
    FIELD_SCATTER("% air"),
    /** The division of the scale that a reading lies within. */
    READING("% air"),
    /** Type A: the division that the reading after release lies within. */
    RELEASED("% air"),
    /** The correction of the dial as its calibration found it. */
    DIAL("% air"),
    /** How far the measure of the known air may be wrong by which the dial was checked. */
    DIAL_MEASURE("% air"),
    /** The volume of the bowl. */
    BOWL("L"),
    /** The last digit of the water withdrawn. */
    WATER("mL"),
    /** How far the measuring cylinder or the balance may be wrong. */
    WATER_MEASURE("mL"),
    /** The last digit of the water withdrawn, read off a vessel marked in shares of the bowl. */
    SHARE("% bowl"),
    /** How far the marks of such a vessel may be wrong. */
    SHARE_MEASURE("% bowl"),
    /** The masses of the sample, to which the factor is proportional. */
    SAMPLE("kg"),
    /** The factor that is subtracted. */
    FACTOR("% air"),
    /** The rounding of the factor as it is handed out. */
    ROUNDING("% air");

    private final String unit;

    BudgetPart(String unit) {
        this.unit = unit;
    }

    /** Returns the unit of its value and standard uncertainty. */
    public String unit() {
        return unit;
    }
}
