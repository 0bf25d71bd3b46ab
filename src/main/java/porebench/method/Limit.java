package porebench.method;

import java.math.BigDecimal;
import porebench.quantity.Slack;

/**
 * What a quantity can be at all, with closed bounds in the unit named beside it: a number beyond them is a slip of the pen, a
 * wrong unit or a wrong column, and is refused wherever it comes in. What is possible but odd is a doubt, told elsewhere.
 *
 * <p>Unless another source stands beside it: common practice, no source. They are wide on purpose.
 */
public enum Limit {
    /** Absorption, in % of the oven-dry mass: light aggregate for structural concrete takes up less. */
    ABSORPTION("0", "40"),
    /** Total moisture on the bench, in % of the oven-dry mass. */
    MOISTURE("0", "60"),
    /** Relative density of a constituent: from light aggregate to steel. */
    RELATIVE_DENSITY("0.5", "8"),
    /** Air expected of the concrete, in %: more is foam. */
    TARGET_AIR("0", "30"),
    /** Density of concrete, in kg/m3: from light to heavy-weight. */
    CONCRETE_DENSITY("1000", "4500"),
    /** Density that concrete usually has, in kg/m3; another is a doubt. */
    USUAL_CONCRETE_DENSITY("1600", "4000"),
    /** Volume of a batch, in m3: from a thimble to a shipload. */
    BATCH_VOLUME("0.000001", "100000"),
    /** Volume of a measuring bowl, in litres. */
    BOWL("0.5", "50"),
    /** Volume of any vessel found by a weighing with water, in litres: from a calibration vessel to a large bowl. */
    VESSEL("0.01", "50"),
    /** One division of a scale, in % air. */
    DIVISION("0.001", "10"),
    /** Top of a scale, in % air. */
    SCALE_TOP("0.001", "100"),
    /** Time from mixing water to the air test that a mix asks for, in minutes. */
    MIX_SOAK("0", "600"),
    /** Soak of a trial, in minutes: up to a week. */
    TRIAL_SOAK("0", "10080"),
    /** Tolerance on the target air of a load, in % air. */
    AIR_TOLERANCE("0.1", "10"),
    /** How far mixes of like proportions may be apart, in percentage points and %: our own choice. */
    LIKENESS("0.1", "10"),
    /** Division of a balance, and how far it may be wrong, in g. */
    BALANCE("0.0001", "1000"),
    /** Division of a measuring cylinder, and how far it may be wrong, in mL. */
    CYLINDER("0.001", "500"),
    /** Division of a thermometer, and how far it may be wrong, in C. */
    THERMOMETER("0.001", "10"),
    /** Division of a vessel marked in shares of the bowl, and how far its marks may be wrong, in % of the bowl. */
    VESSEL_MARKS("0.001", "10"),
    /** Year of any day that is written down: the method is younger than the first. */
    YEAR("1930", "2199"),
    /** Elevation of a place above the sea, in m: from the lowest shore to the highest road. */
    ELEVATION("-500", "5000"),
    /** Temperature of water on a bench, in C: liquid, or a thermometer that is a little wrong. */
    WATER("-20", "100");

    private final BigDecimal lowInclusive;
    private final BigDecimal highInclusive;

    Limit(String lowInclusive, String highInclusive) {
        this.lowInclusive = new BigDecimal(lowInclusive);
        this.highInclusive = new BigDecimal(highInclusive);
    }

    public BigDecimal lowInclusive() {
        return lowInclusive;
    }

    public BigDecimal highInclusive() {
        return highInclusive;
    }

    /** Returns whether a number is within the bounds. */
    public boolean holds(BigDecimal number) {
        return number.compareTo(lowInclusive) >= 0 && number.compareTo(highInclusive) <= 0;
    }

    /** Returns whether a number is within the bounds, up to what binary fractions can add; NaN is not. */
    public boolean holds(double number) {
        double low = lowInclusive.doubleValue();
        double high = highInclusive.doubleValue();
        return number >= Slack.under(low) && number <= Slack.over(high);
    }
}
