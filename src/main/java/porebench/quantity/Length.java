package porebench.quantity;

/**
 * A length, or a height above the sea.
 *
 * @param metres the value in metres; finite
 */
public record Length(double metres) {
    public Length {
        Require.finite("metres", metres);
    }
}
