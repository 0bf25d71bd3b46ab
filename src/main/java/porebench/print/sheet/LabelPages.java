package porebench.print.sheet;

import java.io.IOException;
import java.util.List;
import porebench.evidence.paper.SampleLabels;
import porebench.print.page.Align;
import porebench.print.page.Band;
import porebench.print.page.FittedText;
import porebench.print.page.OpenPages;
import porebench.print.page.Pen;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws labels for bags and trays, three beside one another and seven below one another, each in a frame to cut along. */
public final class LabelPages {
    private static final int BESIDE = 3;
    private static final int BELOW = 7;
    private static final double MARGIN = 14 * 72 / 25.4;
    private static final double INSET = 6;

    private final SampleLabels labels;
    private final OpenPages leaves;
    private final Words words;
    private final SheetMasses masses;
    private final double width;
    private final double height;

    public LabelPages(SampleLabels labels, OpenPages leaves, Words words) {
        this.labels = labels;
        this.leaves = leaves;
        this.words = words;
        this.masses = new SheetMasses(labels.sheet().massUnit());
        this.width = (leaves.size().getWidth() - 2 * MARGIN) / BESIDE;
        this.height = (leaves.size().getHeight() - 2 * MARGIN - Band.HEIGHT - INSET) / BELOW;
    }

    public void draw() throws IOException {
        List<SampleLabels.Label> all = labels.labels();
        for (int from = 0; from < all.size(); from += BESIDE * BELOW) {
            Pen pen = leaves.next();
            double top = MARGIN;
            if (labels.isTraining()) {
                top = Band.ofTraining(pen, words).draw(MARGIN, MARGIN, BESIDE * width) + INSET;
            }
            List<SampleLabels.Label> page = all.subList(from, Math.min(all.size(), from + BESIDE * BELOW));
            for (int index = 0; index < page.size(); index++) {
                draw(pen, page.get(index), MARGIN + index % BESIDE * width, top + index / BESIDE * height);
            }
        }
    }

    private void draw(Pen pen, SampleLabels.Label label, double left, double top) throws IOException {
        pen.frame(left, top, width, height, 0.5);
        double within = width - 2 * INSET;
        String mass = words.number(masses.rounded(label.line().each())) + " "
                + labels.sheet().massUnit().symbol();
        String trial = words.say(
                "labels.trial",
                Integer.toString(label.trial()),
                Integer.toString(labels.sheet().weighOut().trials()));
        double y = top + INSET;
        y = line(
                pen,
                new TextFit(Weight.BOLD, 11, 6, within, 1),
                labels.sheet().mix().id().text(),
                left,
                y);
        y = line(pen, new TextFit(Weight.REGULAR, 8, 5.5, within, 2), source(label), left, y);
        y = line(pen, new TextFit(Weight.BOLD, 20, 10, within, 1), mass, left, y);
        y = line(pen, new TextFit(Weight.REGULAR, 9, 6, within, 1), trial, left, y);
        line(pen, new TextFit(Weight.REGULAR, 8, 5.5, within, 1), words.date(labels.day()), left, y);
    }

    private String source(SampleLabels.Label label) {
        String source = label.line().source().isBlank()
                ? label.line().name()
                : label.line().source() + ", " + label.line().name();
        return words.say("role." + label.line().role().symbol()) + ": " + source;
    }

    private double line(Pen pen, TextFit fit, String text, double left, double top) throws IOException {
        FittedText fitted = fit.fit(pen.faces(), text);
        pen.text(fitted, left + INSET, top, width - 2 * INSET, Align.LEFT);
        return top + fitted.height() + 1;
    }
}
