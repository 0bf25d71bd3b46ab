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

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
