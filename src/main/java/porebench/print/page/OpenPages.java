package porebench.print.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The pages of a document while it is drawn; all stay open so that a foot can say how many there are. */
public final class OpenPages implements AutoCloseable {
    private final PDDocument document;
    private final PDRectangle size;
    private final Faces faces;
    private final List<Pen> pens = new ArrayList<>();
    private final Map<PDPage, Ink> inks = new LinkedHashMap<>();

    public OpenPages(PDDocument document, PDRectangle size, Faces faces) {
        this.document = document;
        this.size = size;
        this.faces = faces;
    }

    public PDRectangle size() {
        return size;
    }

    /** Adds a page and returns the pen that draws on it. */
    public Pen next() {
        PDPage page = new PDPage(size);
        document.addPage(page);
        Ink ink = Ink.ofPage(faces);
        inks.put(page, ink);
        Pen pen = new Pen(ink, faces, size.getHeight());
        pens.add(pen);
        return pen;
    }

    /** Returns the pens of all pages, in their order. */
    public List<Pen> all() {
        return List.copyOf(pens);
    }

    @Override
    public void close() throws IOException {
        for (Map.Entry<PDPage, Ink> page : inks.entrySet()) {
            faces.finish(page.getKey(), page.getValue());
        }
    }
}
