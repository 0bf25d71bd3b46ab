package porebench.port;

/** Paper sizes for cards and sheets; sides in millimetres, the short one first. */
public enum Paper {
    A6("A6", 105, 148),
    /** Index card of 4 x 6 in. */
    CARD_4X6("4x6in", 101.6, 152.4),
    A4("A4", 210, 297),
    /** US letter, 8 1/2 x 11 in. */
    LETTER("letter", 215.9, 279.4);

    private final String symbol;
    private final double widthMillimetres;
    private final double heightMillimetres;

    Paper(String symbol, double widthMillimetres, double heightMillimetres) {
        this.symbol = symbol;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    /** Returns the name by which people and the command line know the size. */
    public String symbol() {
        return symbol;
    }

    /** Returns the short side in millimetres. */
    public double widthMillimetres() {
        return widthMillimetres;
    }

    /** Returns the long side in millimetres. */
    public double heightMillimetres() {
        return heightMillimetres;
    }
}
