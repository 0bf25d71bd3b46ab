package porebench.print.page;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Pages filled from the top: what does not fit any more begins a new page under a short heading. */
public final class Flow {
    /** 14 mm, with room to punch and to hold. */
    private static final double MARGIN = 14 * 72 / 25.4;

    private static final double RUNNING_HEAD = 20;
    private static final double FOOT = 9;

    private final OpenPages leaves;
    private final Words words;
    private final String runningHead;
    private final double width;
    private final double bottom;
    private final boolean training;
    private Pen pen;
    private double top;

    /**
     * Begins the first page.
     *
     * @param runningHead what stands on top of the pages after the first
     * @param training whether every page says that nothing on it was measured
     */
    public Flow(OpenPages leaves, Words words, String runningHead, boolean training) throws IOException {
        this.leaves = leaves;
        this.words = words;
        this.runningHead = runningHead;
        PDRectangle page = leaves.size();
        this.width = page.getWidth() - 2 * MARGIN;
        this.bottom = page.getHeight() - MARGIN - 2 * FOOT;
        this.training = training;
        this.pen = leaves.next();
        this.top = beginPage();
    }

    /** Draws what every page begins with, and returns where the rest may begin. */
    private double beginPage() throws IOException {
        return training ? Band.ofTraining(pen, words).draw(MARGIN, MARGIN, width) + 6 : MARGIN;
    }

    public Pen pen() {
        return pen;
    }

    public Faces faces() {
        return pen.faces();
    }

    public double left() {
        return MARGIN;
    }

    public double width() {
        return width;
    }

    public double top() {
        return top;
    }

    /** Makes sure of a height on one page, and returns whether a new page had to begin. */
    public boolean need(double height) throws IOException {
        if (top + height <= bottom) {
            return false;
        }
        pen = leaves.next();
        double from = beginPage();
        FittedText head = TextFit.line(Weight.REGULAR, 9, width).fit(faces(), runningHead);
        pen.text(head, MARGIN, from, width, Align.LEFT);
        pen.line(MARGIN, from + 12, MARGIN + width, from + 12, 0.75);
        top = from + RUNNING_HEAD;
        return true;
    }

    /** Makes sure that a height is on one page where it fits on any; what is higher begins where it may. */
    public void keepTogether(double height) throws IOException {
        double band = training ? Band.HEIGHT + 6 : 0;
        if (MARGIN + band + RUNNING_HEAD + height <= bottom) {
            need(height);
        }
    }

    /** Goes down the page. */
    public void down(double height) {
        top += height;
    }

    /** Draws a text over the full width, all of its lines on one page. */
    public void text(TextFit place, String text) throws IOException {
        FittedText fitted = place.fit(faces(), text);
        need(fitted.height());
        pen.text(fitted, MARGIN, top, width, Align.LEFT);
        down(fitted.height());
    }

    /** Draws the foot of every page. */
    public void finish(Imprint imprint) throws IOException {
        List<Pen> pages = leaves.all();
        String made = words.say("imprint", words.date(imprint.date()), imprint.program());
        for (int index = 0; index < pages.size(); index++) {
            Pen page = pages.get(index);
            double y = bottom + FOOT;
            String number = words.say("page", Integer.toString(index + 1), Integer.toString(pages.size()));
            FittedText left = TextFit.line(Weight.REGULAR, 7.5, width * 0.7).fit(page.faces(), made);
            FittedText right = TextFit.line(Weight.REGULAR, 7.5, width * 0.28).fit(page.faces(), number);
            page.text(left, MARGIN, y, width * 0.7, Align.LEFT);
            page.text(right, MARGIN + width * 0.72, y, width * 0.28, Align.RIGHT);
        }
    }
}
