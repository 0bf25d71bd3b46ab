package porebench.quantity;

/**
 * The slack with which doubles are compared: what is equal on paper is equal here.
 *
 * <p>Decimal readings are not exact in binary: 0.5 - 0.4 is less than 0.1, 5.4 - 5.3 is more, and a volume in cubic feet does
 * not come back from litres in its last digit. One such step adds about 1e-16 of the numbers it works on, sums over a whole
 * register some thousand times that; no scale of a laboratory is read to 1e-6 of itself. The slack of 1e-9 lies between.
 * How near an iteration comes to its solution, and when a matrix counts as singular, are other matters and stand there.
 */
public final class Slack {
    /** The slack on a scale where 0 is a reading like any other: percent of air, degrees, minutes, standard deviations. */
    public static final double OF_ONE = 1e-9;

    private Slack() {}

    /** Returns a limit widened upwards by its slack, a share of the limit itself, whatever its unit. */
    public static double over(double limit) {
        return limit + OF_ONE * Math.abs(limit);
    }

    /** Returns a limit widened downwards by its slack, a share of the limit itself, whatever its unit. */
    public static double under(double limit) {
        return limit - OF_ONE * Math.abs(limit);
    }

    /** Returns whether two numbers are the same but for what binary adds, such as a volume in two units. */
    public static boolean isSame(double one, double other) {
        return one >= under(other) && one <= over(other);
    }

    /** Returns whether a value is above a limit on a scale where 0 is a reading like any other. */
    public static boolean isAbove(double value, double limit) {
        return value - limit > OF_ONE;
    }

    /** Returns whether a value is below a limit on a scale where 0 is a reading like any other. */
    public static boolean isBelow(double value, double limit) {
        return isAbove(limit, value);
    }
}
