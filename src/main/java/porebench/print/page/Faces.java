package porebench.print.page;

import java.io.IOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

/** The typeface inside one document: which characters it can show, and how wide a text is. */
public final class Faces {
    /** Stands in for a character the typeface lacks, so that the gap is seen. */
    public static final char MISSING = '\uFFFD';

    /** Widths of characters below this are looked up once. */
    private static final int KNOWN = 0x2300;

    private static final int MOST_FITTED = 5000;

    private final float[] regularWidths = new float[KNOWN];
    private final float[] boldWidths = new float[KNOWN];
    private final Map<Place, FittedText> fitted = new HashMap<>();
    private final Map<Object, PDFormXObject> forms = new HashMap<>();
    private final PDDocument document;
    private final PDFont regular;
    private final PDFont bold;
    private final CmapLookup glyphs;

    private Faces(PDDocument document, PDFont regular, PDFont bold, CmapLookup glyphs) {
        this.document = document;
        this.regular = regular;
        this.bold = bold;
        this.glyphs = glyphs;
    }

    public static Faces embedded(PDDocument document, TrueTypeFont regular, TrueTypeFont bold) throws IOException {
        return new Faces(
                document,
                PDType0Font.load(document, regular, true),
                PDType0Font.load(document, bold, true),
                regular.getUnicodeCmapLookup());
    }

    public PDFont font(Weight weight) {
        return weight == Weight.BOLD ? bold : regular;
    }

    /**
     * Returns a text as it can be shown: composed characters, single spaces, no control or formatting characters, and
     * {@link #MISSING} for whatever the typeface lacks.
     */
    public String printable(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(point -> append(shown, point));
        return shown.toString().strip();
    }

    private void append(StringBuilder shown, int point) {
        if (Character.isWhitespace(point) || Character.isSpaceChar(point) || Character.isISOControl(point)) {
            if (shown.length() > 0 && shown.charAt(shown.length() - 1) != ' ') {
                shown.append(' ');
            }
        } else if (Character.getType(point) != Character.FORMAT) {
            if (glyphs.getGlyphId(point) == 0) {
                shown.append(MISSING);
            } else {
                shown.appendCodePoint(point);
            }
        }
    }

    /** Returns the characters of a text that the typeface lacks, each once, in their order. */
    public List<String> lacking(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .filter(point -> !Character.isWhitespace(point)
                        && !Character.isSpaceChar(point)
                        && !Character.isISOControl(point)
                        && Character.getType(point) != Character.FORMAT
                        && !shows(point))
                .distinct()
                .mapToObj(Character::toString)
                .toList();
    }

    /** Returns whether the typeface has a character. */
    public boolean shows(int point) {
        return glyphs.getGlyphId(point) != 0;
    }

    /** Returns the width of a printable text, in points. */
    public double width(String printable, Weight weight, double size) throws IOException {
        float[] known = weight == Weight.BOLD ? boldWidths : regularWidths;
        float width = 0;
        for (int index = 0; index < printable.length(); index++) {
            char letter = printable.charAt(index);
            if (letter >= KNOWN) {
                return font(weight).getStringWidth(printable) / 1000.0 * size;
            }
            if (known[letter] == 0) {
                known[letter] = font(weight).getStringWidth(String.valueOf(letter));
            }
            width += known[letter];
        }
        return width / 1000.0 * size;
    }

    /** Returns a text as it was set in the same place before in this document, or sets it: most words of cards are the same. */
    FittedText fitted(TextFit place, String text, Setting setting) throws IOException {
        Place key = new Place(place, text);
        FittedText known = fitted.get(key);
        if (known == null) {
            if (fitted.size() >= MOST_FITTED) {
                fitted.clear();
            }
            known = setting.set();
            fitted.put(key, known);
        }
        return known;
    }

    /**
     * Returns a part of pages that stands in the document once, however often it is drawn.
     *
     * @param key says everything that the part depends on
     * @param width its width, in points
     * @param height its height, in points
     * @param drawing draws it at the upper left corner of a page of its own
     */
    PDFormXObject form(Object key, double width, double height, Pen.Drawing drawing) throws IOException {
        PDFormXObject known = forms.get(key);
        if (known == null) {
            // The only kind of form that the library writes as it writes a page.
            PDAppearanceStream made = new PDAppearanceStream(document);
            made.setBBox(new PDRectangle((float) width, (float) height));
            made.setResources(new PDResources());
            try (PDPageContentStream stream = new PDPageContentStream(
                    document, made, made.getStream().createOutputStream(COSName.FLATE_DECODE))) {
                drawing.draw(new Pen(stream, this, height));
            }
            forms.put(key, made);
            known = made;
        }
        return known;
    }

    /** Sets a text. */
    interface Setting {
        FittedText set() throws IOException;
    }

    private record Place(TextFit place, String text) {}
}
