package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import porebench.evidence.paper.CardChart;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.PlantCard;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.print.page.CardLetters;
import porebench.print.page.Faces;
import porebench.print.page.Imprint;
import porebench.print.page.Ink;
import porebench.print.page.Pen;
import porebench.print.page.Words;

/** Lays cards out in a document: each on a page of its own, or as many as fit on a sheet, with crosses to cut by. */
public final class CardSheets implements AutoCloseable {
    static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private final PDDocument document;
    private final Faces faces;
    private final CardLook look;
    private final Imprint imprint;
    private final CardPlaces places;
    private final CardBacks backs;
    private final CutMarks marks;
    private final List<Words> languages = new ArrayList<>();
    private final double face;
    private final double faceHeight;
    private PDPage page;
    private Ink ink;
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
        this.backs = new CardBacks(look, places);
        this.marks = new CutMarks(look);
        this.face = look.size().widthMillimetres() * POINTS_PER_MILLIMETRE;
        this.faceHeight = look.size().heightMillimetres() * POINTS_PER_MILLIMETRE;
        for (PaperLanguage language : look.languages()) {
            languages.add(Words.in(language));
        }
        this.page = page();
        this.ink = Ink.ofPage(faces);
    }

    private PDPage page() {
        PDPage added = new PDPage(new PDRectangle(
                (float) (places.width() * POINTS_PER_MILLIMETRE), (float) (places.height() * POINTS_PER_MILLIMETRE)));
        document.addPage(added);
        return added;
    }

    /**
     * Adds a card.
     *
     * @return why there is none: what a person works by does not fit a card of this size, or its typeface lacks a character
     *     of it, or a chart on it could not be read finely enough, and the document is then to be thrown away; empty when it was added
     */
    public List<Problem> add(FactorCard card) throws IOException {
        List<Problem> notShown = new CardLetters(card, faces).problems();
        if (!notShown.isEmpty()) {
            return notShown;
        }
        if (!look.chart()) {
            return add((words, left, bottom) -> face(card, words), false);
        }
        Answer<CardChart> drawn = CardChart.of(card, look.size());
        if (drawn.value().isEmpty()) {
            return drawn.problems();
        }
        CardChart chart = drawn.value().get();
        return add(
                (words, left, bottom) -> {
                    backs.add(card, chart, words, left, bottom);
                    face(card, words);
                },
                true);
    }

    /**
     * Adds a page of a plant's card, which has no chart.
     *
     * @param card a page as {@link PlantPages} spreads them
     * @return nothing, as pages are spread so that they fit
     */
    public List<Problem> add(PlantCard card) throws IOException {
        return add((words, left, bottom) -> face(card, words), false);
    }

    /** One face of a card, drawn with its lower left corner at a place of the page. */
    private interface Side {
        void draw(Words words, double left, double bottom) throws IOException;
    }

    private List<Problem> add(Side side, boolean hasBack) throws IOException {
        if (onPage == places.count()) {
            end();
            page = page();
            ink = Ink.ofPage(faces);
            onPage = 0;
        }
        double left = places.left(onPage) * POINTS_PER_MILLIMETRE;
        double bottom = (places.height() - places.top(onPage) - look.heightMillimetres()) * POINTS_PER_MILLIMETRE;
        onPage++;
        for (int which = 0; which < languages.size(); which++) {
            boolean below = look.size() == CardSize.WALLET;
            double faceLeft = left + (below ? 0 : which * face);
            double faceBottom = bottom + (below ? (languages.size() - 1 - which) * faceHeight : 0);
            ink.save();
            ink.translate(faceLeft, faceBottom);
            try {
                side.draw(languages.get(which), faceLeft, faceBottom);
            } catch (OutputRefused tooMuch) {
                return tooMuch.problems();
            }
            ink.restore();
        }
        marks.draw(ink, left, bottom);
        if (hasBack) {
            backs.mark(left, bottom);
        }
        return List.of();
    }

    private void face(FactorCard card, Words words) throws IOException {
        if (look.size() == CardSize.WALLET) {
            new WalletPage(card, new Pen(ink, faces, faceHeight), words, imprint, face, faceHeight).draw();
            return;
        }
        double scale = look.size().enlargement();
        ink.scale(scale);
        PDRectangle page = new PDRectangle((float) (face / scale), (float) (faceHeight / scale));
        new CardPage(
                        card,
                        new Pen(ink, faces, page.getHeight()),
                        words,
                        imprint,
                        page,
                        look.size().symbol())
                .draw();
    }

    private void face(PlantCard card, Words words) throws IOException {
        double scale = look.size().enlargement();
        ink.scale(scale);
        PlantPages.page(card, faces, words, imprint.program(), look.size())
                .draw(new Pen(ink, faces, faceHeight / scale));
    }

    /** Ends the page, and draws the backs of its cards where they have any. */
    private void end() throws IOException {
        faces.finish(page, ink);
        backs.draw(document, faces);
    }

    @Override
    public void close() throws IOException {
        end();
    }
}
