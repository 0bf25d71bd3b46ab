package porebench.desk.form;

/** The units that the person reads just now, known to everything that shows quantities or speaks of them. */
public final class ShownUnits {
    private volatile UnitSystem system = UnitSystem.SI;

    public UnitSystem now() {
        return system;
    }

    public void turnTo(UnitSystem other) {
        system = other;
    }

    /** Returns whether messages are to be read in US units. */
    public boolean isUs() {
        return system == UnitSystem.US;
    }
}
