package porebench.quantity;

/**
 * A unit in which people give or read a quantity.
 *
 * @param <Q> the quantity measured in this unit
 */
public interface Unit<Q> {
    /** Returns the symbol by which files, screens and the command line know the unit, such as {@code kg}. */
    String symbol();

    /** Returns the quantity that is this many of the unit. */
    Q of(double number);

    /** Returns how many of this unit the quantity is. */
    double in(Q quantity);
}
