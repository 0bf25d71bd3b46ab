package porebench.print.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The pages of a document while it is drawn; all stay open so that a foot can say how many there are. */
public final class OpenPages implements AutoCloseable {
    private final PDDocument document;
    private final PDRectangle size;
    private final Faces faces;
    private final List<Pen> pens = new ArrayList<>();

    public OpenPages(PDDocument document, PDRectangle size, Faces faces) {
        this.document = document;
        this.size = size;
        this.faces = faces;
    }

    public PDRectangle size() {
        return size;
    }

    /** Adds a page and returns the pen that draws on it. */
    public Pen next() throws IOException {
        PDPage page = new PDPage(size);
        document.addPage(page);
        Pen pen = new Pen(new PDPageContentStream(document, page), faces, size.getHeight());
        pens.add(pen);
        return pen;
    }

    /** Returns the pens of all pages, in their order. */
    public List<Pen> all() {
        return List.copyOf(pens);
    }

    @Override
    public void close() throws IOException {
        for (Pen pen : pens) {
            pen.close();
        }
    }
}
