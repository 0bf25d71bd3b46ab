package porebench.print.card;

/**
 * From where type is read.
 *
 * <p>A capital is legible where it is seen under at least {@value #LEAST_MINUTES} minutes of arc, and read with ease under 20 to 22 (ISO 9241-3,
 * figures seen as quoted by others; written for displays, used here for print).
 */
final class LegibleType {
    /** The least angle under which a capital is legible, in minutes of arc. */
    static final int LEAST_MINUTES = 16;

    /** The least type, in points, for what is read at 60 cm: its capitals are 2.82 mm high, 16.2 minutes of arc. */
    static final double AT_ARMS_LENGTH = 11.25;

    /** The least type, in points, for what is read from the hand: its capitals are 1.50 mm high, 16 minutes of arc at 32 cm. */
    static final double IN_THE_HAND = 6;

    private LegibleType() {}
}
