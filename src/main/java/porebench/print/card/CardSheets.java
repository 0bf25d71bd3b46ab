package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.print.page.CardLetters;
import porebench.print.page.Faces;
import porebench.print.page.Imprint;
import porebench.print.page.Pen;
import porebench.print.page.Words;

/** Lays cards out in a document: each on a page of its own, or as many as fit on a sheet, with crosses to cut by. */
public final class CardSheets implements AutoCloseable {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    /** 2 mm: shorter than the margin of any card, so that a cross never touches what is printed. */
    private static final double ARM = 2 * POINTS_PER_MILLIMETRE;

    private static final double HAIRLINE = 0.35;

    private final PDDocument document;
    private final Faces faces;
    private final CardLook look;
    private final Imprint imprint;
    private final CardPlaces places;
    private final List<Words> languages = new ArrayList<>();
    private final double face;
    private final double faceHeight;
    private PDPageContentStream stream;
    private int onPage;

    /**
     * Begins the cards of a document.
     *
     * @throws OutputRefused if not even one card fits the sheet
     */
    public CardSheets(PDDocument document, Faces faces, CardLook look, Imprint imprint) throws IOException {
        this.document = document;
        this.faces = faces;
        this.look = look;
        this.imprint = imprint;
        this.places = CardPlaces.of(look)
                .orElseThrow(() -> OutputRefused.of(Problem.error(
                        "size",
                        "card.no-room-on-sheet",
                        look.size().symbol(),
                        look.sheet().map(CardLook.Sheet::symbol).orElse(""))));
        this.face = look.size().widthMillimetres() * POINTS_PER_MILLIMETRE;
        this.faceHeight = look.size().heightMillimetres() * POINTS_PER_MILLIMETRE;
        for (PaperLanguage language : look.languages()) {
            languages.add(Words.in(language));
        }
        this.stream = page();
    }

    private PDPageContentStream page() throws IOException {
        PDPage page = new PDPage(new PDRectangle(
                (float) (places.width() * POINTS_PER_MILLIMETRE), (float) (places.height() * POINTS_PER_MILLIMETRE)));
        document.addPage(page);
        return new PDPageContentStream(document, page);
    }

    /**
     * Adds a card.
     *
     * @return why there is none: what a person works by does not fit a card of this size, or its typeface lacks a character of it, and the document is then to be thrown away;
     *     empty when it was added
     */
    public List<Problem> add(FactorCard card) throws IOException {
        List<Problem> notShown = new CardLetters(card, faces).problems();
        if (!notShown.isEmpty()) {
            return notShown;
        }
        if (onPage == places.count()) {
            close();
            stream = page();
            onPage = 0;
        }
        double left = places.left(onPage) * POINTS_PER_MILLIMETRE;
        double bottom = (places.height() - places.top(onPage) - look.heightMillimetres()) * POINTS_PER_MILLIMETRE;
        onPage++;
        for (int which = 0; which < languages.size(); which++) {
            boolean below = look.size() == CardSize.WALLET;
            stream.saveGraphicsState();
            stream.transform(Matrix.getTranslateInstance((float) (left + (below ? 0 : which * face)), (float)
                    (bottom + (below ? (languages.size() - 1 - which) * faceHeight : 0))));
            try {
                face(card, languages.get(which));
            } catch (OutputRefused tooMuch) {
                return tooMuch.problems();
            }
            stream.restoreGraphicsState();
        }
        marks(left, bottom);
        return List.of();
    }

    private void face(FactorCard card, Words words) throws IOException {
        if (look.size() == CardSize.WALLET) {
            new WalletPage(card, new Pen(stream, faces, faceHeight), words, imprint, face, faceHeight).draw();
            return;
        }
        // A larger card is an A6 card with larger type, so that it is read from farther.
        double scale =
                Math.max(1, Math.floor(face / (CardSize.CARD_4X6.widthMillimetres() * POINTS_PER_MILLIMETRE) * 4) / 4);
        stream.transform(Matrix.getScaleInstance((float) scale, (float) scale));
        PDRectangle page = new PDRectangle((float) (face / scale), (float) (faceHeight / scale));
        new CardPage(
                        card,
                        new Pen(stream, faces, page.getHeight()),
                        words,
                        imprint,
                        page,
                        look.size().symbol())
                .draw();
    }

    /** Crosses at the corners to cut by; short lines at the edges to fold by. */
    private void marks(double left, double bottom) throws IOException {
        double right = left + look.widthMillimetres() * POINTS_PER_MILLIMETRE;
        double top = bottom + look.heightMillimetres() * POINTS_PER_MILLIMETRE;
        stream.setLineWidth((float) HAIRLINE);
        if (look.sheet().isPresent()) {
            for (double x : new double[] {left, right}) {
                for (double y : new double[] {bottom, top}) {
                    line(x - ARM, y, x + ARM, y);
                    line(x, y - ARM, x, y + ARM);
                }
            }
        }
        for (int fold = 1; fold < look.across(); fold++) {
            line(left + fold * face, bottom, left + fold * face, bottom + ARM);
            line(left + fold * face, top - ARM, left + fold * face, top);
        }
        for (int fold = 1; fold < look.down(); fold++) {
            line(left, bottom + fold * faceHeight, left + ARM, bottom + fold * faceHeight);
            line(right - ARM, bottom + fold * faceHeight, right, bottom + fold * faceHeight);
        }
    }

    private void line(double fromX, double fromY, double toX, double toY) throws IOException {
        stream.moveTo((float) fromX, (float) fromY);
        stream.lineTo((float) toX, (float) toY);
        stream.stroke();
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
