package porebench.quantity;

/**
 * A pressure, absolute or a difference as its name at the place of use says.
 *
 * @param pascals the value in pascals; finite
 */
public record Pressure(double pascals) implements Comparable<Pressure> {
    public Pressure {
        Require.finite("pascals", pascals);
    }

    /**
     * Returns this many of a unit.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Pressure of(double number, PressureUnit unit) {
        return unit.of(number);
    }

    /** Returns the value in the given unit. */
    public double in(PressureUnit unit) {
        return unit.in(this);
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
