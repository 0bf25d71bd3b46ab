package porebench.print.page;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The two weights of the typeface, read once and used for every document.
 *
 * <p>Roboto, Apache licence 2.0, from the jar of the window's fonts, so that pages look the same on every machine. Not safe
 * for use by two threads at a time: documents share the parsed fonts.
 */
public final class Typefaces {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";

    private final TrueTypeFont regular;
    private final TrueTypeFont bold;

    private Typefaces(TrueTypeFont regular, TrueTypeFont bold) {
        this.regular = regular;
        this.bold = bold;
    }

    public static Typefaces read() throws IOException {
        return new Typefaces(read("Roboto-Regular.ttf"), read("Roboto-Bold.ttf"));
    }

    private static TrueTypeFont read(String name) throws IOException {
        try (InputStream stream = Typefaces.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new FileNotFoundException(FOLDER + name);
            }
            TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(stream));
            // Ligatures would make drawn text narrower than it was measured, and harder to find by search.
            font.setEnableGsub(false);
            return font;
        }
    }

    /** Returns the typeface inside a document, to be embedded there with the glyphs that are used. */
    public Faces in(PDDocument document) throws IOException {
        return Faces.embedded(document, regular, bold);
    }
}
