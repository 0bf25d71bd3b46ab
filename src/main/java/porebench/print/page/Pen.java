package porebench.print.page;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Draws on one page, in points from its upper left corner, in black and greys only: cards go through any printer. */
public final class Pen {
    /** How far a descender or a thick line may reach out of its place, in points. */
    private static final double BEYOND = 3;

    private final Faces faces;
    private final double pageHeight;
    private Ink ink;

    public Pen(Ink ink, Faces faces, double pageHeight) {
        this.ink = ink;
        this.faces = faces;
        this.pageHeight = pageHeight;
    }

    public Faces faces() {
        return faces;
    }

    /** Draws a text whose first line begins at a height, on one side of a place. */
    public void text(FittedText text, double left, double top, double width, Align align) throws IOException {
        double baseline = top + FittedText.BASELINE * text.size();
        for (String line : text.lines()) {
            double shift = switch (align) {
                case LEFT -> 0;
                case CENTRE -> (width - faces.width(line, text.weight(), text.size())) / 2;
                case RIGHT -> width - faces.width(line, text.weight(), text.size());
            };
            if (!line.isEmpty()) {
                ink.text(line, text.weight(), text.size(), left + shift, pageHeight - baseline, true);
            }
            baseline += text.lineHeight();
        }
    }

    /**
     * Draws a word in outline from the lower left to the upper right of a place, over whatever stands there: black, and open so
     * that what lies under it can still be read.
     */
    public void across(String word, double left, double top, double width, double height) throws IOException {
        String text = faces.printable(word);
        double each = faces.width(text, Weight.BOLD, 1);
        double size = Math.min(Math.hypot(width, height) * 0.82 / each, height * 0.24);
        ink.save();
        ink.turnAbout(left + width / 2, pageHeight - top - height / 2, Math.atan2(height, width));
        ink.thickness(size * 0.035);
        // Capitals are 0.711 of the size of the type.
        ink.text(text, Weight.BOLD, size, -each * size / 2, -0.711 * size / 2, false);
        ink.restore();
    }

    /**
     * Draws a part that may stand on many pages of a document; from the second time on it stands in the document once.
     *
     * @param key says everything that the part depends on but its height on the page: its words and how they are set
     * @param place where it lies on this page; nothing of it is drawn more than {@value #BEYOND} points outside
     * @param drawing draws it with this pen
     */
    public void fixed(Object key, Place place, Block.Drawing drawing) throws IOException {
        Optional<Parts.Part> known =
                ink.isPart() ? Optional.empty() : faces.parts().find(key);
        if (known.isEmpty() && !ink.isPart() && faces.parts().isDue(key)) {
            Ink page = ink;
            Ink own = Ink.ofPart(faces);
            ink = own;
            try {
                drawing.draw(place.top);
            } finally {
                ink = page;
            }
            PDRectangle edges = new PDRectangle(
                    (float) (place.left - BEYOND),
                    (float) (pageHeight - place.top - place.height - BEYOND),
                    (float) (place.width + 2 * BEYOND),
                    (float) (place.height + 2 * BEYOND));
            known = Optional.of(faces.parts().keep(key, place.top, faces.form(own, edges)));
        }
        if (known.isEmpty()) {
            drawing.draw(place.top);
        } else {
            ink.part(known.get().name(), known.get().top() - place.top);
        }
    }

    /**
     * A place on a page, in points.
     *
     * @param left from the left of the page
     * @param top from its top
     */
    public record Place(double left, double top, double width, double height) {}

    public void line(double fromX, double fromTop, double toX, double toTop, double thickness) {
        ink.line(fromX, pageHeight - fromTop, toX, pageHeight - toTop, thickness);
    }

    /** Draws a filled dot: four curves that differ from a circle by less than a thousandth of its radius. */
    public void dot(double x, double top, double radius) {
        ink.dot(x, pageHeight - top, radius);
    }

    public void frame(double left, double top, double width, double height, double thickness) {
        ink.frame(left, pageHeight - top - height, width, height, thickness);
    }

    /** Fills a place with a grey, 0 being black and 1 white. */
    public void shade(double left, double top, double width, double height, double grey) {
        ink.shade(left, pageHeight - top - height, width, height, grey);
    }

    /**
     * Draws squares, black and white, as one small picture without colour.
     *
     * @param light a bit a square, 1 where it is white, each row begun on a byte
     * @param across how many squares a row and a column have
     */
    void squares(byte[] light, int across, double left, double top, double side) {
        ink.squares(light, across, left, pageHeight - top - side, side);
    }

    /** Draws a tick in a square. */
    public void tick(double left, double top, double side) {
        ink.corners(
                side * 0.17,
                false,
                left + side * 0.08,
                pageHeight - top - side * 0.55,
                left + side * 0.38,
                pageHeight - top - side * 0.85,
                left + side * 0.94,
                pageHeight - top - side * 0.15);
    }

    /** Draws the triangle that stands before a caution, in a square. */
    public void cautionSign(double left, double top, double side) {
        double bottom = pageHeight - top - side * 0.95;
        ink.roundCorners();
        ink.corners(
                side * 0.09,
                true,
                left + side * 0.04,
                bottom,
                left + side * 0.96,
                bottom,
                left + side * 0.5,
                pageHeight - top - side * 0.1);
        line(left + side * 0.5, top + side * 0.38, left + side * 0.5, top + side * 0.66, side * 0.11);
        line(left + side * 0.5, top + side * 0.74, left + side * 0.5, top + side * 0.84, side * 0.11);
    }
}
