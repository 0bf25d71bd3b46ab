package porebench.quantity;

/**
 * Checks of arguments that a programmer must get right; each returns the value it was given.
 *
 * <p>The message is always {@code <name> must <rule>, but is <value>}. What a person can correct is a problem, not an
 * exception from here.
 */
public final class Require {
    private Require() {}

    /** Returns the value when it is neither NaN nor infinite. */
    public static double finite(String name, double value) {
        return that(Double.isFinite(value), name, "be a finite number", value);
    }

    /** Returns the value when it is finite and greater than 0. */
    public static double positive(String name, double value) {
        return that(Double.isFinite(value) && value > 0, name, "be greater than 0", value);
    }

    /** Returns the value when it is finite and at least 0. */
    public static double atLeastZero(String name, double value) {
        return that(Double.isFinite(value) && value >= 0, name, "be at least 0", value);
    }

    /** Returns the value when it is finite and within the closed range. */
    public static double within(String name, double value, double lowInclusive, double highInclusive) {
        return that(
                Double.isFinite(value) && value >= lowInclusive && value <= highInclusive,
                name,
                "be from " + lowInclusive + " to " + highInclusive,
                value);
    }

    /** Returns the value when it is at least the given bound. */
    public static int atLeast(String name, int value, int lowInclusive) {
        if (value < lowInclusive) {
            throw new IllegalArgumentException(name + " must be at least " + lowInclusive + ", but is " + value);
        }
        return value;
    }

    /** Returns the text when it holds something other than white space. */
    public static String notBlank(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " must not be blank, but is \"" + value + "\"");
        }
        return value;
    }

    private static double that(boolean kept, String name, String rule, double value) {
        if (!kept) {
            throw new IllegalArgumentException(name + " must " + rule + ", but is " + value);
        }
        return value;
    }
}
