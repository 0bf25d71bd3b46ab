package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import porebench.evidence.paper.CardChart;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.print.page.Faces;
import porebench.print.page.Ink;
import porebench.print.page.Pen;
import porebench.print.page.Words;

/**
 * The backs of the cards of one page: charts, on the page that follows it, each where it lies behind its front when the sheet is
 * printed on both sides and turned on its long edge. Places are in points, from the lower left corner of a front on.
 */
final class CardBacks {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private final CardLook look;
    private final double pageWidth;
    private final double pageHeight;
    private final double face;
    private final double faceHeight;
    private final CutMarks marks;
    private final List<Back> backs = new ArrayList<>();
    private final List<Corner> cards = new ArrayList<>();

    private record Back(FactorCard card, CardChart chart, Words words, Corner front) {}

    private record Corner(double left, double bottom) {}

    CardBacks(CardLook look, CardPlaces places) {
        this.look = look;
        this.pageWidth = places.width() * POINTS_PER_MILLIMETRE;
        this.pageHeight = places.height() * POINTS_PER_MILLIMETRE;
        this.face = look.size().widthMillimetres() * POINTS_PER_MILLIMETRE;
        this.faceHeight = look.size().heightMillimetres() * POINTS_PER_MILLIMETRE;
        this.marks = new CutMarks(look);
    }

    /** Notes the back of a face. */
    void add(FactorCard card, CardChart chart, Words words, double left, double bottom) {
        backs.add(new Back(card, chart, words, new Corner(left, bottom)));
    }

    /** Notes that a card, before it is folded, has marks to cut and to fold by. */
    void mark(double left, double bottom) {
        cards.add(new Corner(left, bottom));
    }

    /** Returns where the back of what lies at a place is. */
    private Corner behind(Corner front, double width, double height) {
        return pageWidth > pageHeight
                ? new Corner(front.left(), pageHeight - front.bottom() - height)
                : new Corner(pageWidth - front.left() - width, front.bottom());
    }

    /** Draws what was noted on a page of its own, if anything was. */
    void draw(PDDocument document, Faces faces) throws IOException {
        if (backs.isEmpty()) {
            return;
        }
        PDPage page = new PDPage(new PDRectangle((float) pageWidth, (float) pageHeight));
        document.addPage(page);
        Ink ink = Ink.ofPage(faces);
        for (Back back : backs) {
            draw(ink, faces, back);
        }
        for (Corner card : cards) {
            Corner behind = behind(card, look.across() * face, look.down() * faceHeight);
            marks.draw(ink, behind.left(), behind.bottom());
        }
        faces.finish(page, ink);
        backs.clear();
        cards.clear();
    }

    private void draw(Ink ink, Faces faces, Back back) throws IOException {
        Corner corner = behind(back.front(), face, faceHeight);
        double scale = look.size().enlargement();
        ink.save();
        ink.translate(corner.left(), corner.bottom());
        ink.scale(scale);
        PDRectangle place = new PDRectangle((float) (face / scale), (float) (faceHeight / scale));
        new ChartPage(back.card(), back.chart(), new Pen(ink, faces, place.getHeight()), back.words(), place).draw();
        ink.restore();
    }
}
