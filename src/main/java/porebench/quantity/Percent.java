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

    /** Returns a share given as a plain ratio, 0.045 being 4.5 %. */
    public static Percent ofRatio(double ratio) {
        return new Percent(100 * ratio);
    }

    /** Returns the share as a plain ratio. */
    public double ratio() {
        return percent / 100;
    }

    /** Returns this percentage less the other, in percent of the same whole. */
    public Percent minus(Percent other) {
        return new Percent(percent - other.percent);
    }

    @Override
    public int compareTo(Percent other) {
        return Double.compare(percent, other.percent);
    }
}
