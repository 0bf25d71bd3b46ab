package porebench.evidence.paper;

import porebench.quantity.Symbolic;

/**
 * The size of a factor card when it is cut and folded, as it lies before the reader.
 *
 * <p>A6 by ISO 216; the wallet's is ID-1 of ISO/IEC 7810, 85.60 mm by 53.98 mm, here 54 mm; the others are trade sizes in inches, of
 * 25.4 mm (all recalled).
 */
public enum CardSize implements Symbolic {
    A6("A6", 105, 148),
    /** Index card of 4 x 6 in. */
    CARD_4X6("4x6in", 101.6, 152.4),
    /** Half of US letter, 5 1/2 x 8 1/2 in. */
    HALF_LETTER("half-letter", 139.7, 215.9),
    /** The size of a bank card; front and back lie side by side and are folded. */
    WALLET("wallet", 85.6, 54);

    private final String symbol;
    private final double widthMillimetres;
    private final double heightMillimetres;

    CardSize(String symbol, double widthMillimetres, double heightMillimetres) {
        this.symbol = symbol;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    /**
     * Returns how many times as large everything on it is as on an A6 card, in quarters: a larger card is an A6 card with larger
     * type, so that it is read from farther.
     */
    public double enlargement() {
        return Math.max(1, Math.floor(widthMillimetres / CARD_4X6.widthMillimetres * 4) / 4);
    }

    /** Returns the width in millimetres. */
    public double widthMillimetres() {
        return widthMillimetres;
    }

    /** Returns the height in millimetres. */
    public double heightMillimetres() {
        return heightMillimetres;
    }
}
