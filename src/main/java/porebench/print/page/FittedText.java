package porebench.print.page;

import java.util.List;

/**
 * A text broken into lines that fit their place.
 *
 * @param lines the printable lines
 * @param weight how heavy they are set
 * @param size the size of the type, in points
 * @param cut whether some of the text had to be left off, which the last line then shows by an ellipsis
 */
public record FittedText(List<String> lines, Weight weight, double size, boolean cut) {
    /** Height of a line over the size of the type: ascenders, descenders and a little air. */
    public static final double LEADING = 1.2;
    /** Depth of the baseline below the top of its line, over the size of the type. */
    public static final double BASELINE = 0.95;

    public FittedText {
        lines = List.copyOf(lines);
    }

    /** Returns the height of all lines, in points. */
    public double height() {
        return lines.size() * lineHeight();
    }

    /** Returns the height of one line, in points. */
    public double lineHeight() {
        return LEADING * size;
    }
}
