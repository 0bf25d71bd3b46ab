package porebench.print;

import java.io.IOException;

/** Draws the band across a page that says that nothing on it was measured. */
record TrainingBand(Pen pen, Words words) {
    static final double HEIGHT = 24;

    private static final double GREY = 0.8;

    /** Draws the band and returns where it ends. */
    double draw(double left, double top, double width) throws IOException {
        pen.shade(left, top, width, HEIGHT, GREY);
        pen.frame(left + 0.75, top + 0.75, width - 1.5, HEIGHT - 1.5, 1.5);
        double large = width * 0.48;
        double small = width - large - 14;
        FittedText word = new TextFit(Weight.BOLD, 19, 10, large, 1).fit(pen.faces(), words.say("simulated.word"));
        FittedText why = new TextFit(Weight.REGULAR, 8.5, 5.5, small, 2).fit(pen.faces(), words.say("simulated.why"));
        pen.text(word, left + 6, top + (HEIGHT - word.height()) / 2, large, Align.LEFT);
        pen.text(why, left + 8 + large, top + (HEIGHT - why.height()) / 2, small, Align.RIGHT);
        return top + HEIGHT;
    }
}
