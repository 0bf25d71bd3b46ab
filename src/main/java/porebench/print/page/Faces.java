package porebench.print.page;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.Deflater;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

/** The typeface inside one document: which characters it can show, and how wide a text is. */
public final class Faces implements AutoCloseable {
    /** Stands in for a character the typeface lacks, so that the gap is seen. */
    public static final char MISSING = '\uFFFD';

    /** Widths of characters below this are looked up once. */
    private static final int KNOWN = 0x2300;

    private static final int MOST_FITTED = 5000;

    private final float[] regularWidths = new float[KNOWN];
    private final float[] boldWidths = new float[KNOWN];
    private final Map<Place, FittedText> fitted = new HashMap<>();
    /** Which characters of ASCII it shows as they are. */
    private final boolean[] plain = new boolean[127];

    private final char[] regularCodes = new char[KNOWN];
    private final char[] boldCodes = new char[KNOWN];
    private final Set<Weight> embedded = EnumSet.noneOf(Weight.class);
    private final PDResources onPages = new PDResources();
    private final PDResources inParts = new PDResources();
    private final Parts parts = new Parts(onPages);
    /** A seventh of the time less than the usual level, for one or two more bytes in a hundred. */
    private final Deflater packing = new Deflater(4);

    private final PDDocument document;
    private final PDFont regular;
    private final PDFont bold;
    private final CmapLookup glyphs;

    private Faces(PDDocument document, PDFont regular, PDFont bold, CmapLookup glyphs) {
        this.document = document;
        this.regular = regular;
        this.bold = bold;
        this.glyphs = glyphs;
        for (char letter = ' '; letter < plain.length; letter++) {
            plain[letter] = shows(letter);
        }
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

    /** Returns whether a text is of printable ASCII alone, all of which the typeface has. */
    private boolean isPlain(String text) {
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            if (letter >= plain.length || !plain[letter]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns a text as it can be shown: composed characters, single spaces, no control or formatting characters, and
     * {@link #MISSING} for whatever the typeface lacks.
     */
    public String printable(String text) {
        if (isPlain(text) && !text.contains("  ")) {
            return text.strip();
        }
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
        if (isPlain(text)) {
            return List.of();
        }
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

    /** Returns the parts that stand in this document once. */
    Parts parts() {
        return parts;
    }

    /** Puts what was drawn on a page there. */
    public void finish(PDPage page, Ink ink) throws IOException {
        page.setResources(onPages);
        page.setContents(new PDStream(packed(ink)));
    }

    /** Returns what was drawn as a part that pages may refer to. */
    PDFormXObject form(Ink ink, PDRectangle edges) throws IOException {
        PDFormXObject form = new PDFormXObject(new PDStream(packed(ink)));
        form.setBBox(edges);
        form.setResources(inParts);
        return form;
    }

    private COSStream packed(Ink ink) throws IOException {
        COSStream stream = document.getDocument().createCOSStream();
        try (OutputStream raw = stream.createRawOutputStream()) {
            packing.reset();
            packing.setInput(ink.bytes());
            packing.finish();
            byte[] some = new byte[4096];
            while (!packing.finished()) {
                raw.write(some, 0, packing.deflate(some));
            }
        }
        stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        return stream;
    }

    /** Gives back what packing took; what was drawn stays. */
    @Override
    public void close() {
        packing.end();
    }

    /** Returns the name of a weight as text is set in it, with a space behind it. */
    String name(Weight weight) {
        if (embedded.add(weight)) {
            COSName name = COSName.getPDFName(weight == Weight.BOLD ? "B" : "R");
            inParts.put(name, font(weight));
            onPages.getCOSObject().setItem(COSName.FONT, inParts.getCOSObject().getDictionaryObject(COSName.FONT));
            embedUsedLetters(font(weight));
        }
        return weight == Weight.BOLD ? "/B " : "/R ";
    }

    /** Has the library embed a typeface with its used letters when the document is saved; only its own streams can say so. */
    private void embedUsedLetters(PDFont font) {
        PDAppearanceStream thrownAway = new PDAppearanceStream(document);
        thrownAway.setResources(new PDResources());
        try (PDPageContentStream nowhere =
                new PDPageContentStream(document, thrownAway, OutputStream.nullOutputStream())) {
            nowhere.setFont(font, 1);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Returns the number of a character in the typeface, and has it embedded. */
    int code(int point, Weight weight) {
        char[] known = weight == Weight.BOLD ? boldCodes : regularCodes;
        if (point >= KNOWN) {
            return newCode(point, weight);
        }
        if (known[point] == 0) {
            known[point] = (char) newCode(point, weight);
        }
        return known[point];
    }

    private int newCode(int point, Weight weight) {
        try {
            byte[] code = font(weight).encode(Character.toString(point));
            font(weight).addToSubset(point);
            return (code[0] & 0xff) << 8 | code[1] & 0xff;
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Sets a text. */
    interface Setting {
        FittedText set() throws IOException;
    }

    private record Place(TextFit place, String text) {}
}
