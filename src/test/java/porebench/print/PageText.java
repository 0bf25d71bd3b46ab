package porebench.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where every piece of text stands on the pages of a PDF, found by reading the PDF back. */
public final class PageText extends PDFTextStripper {
    /** Reach of Roboto above and below the baseline, over the size of the type: 1900 and 500 of 2048 units. */
    private static final double ASCENT = 1900 / 2048.0;

    private static final double DESCENT = 500 / 2048.0;

    private final List<Run> runs = new ArrayList<>();
    private final StringBuilder across = new StringBuilder();

    /** Glyphs of one size and weight that follow each other on one line; the size of their type in points. */
    public record Run(int page, String text, double left, double right, double baseline, double size, boolean bold) {
        double top() {
            return baseline - ASCENT * size;
        }

        double bottom() {
            return baseline + DESCENT * size;
        }

        boolean overlaps(Run other) {
            double slack = 0.05;
            return page == other.page
                    && left < other.right - slack
                    && other.left < right - slack
                    && top() < other.bottom() - slack
                    && other.top() < bottom() - slack;
        }
    }

    public static List<Run> runs(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PageText text = new PageText();
            text.getText(document);
            return text.runs;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Returns what stands aslant over the pages; it is in none of the other texts. */
    public static String across(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PageText text = new PageText();
            text.getText(document);
            return text.across.toString();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Returns the text as it stands on the pages, line by line. */
    public static String of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PageText();
            stripper.setSortByPosition(true);
            stripper.setLineSeparator("\n");
            return stripper.getText(document);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    protected void processTextPosition(TextPosition glyph) {
        if (Math.abs(glyph.getTextMatrix().getShearX()) > 0.01) {
            across.append(glyph.getUnicode());
            return;
        }
        double left = glyph.getXDirAdj();
        double right = left + glyph.getWidthDirAdj();
        double size = glyph.getYScale();
        boolean bold = glyph.getFont().getName().contains("Bold");
        Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
        boolean goesOn = last != null
                && last.page == getCurrentPageNo()
                && Math.abs(last.baseline - glyph.getYDirAdj()) < 0.01
                && last.bold == bold
                && Math.abs(last.size - size) < 0.01
                && Math.abs(last.right - left) < 0.01 * size;
        if (goesOn) {
            runs.set(
                    runs.size() - 1,
                    new Run(last.page, last.text + glyph.getUnicode(), last.left, right, last.baseline, size, bold));
        } else {
            runs.add(new Run(getCurrentPageNo(), glyph.getUnicode(), left, right, glyph.getYDirAdj(), size, bold));
        }
        super.processTextPosition(glyph);
    }
}
