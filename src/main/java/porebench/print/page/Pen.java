package porebench.print.page;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDInlineImage;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/** Draws on one page, in points from its upper left corner, in black and greys only: cards go through any printer. */
public final class Pen implements AutoCloseable {
    private final PDPageContentStream stream;
    private final Faces faces;
    private final double pageHeight;

    public Pen(PDPageContentStream stream, Faces faces, double pageHeight) {
        this.stream = stream;
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
            double spare = width - faces.width(line, text.weight(), text.size());
            double shift = switch (align) {
                case LEFT -> 0;
                case CENTRE -> spare / 2;
                case RIGHT -> spare;
            };
            show(line, text.weight(), text.size(), left + shift, baseline);
            baseline += text.lineHeight();
        }
    }

    private void show(String line, Weight weight, double size, double left, double baseline) throws IOException {
        if (line.isEmpty()) {
            return;
        }
        stream.beginText();
        stream.setFont(faces.font(weight), (float) size);
        stream.newLineAtOffset((float) left, (float) (pageHeight - baseline));
        stream.showText(line);
        stream.endText();
    }

    /**
     * Draws a word in outline from the lower left to the upper right of a place, over whatever stands there: black, and open so
     * that what lies under it can still be read.
     */
    public void across(String word, double left, double top, double width, double height) throws IOException {
        String text = faces.printable(word);
        double each = faces.width(text, Weight.BOLD, 1);
        double size = Math.min(Math.hypot(width, height) * 0.82 / each, height * 0.24);
        stream.saveGraphicsState();
        stream.transform(Matrix.getRotateInstance(
                Math.atan2(height, width), (float) (left + width / 2), (float) (pageHeight - top - height / 2)));
        stream.setLineWidth((float) (size * 0.035));
        stream.beginText();
        stream.setFont(faces.font(Weight.BOLD), (float) size);
        stream.setRenderingMode(RenderingMode.STROKE);
        // Capitals are 0.711 of the size of the type.
        stream.newLineAtOffset((float) (-each * size / 2), (float) (-0.711 * size / 2));
        stream.showText(text);
        stream.endText();
        stream.restoreGraphicsState();
    }

    /** Draws a part of a page with a pen of its own. */
    public interface Drawing {
        void draw(Pen pen) throws IOException;
    }

    /**
     * Draws a part that is the same on many pages; it stands in the document once.
     *
     * @param key says everything that the part depends on: its words and how they are set
     * @param drawing draws it from its upper left corner on, within its width and height
     */
    public void fixed(Object key, double left, double top, double width, double height, Drawing drawing)
            throws IOException {
        PDFormXObject form = faces.form(key, width, height, drawing);
        stream.saveGraphicsState();
        stream.transform(Matrix.getTranslateInstance((float) left, (float) (pageHeight - top - height)));
        stream.drawForm(form);
        stream.restoreGraphicsState();
    }

    public void line(double fromX, double fromTop, double toX, double toTop, double thickness) throws IOException {
        stream.setLineWidth((float) thickness);
        stream.moveTo((float) fromX, (float) (pageHeight - fromTop));
        stream.lineTo((float) toX, (float) (pageHeight - toTop));
        stream.stroke();
    }

    /** Draws a filled dot: four curves that differ from a circle by less than a thousandth of its radius. */
    public void dot(double x, double top, double radius) throws IOException {
        double y = pageHeight - top;
        // How far the handles of a quarter of a circle reach, over the radius: 4/3 (sqrt 2 - 1).
        double reach = 4.0 / 3 * (Math.sqrt(2) - 1) * radius;
        stream.moveTo((float) (x + radius), (float) y);
        quarter(x + radius, y + reach, x + reach, y + radius, x, y + radius);
        quarter(x - reach, y + radius, x - radius, y + reach, x - radius, y);
        quarter(x - radius, y - reach, x - reach, y - radius, x, y - radius);
        quarter(x + reach, y - radius, x + radius, y - reach, x + radius, y);
        stream.fill();
    }

    private void quarter(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        stream.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x3, (float) y3);
    }

    public void frame(double left, double top, double width, double height, double thickness) throws IOException {
        stream.setLineWidth((float) thickness);
        stream.addRect((float) left, (float) (pageHeight - top - height), (float) width, (float) height);
        stream.stroke();
    }

    /** Fills a place with a grey, 0 being black and 1 white. */
    public void shade(double left, double top, double width, double height, double grey) throws IOException {
        stream.setNonStrokingColor((float) grey);
        stream.addRect((float) left, (float) (pageHeight - top - height), (float) width, (float) height);
        stream.fill();
        stream.setNonStrokingColor(0f);
    }

    /**
     * Draws squares, black and white, as one small picture without colour.
     *
     * @param light a bit a square, 1 where it is white, each row begun on a byte
     * @param across how many squares a row and a column have
     */
    public void squares(byte[] light, int across, double left, double top, double side) throws IOException {
        COSDictionary kind = new COSDictionary();
        kind.setInt(COSName.W, across);
        kind.setInt(COSName.H, across);
        kind.setInt(COSName.BPC, 1);
        kind.setItem(COSName.CS, COSName.DEVICEGRAY);
        stream.drawImage(
                new PDInlineImage(kind, light, new PDResources()),
                (float) left,
                (float) (pageHeight - top - side),
                (float) side,
                (float) side);
    }

    /** Draws a tick in a square. */
    public void tick(double left, double top, double side) throws IOException {
        stream.setLineWidth((float) (side * 0.17));
        stream.moveTo((float) (left + side * 0.08), (float) (pageHeight - top - side * 0.55));
        stream.lineTo((float) (left + side * 0.38), (float) (pageHeight - top - side * 0.85));
        stream.lineTo((float) (left + side * 0.94), (float) (pageHeight - top - side * 0.15));
        stream.stroke();
    }

    /** Draws the triangle that stands before a caution, in a square. */
    public void cautionSign(double left, double top, double side) throws IOException {
        double bottom = pageHeight - top - side * 0.95;
        stream.setLineWidth((float) (side * 0.09));
        stream.setLineJoinStyle(1);
        stream.moveTo((float) (left + side * 0.04), (float) bottom);
        stream.lineTo((float) (left + side * 0.96), (float) bottom);
        stream.lineTo((float) (left + side * 0.5), (float) (pageHeight - top - side * 0.1));
        stream.closeAndStroke();
        line(left + side * 0.5, top + side * 0.38, left + side * 0.5, top + side * 0.66, side * 0.11);
        line(left + side * 0.5, top + side * 0.74, left + side * 0.5, top + side * 0.84, side * 0.11);
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
