package porebench.print.page;

import java.io.IOException;

/**
 * A band across a page: one large word, and beside it why.
 *
 * @param word what must not be missed
 * @param why what it means
 */
public record Band(Pen pen, String word, String why) {
    public static final double HEIGHT = 24;

    private static final double GREY = 0.8;

    /** Returns the band of a page on which nothing was measured. */
    public static Band ofTraining(Pen pen, Words words) {
        return new Band(pen, words.say("simulated.word"), words.say("simulated.why"));
    }

    /** Draws the band and returns where it ends. */
    public double draw(double left, double top, double width) throws IOException {
        pen.shade(left, top, width, HEIGHT, GREY);
        pen.frame(left + 0.75, top + 0.75, width - 1.5, HEIGHT - 1.5, 1.5);
        double large = width * 0.48;
        double small = width - large - 14;
        FittedText first = new TextFit(Weight.BOLD, 19, 10, large, 1).fit(pen.faces(), word);
        FittedText second = new TextFit(Weight.REGULAR, 8.5, 5.5, small, 2).fit(pen.faces(), why);
        pen.text(first, left + 6, top + (HEIGHT - first.height()) / 2, large, Align.LEFT);
        pen.text(second, left + 8 + large, top + (HEIGHT - second.height()) / 2, small, Align.RIGHT);
        return top + HEIGHT;
    }
}
