package porebench.quantity;

/**
 * A share in percent: of a volume for air, of a dry mass for absorption and moisture, as the place of use says.
 *
 * @param percent the value in percent, so that 4.5 is 4.5 %; finite
 */
public record Percent(double percent) implements Comparable<Percent> {
    public static final Percent ZERO = new Percent(0);

    public Percent {
        Require.finite("percent", percent);
    }

    @Override
    public int compareTo(Percent other) {
        return Double.compare(percent, other.percent);
    }
}
