package porebench.print;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The straight lines and round dots that a page of a PDF draws, in points from its upper left corner, found by reading it back. */
public final class DrawnLines extends PDFGraphicsStreamEngine {
    private final double height;
    private final List<Line> lines = new ArrayList<>();
    private final List<Point2D> dots = new ArrayList<>();
    private final List<Line> open = new ArrayList<>();
    private final List<Point2D> curved = new ArrayList<>();
    private Point2D at = new Point2D.Double();

    /** A line that is drawn, with its width. */
    public record Line(double fromX, double fromY, double toX, double toY, double width) {
        boolean isUpright() {
            return Math.abs(fromX - toX) < 1e-3;
        }

        boolean isLevel() {
            return Math.abs(fromY - toY) < 1e-3;
        }

        double length() {
            return Math.hypot(fromX - toX, fromY - toY);
        }
    }

    private DrawnLines(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    /** Reads a page, the first being 0. */
    public static DrawnLines of(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            DrawnLines drawn = new DrawnLines(document.getPage(page));
            drawn.processPage(document.getPage(page));
            return drawn;
        }
    }

    public List<Line> lines() {
        return lines;
    }

    /** Returns the middles of what is filled and bounded by curves only. */
    public List<Point2D> dots() {
        return dots;
    }

    @Override
    public void moveTo(float x, float y) {
        at = new Point2D.Double(x, height - y);
    }

    @Override
    public void lineTo(float x, float y) {
        Point2D to = new Point2D.Double(x, height - y);
        double width = transformWidth(getGraphicsState().getLineWidth());
        open.add(new Line(at.getX(), at.getY(), to.getX(), to.getY(), width));
        at = to;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        at = new Point2D.Double(x3, height - y3);
        curved.add(at);
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(at.getX(), height - at.getY());
    }

    @Override
    public void strokePath() {
        lines.addAll(open);
        endPath();
    }

    @Override
    public void fillPath(int windingRule) {
        if (curved.size() == 4 && open.isEmpty()) {
            dots.add(new Point2D.Double(
                    curved.stream().mapToDouble(Point2D::getX).average().orElseThrow(),
                    curved.stream().mapToDouble(Point2D::getY).average().orElseThrow()));
        }
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        endPath();
    }

    @Override
    public void endPath() {
        open.clear();
        curved.clear();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        // Frames and shades are not what is looked for.
    }

    @Override
    public void closePath() {
        // Nothing here depends on it.
    }

    @Override
    public void clip(int windingRule) {
        // Nothing here is clipped.
    }

    @Override
    public void drawImage(PDImage image) {
        // Pictures are not what is looked for.
    }

    @Override
    public void shadingFill(COSName name) {
        // No page has any.
    }
}
