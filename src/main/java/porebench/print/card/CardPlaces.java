package porebench.print.card;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.paper.CardLook;
import porebench.quantity.Slack;

/**
 * Where cards lie on a page, from its upper left corner; all lengths in millimetres.
 *
 * @param width the width of the page
 * @param height its height
 * @param columns how many cards lie side by side
 * @param count how many cards a page has
 * @param cardWidth the width of a card before it is folded
 * @param cardHeight its height
 */
record CardPlaces(double width, double height, int columns, int count, double cardWidth, double cardHeight) {
    /** Returns the places of a look, the sheet turned so that it takes the most; empty when not even one card fits it. */
    static Optional<CardPlaces> of(CardLook look) {
        double width = look.widthMillimetres();
        double height = look.heightMillimetres();
        if (look.sheet().isEmpty()) {
            return Optional.of(new CardPlaces(width, height, 1, 1, width, height));
        }
        CardLook.Sheet sheet = look.sheet().get();
        return Stream.of(
                        on(sheet.shortMillimetres(), sheet.longMillimetres(), look),
                        on(sheet.longMillimetres(), sheet.shortMillimetres(), look))
                .filter(places -> places.count() > 0)
                // The first of equals: upright.
                .max(Comparator.comparingInt(CardPlaces::count));
    }

    private static CardPlaces on(double width, double height, CardLook look) {
        int columns = (int) Slack.over(width / look.widthMillimetres());
        int rows = (int) Slack.over(height / look.heightMillimetres());
        int count = Math.min(look.perSheet(), columns * rows);
        return new CardPlaces(
                width,
                height,
                Math.max(1, Math.min(columns, count)),
                count,
                look.widthMillimetres(),
                look.heightMillimetres());
    }

    private int rows() {
        return (count + columns - 1) / columns;
    }

    /** Returns where a place begins from the left; all of them lie in the middle of the page. */
    double left(int place) {
        return (width - columns * cardWidth) / 2 + place % columns * cardWidth;
    }

    /** Returns where a place begins from the top. */
    double top(int place) {
        return (height - rows() * cardHeight) / 2 + place / columns * cardHeight;
    }
}
