package porebench.record;

import porebench.method.Limit;
import porebench.quantity.Symbolic;

/** What a piece of equipment measures with; each kind states its figures in one unit. */
public enum EquipmentKind implements Symbolic {
    /** Weighs aggregate and water, in g. */
    BALANCE("g", Limit.BALANCE),
    /** Measures water by volume, in mL. */
    CYLINDER("mL", Limit.CYLINDER),
    /** Reads the temperature of water and air, in C. */
    THERMOMETER("C", Limit.THERMOMETER),
    /** A vessel with marks in shares of the bowl, in % of the bowl. */
    VESSEL("%", Limit.VESSEL_MARKS);

    private final String unit;
    private final Limit limit;

    EquipmentKind(String unit, Limit limit) {
        this.unit = unit;
        this.limit = limit;
    }

    /** Returns the symbol of the unit of its division and of its limit of error. */
    public String unit() {
        return unit;
    }

    /** Returns what a division and a limit of error can be at all, in that unit. */
    public Limit limit() {
        return limit;
    }
}
