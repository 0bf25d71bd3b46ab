package porebench.print.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Facts side by side, each a small label over its value; a value still to be written by hand gets a line. */
public final class Facts {
    private static final double LABEL = 7;
    private static final double GAP = 6;
    /** A value too long for one line goes on two of this size. */
    private static final double SMALL = 7;

    private final Pen pen;
    private final List<Fitted> places = new ArrayList<>();
    private double valueHeight;

    /**
     * One fact.
     *
     * @param label what it is
     * @param value what it says, blank when it is to be written by hand
     * @param share how wide it is beside the others
     */
    public record Fact(String label, String value, double share) {}

    private record Fitted(FittedText label, FittedText value, double width) {}

    /**
     * Measures facts.
     *
     * @param pen what they will be drawn with
     * @param size the size of the values, in points
     * @param width the width of all of them together, in points
     */
    public Facts(Pen pen, double size, double width, List<Fact> facts) throws IOException {
        this.pen = pen;
        double shares = facts.stream().mapToDouble(Fact::share).sum();
        double unit = (width - GAP * (facts.size() - 1)) / shares;
        valueHeight = size * FittedText.LEADING;
        for (Fact fact : facts) {
            double place = fact.share() * unit;
            FittedText value = value(fact.value(), size, place);
            places.add(new Fitted(
                    TextFit.line(Weight.REGULAR, LABEL, place).fit(pen.faces(), fact.label()), value, place));
            valueHeight = Math.max(valueHeight, value.height());
        }
    }

    private FittedText value(String value, double size, double width) throws IOException {
        return TextFit.first(
                pen.faces(),
                value,
                new TextFit(Weight.BOLD, size, size * 0.75, width, 1),
                new TextFit(Weight.BOLD, Math.min(size, SMALL), 5.5, width, 2),
                new TextFit(Weight.BOLD, 5.5, 5, width, 3));
    }

    public double height() {
        return LABEL * FittedText.LEADING + valueHeight;
    }

    public void draw(double left, double top) throws IOException {
        double x = left;
        double valueTop = top + LABEL * FittedText.LEADING;
        for (Fitted place : places) {
            pen.text(place.label(), x, top, place.width(), Align.LEFT);
            if (place.value().lines().get(0).isEmpty()) {
                pen.line(x, valueTop + valueHeight, x + place.width(), valueTop + valueHeight, 0.5);
            } else {
                pen.text(place.value(), x, valueTop, place.width(), Align.LEFT);
            }
            x += place.width() + GAP;
        }
    }
}
