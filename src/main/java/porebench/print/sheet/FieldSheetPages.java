package porebench.print.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldSheet;
import porebench.port.OutputRefused;
import porebench.print.page.Align;
import porebench.print.page.Band;
import porebench.print.page.CardLetters;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.QrMark;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;

/** Draws the sheet of a crew: the factor and its days, rows to write in with the factor filled in, the card's text as a code. */
public final class FieldSheetPages extends PrintedSheet {
    private static final int ROWS = 16;
    /** Beside long names, so that all stands on one page. */
    private static final int FEW_ROWS = 10;

    private static final double FILLED = 11;
    private static final double ROW = 24;
    /** Sides of the code, in points: a long text has more squares, which must not become smaller than a camera sees. */
    private static final double CODE = 100;

    private static final double LARGE_CODE = 150;
    private static final int MUCH_TEXT = 600;

    private final FactorCard card;
    private final FactorIssue issue;
    private final Imprint imprint;

    public FieldSheetPages(FieldSheet sheet, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(
                new Flow(
                        leaves,
                        words,
                        words.say("field.running-head", sheet.card().mixId().text()),
                        sheet.isTraining()),
                words);
        this.card = sheet.card();
        this.issue = card.issue();
        this.imprint = imprint;
    }

    public void draw() throws IOException {
        CardLetters letters = new CardLetters(card, flow.faces());
        OutputRefused.unlessNone(letters.problems());
        String text = CardText.of(card, words.card());
        double side = text.getBytes(StandardCharsets.UTF_8).length > MUCH_TEXT ? LARGE_CODE : CODE;
        if (card.isMarked()) {
            Band band = new Band(flow.pen(), mark(), words.say("card.marked-why", words.date(imprint.date())));
            flow.down(band.draw(flow.left(), flow.top(), flow.width()) - flow.top() + 4);
        }
        head(card.laboratory(), words.say("field.kind"), card.mixId().text(), side);
        double room = flow.width() - side;
        flow.text(new TextFit(Weight.REGULAR, 12, 8, room, 3), card.mixTitle());
        flow.text(new TextFit(Weight.BOLD, 16, 10, room, 2), subtract());
        if (!card.isMarked()) {
            flow.text(
                    new TextFit(Weight.REGULAR, 9, 7, room, 2),
                    words.say("card.formula." + issue.meterType(), number()));
        }
        double code = ruleBelowHead + 1;
        QrMark.draw(flow.pen(), text, flow.left() + room, code, side);
        flow.down(Math.max(3, code + side - flow.top()));
        facts(
                fact("card.revision", Integer.toString(issue.revision()), 0.7),
                fact(
                        "card.in-force-from",
                        moment(issue.inForceFrom(), issue.terms().at()),
                        1.3),
                fact("card.recheck-by", moment(card.lastDay(), card.until()), 1.3),
                fact("card.meter-type", words.say("meter." + issue.meterType()), 0.8));
        terms();
        rows(side > CODE ? FEW_ROWS : ROWS);
        if (card.isMarked()) {
            flow.pen().across(mark(), flow.left(), flow.left(), flow.width(), flow.top() - flow.left());
        }
        for (String notShown : letters.note(words).stream().toList()) {
            small(notShown);
        }
        small(words.say("field.how"));
        small(text.substring(text.lastIndexOf('\n') + 1));
        small(words.say(
                "print.head", Long.toString(card.head().entries()), card.head().printed()));
        cautions(List.of("caution.pressure." + issue.meterType(), "caution.caustic-heavy", "caution.local-rules"));
        flow.finish(imprint);
    }

    private String mark() {
        return words.say("card.marked." + card.state());
    }

    private String number() {
        return words.number(issue.factorPercent());
    }

    private String subtract() {
        return card.isMarked()
                ? mark()
                : words.say("card.subtract") + " G = " + number() + " " + words.say("card.unit");
    }

    private void terms() throws IOException {
        if (issue.factorPercent().signum() < 0) {
            small(words.say("card.negative", words.number(issue.factorPercent().abs())));
        }
        if (card.wetSieved()) {
            small(words.say("card.wet-sieved"));
            for (String said : CardText.sievedAirs(card, words.card())) {
                small(said);
            }
        }
        if (!issue.terms().conditions().isBlank()) {
            flow.text(
                    new TextFit(Weight.BOLD, 10, 7, flow.width(), 4),
                    words.say("card.conditions", issue.terms().conditions()));
        }
        flow.text(
                new TextFit(Weight.BOLD, 11, 8, flow.width(), 2),
                CardText.passes(card, words.card()) + " "
                        + words.say(
                                "card.target." + issue.meterType(),
                                words.number(card.targetAirPercent()),
                                words.number(card.airTolerancePercent()),
                                words.number(card.divisionPercent())));
        flow.down(3);
    }

    private void rows(int count) throws IOException {
        PageTable table = table(
                ROW,
                column("field.when", 1.5, Align.LEFT),
                column("field.truck", 1.1, Align.LEFT),
                column("field.meter", 1.1, Align.LEFT),
                column("field.reading", 1, Align.LEFT),
                column("field.less", 0.8, Align.LEFT),
                column("field.air", 1, Align.LEFT),
                column("field.passes", 1.1, Align.LEFT),
                column("field.density", 1.2, Align.LEFT),
                column("field.temperature", 0.9, Align.LEFT));
        String less = card.isMarked() ? "" : "\u2212 (" + number() + ")";
        String filled = issue.factorPercent().signum() < 0
                ? less
                : less.replace("(", "").replace(")", "");
        for (int row = 0; row < count; row++) {
            table.blankRow(List.of("", "", "", "", filled, "", words.say("field.yes-no"), "", ""), ROW, FILLED);
        }
        flow.down(3);
    }

    private String moment(LocalDate day, Optional<LocalTime> time) {
        return words.date(day) + time.map(at -> " " + FactorTerms.written(at)).orElse("");
    }
}
