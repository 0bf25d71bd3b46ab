package porebench.record;

import porebench.method.Limit;

/** What a piece of equipment measures with; each kind states its figures in one unit. */
public enum EquipmentKind {
    /** Weighs aggregate and water, in g. */
    BALANCE("balance", "g", Limit.BALANCE),
    /** Measures water by volume, in mL. */
    CYLINDER("cylinder", "mL", Limit.CYLINDER),
    /** Reads the temperature of water and air, in C. */
    THERMOMETER("thermometer", "C", Limit.THERMOMETER),
    /** A vessel with marks in shares of the bowl, in % of the bowl. */
    VESSEL("vessel", "%", Limit.VESSEL_MARKS);

    private final String symbol;
    private final String unit;
    private final Limit limit;

    EquipmentKind(String symbol, String unit, Limit limit) {
        this.symbol = symbol;
        this.unit = unit;
        this.limit = limit;
    }

    /** Returns the word by which data knows the kind. */
    public String symbol() {
        return symbol;
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
