package porebench.quantity;

/**
 * A temperature on the Celsius scale, the derived SI unit that every thermometer at the bench shows.
 *
 * @param celsius the value in degrees Celsius; finite
 */
public record Temperature(double celsius) implements Comparable<Temperature> {
    public Temperature {
        Require.finite("celsius", celsius);
    }

    /**
     * Returns this many of a unit.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Temperature of(double number, TemperatureUnit unit) {
        return unit.of(number);
    }

    /** Returns the value in the given unit. */
    public double in(TemperatureUnit unit) {
        return unit.in(this);
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
