package porebench.evidence.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;

/**
 * How cards look: what they say is {@link FactorCard}.
 *
 * <p>In two languages a card is twice as large: each language is a whole card of its own, and the two lie side by side and are folded.
 * On a sheet every corner of a card has a cross to cut by.
 *
 * @param size the size of a card in one language
 * @param languages one language, or two
 * @param sheet the sheet on which cards are laid out; empty for a page of its own for each
 * @param perSheet the most cards on a sheet, at least 1; fewer where no more fit
 * @param chart whether the back has an alignment chart of reading, G and air ({@link CardChart}); backs then follow on a page of
 *     their own
 */
public record CardLook(
        CardSize size, List<PaperLanguage> languages, Optional<Sheet> sheet, int perSheet, boolean chart) {
    /** As many as fit. */
    public static final int ALL = 1000;

    public CardLook {
        languages = List.copyOf(languages);
        Require.atLeast("perSheet", perSheet, 1);
        if (languages.isEmpty()
                || languages.size() > 2
                || languages.stream().distinct().count() < languages.size()) {
            throw new IllegalArgumentException("languages must be one or two different ones, but is " + languages);
        }
    }

    /** Cards without a chart. */
    public CardLook(CardSize size, List<PaperLanguage> languages, Optional<Sheet> sheet, int perSheet) {
        this(size, languages, sheet, perSheet, false);
    }

    /** Returns this look with an alignment chart on the back, or without one. */
    public CardLook withChart(boolean wanted) {
        return new CardLook(size, languages, sheet, perSheet, wanted);
    }

    /** A sheet that a printer takes; sides in millimetres, the short one first. */
    public enum Sheet implements Symbolic {
        A4("A4", 210, 297),
        LETTER("letter", 215.9, 279.4);

        private final String symbol;
        private final double shortMillimetres;
        private final double longMillimetres;

        Sheet(String symbol, double shortMillimetres, double longMillimetres) {
            this.symbol = symbol;
            this.shortMillimetres = shortMillimetres;
            this.longMillimetres = longMillimetres;
        }

        @Override
        public String symbol() {
            return symbol;
        }

        /** Returns the short side in millimetres. */
        public double shortMillimetres() {
            return shortMillimetres;
        }

        /** Returns the long side in millimetres. */
        public double longMillimetres() {
            return longMillimetres;
        }
    }

    /** A card on a page of its own in one language. */
    public static CardLook of(CardSize size, PaperLanguage language) {
        return new CardLook(size, List.of(language), Optional.empty(), 1);
    }

    /** Returns what is recorded as the paper of such a card: its size, two languages by their tags, the chart on its back, the sheet it is cut from. */
    public String form() {
        String both = languages.size() == 1
                ? ""
                : languages.stream().map(PaperLanguage::symbol).collect(Collectors.joining("+", " ", ""));
        return size.symbol()
                + both
                + (chart ? " with chart" : "")
                + sheet.map(one -> " on " + one.symbol()).orElse("");
    }

    /** Returns how many faces of this size lie side by side: front and back of a wallet card, otherwise the languages. */
    public int across() {
        return size == CardSize.WALLET ? 2 : languages.size();
    }

    /** Returns how many faces of this size lie one below the other. */
    public int down() {
        return size == CardSize.WALLET ? languages.size() : 1;
    }

    /** Returns the width of the card before it is folded, in millimetres. */
    public double widthMillimetres() {
        return across() * size.widthMillimetres();
    }

    /** Returns the height of the card before it is folded, in millimetres. */
    public double heightMillimetres() {
        return down() * size.heightMillimetres();
    }
}
