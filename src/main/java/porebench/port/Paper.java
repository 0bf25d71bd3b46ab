package porebench.port;

import java.util.Arrays;
import java.util.Optional;
import porebench.evidence.paper.CardSize;

/** Paper sizes for cards and sheets; sides in millimetres. */
public enum Paper {
    A6(CardSize.A6),
    /** Index card of 4 x 6 in. */
    CARD_4X6(CardSize.CARD_4X6),
    /** Half of US letter. */
    HALF_LETTER(CardSize.HALF_LETTER),
    /** The size of a bank card, front and back side by side; it lies on its long side. */
    WALLET(CardSize.WALLET),
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

    Paper(CardSize card) {
        this(card.symbol(), card.widthMillimetres(), card.heightMillimetres());
    }

    /** Returns the card of this size; empty where it is paper for sheets. */
    public Optional<CardSize> card() {
        return Arrays.stream(CardSize.values())
                .filter(card -> card.symbol().equals(symbol))
                .findFirst();
    }

    /** Returns the name by which people and the command line know the size. */
    public String symbol() {
        return symbol;
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
