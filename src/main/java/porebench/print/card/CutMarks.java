package porebench.print.card;

import porebench.evidence.paper.CardLook;
import porebench.print.page.Ink;

/**
 * Crosses at the corners of a card to cut by, and short lines at its edges to fold by.
 *
 * @param look how the card looks
 */
record CutMarks(CardLook look) {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    /** 2 mm: shorter than the margin of any card, so that a cross never touches what is printed. */
    private static final double ARM = 2 * POINTS_PER_MILLIMETRE;

    private static final double HAIRLINE = 0.35;

    /** Draws the marks of a card, before it is folded, from its lower left corner on, in points. */
    void draw(Ink ink, double left, double bottom) {
        double face = look.size().widthMillimetres() * POINTS_PER_MILLIMETRE;
        double faceHeight = look.size().heightMillimetres() * POINTS_PER_MILLIMETRE;
        double right = left + look.across() * face;
        double top = bottom + look.down() * faceHeight;
        if (look.sheet().isPresent()) {
            for (double x : new double[] {left, right}) {
                for (double y : new double[] {bottom, top}) {
                    line(ink, x - ARM, y, x + ARM, y);
                    line(ink, x, y - ARM, x, y + ARM);
                }
            }
        }
        for (int fold = 1; fold < look.across(); fold++) {
            line(ink, left + fold * face, bottom, left + fold * face, bottom + ARM);
            line(ink, left + fold * face, top - ARM, left + fold * face, top);
        }
        for (int fold = 1; fold < look.down(); fold++) {
            line(ink, left, bottom + fold * faceHeight, left + ARM, bottom + fold * faceHeight);
            line(ink, right - ARM, bottom + fold * faceHeight, right, bottom + fold * faceHeight);
        }
    }

    private static void line(Ink ink, double fromX, double fromY, double toX, double toY) {
        ink.line(fromX, fromY, toX, toY, HAIRLINE);
    }
}
