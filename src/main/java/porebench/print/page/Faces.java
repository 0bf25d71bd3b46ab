package porebench.print.page;

import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The typeface inside one document: which characters it can show, and how wide a text is. */
public final class Faces {
    /** Stands in for a character the typeface lacks, so that the gap is seen. */
    public static final char MISSING = '\uFFFD';

    private final PDFont regular;
    private final PDFont bold;
    private final CmapLookup glyphs;

    private Faces(PDFont regular, PDFont bold, CmapLookup glyphs) {
        this.regular = regular;
        this.bold = bold;
        this.glyphs = glyphs;
    }

    public static Faces embedded(PDDocument document, TrueTypeFont regular, TrueTypeFont bold) throws IOException {
        return new Faces(
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
        return font(weight).getStringWidth(printable) / 1000.0 * size;
    }
}
