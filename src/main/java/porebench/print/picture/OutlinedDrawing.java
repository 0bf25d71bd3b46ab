package porebench.print.picture;

import java.awt.Graphics;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;

/** Draws into an SVG with letters as outlines, and keeps the words, each once, in the order in which they were drawn. */
final class OutlinedDrawing extends SVGGraphics2D {
    private final List<String> words;

    OutlinedDrawing(Document document) {
        super(SVGGeneratorContext.createDefault(document), true);
        words = new ArrayList<>();
    }

    private OutlinedDrawing(OutlinedDrawing other) {
        super(other);
        words = other.words;
    }

    /** Returns what was drawn as words. */
    List<String> words() {
        return List.copyOf(words);
    }

    @Override
    public Graphics create() {
        return new OutlinedDrawing(this);
    }

    @Override
    public void drawString(String text, float x, float y) {
        note(text);
        super.drawString(text, x, y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        StringBuilder letters = new StringBuilder();
        for (char each = text.first(); each != CharacterIterator.DONE; each = text.next()) {
            letters.append(each);
        }
        text.first();
        note(letters.toString());
        super.drawString(text, x, y);
    }

    private void note(String text) {
        if (!text.isBlank() && !words.contains(text)) {
            words.add(text);
        }
    }
}
