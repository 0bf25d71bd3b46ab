package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.print.page.Align;
import porebench.print.page.Block;
import porebench.print.page.CardLetters;
import porebench.print.page.FittedText;
import porebench.print.page.Imprint;
import porebench.print.page.Pen;
import porebench.print.page.QrMark;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;

/**
 * Draws a wallet card: on its front what to subtract and for how long, on its back the table, what else holds and the cautions.
 *
 * <p>Front and back lie side by side. What a person works by is never cut: where it does not fit, the card is refused.
 */
final class WalletPage {
    private static final double MARGIN = 3 * 72 / 25.4;
    private static final double CODE = 64;
    private static final double GAP = 2;
    private static final double LEAST_TABLE = 40;
    private static final double SMALLEST = 5;

    private final FactorCard card;
    private final FactorIssue issue;
    private final Pen pen;
    private final Words words;
    private final Imprint imprint;
    private final double face;
    private final double width;
    private final double height;

    WalletPage(FactorCard card, Pen pen, Words words, Imprint imprint, double face, double height) {
        this.card = card;
        this.issue = card.issue();
        this.pen = pen;
        this.words = words;
        this.imprint = imprint;
        this.face = face;
        this.width = face - 2 * MARGIN;
        this.height = height - 2 * MARGIN;
    }

    void draw() throws IOException {
        List<Block> front = front();
        List<Block> back = back();
        double table = height - Block.height(back);
        double right = Block.height(dates());
        if (Block.height(front) > height || right + CODE > height || table < LEAST_TABLE) {
            throw refused();
        }
        Block.draw(front, MARGIN);
        double codeLeft = face - MARGIN - CODE;
        QrMark.drawFine(pen, CardText.of(card, words.card()), codeLeft, MARGIN, CODE);
        Block.draw(dates(), MARGIN + CODE);
        CardTable rows = new CardTable(issue.meterType(), pen, words);
        ReadingGrid grid = ReadingGrid.choose(card.window(), card.targetAirPercent(), rows.place(width, table - 8));
        rows.draw(grid, face + MARGIN, MARGIN, width);
        String under = grid.every() == 1
                ? words.say("card.under-table", card.rule())
                : words.say("card.under-table.stepped", card.rule(), Integer.toString(grid.every()));
        pen.text(fit(Weight.REGULAR, 5.5, 1, width, under), face + MARGIN, MARGIN + table - 7.5, width, Align.LEFT);
        Block.draw(back, MARGIN + table);
        if (card.isMarked()) {
            for (double left : new double[] {MARGIN, face + MARGIN}) {
                pen.across(words.say("card.marked." + card.state()), left, MARGIN, width, height);
            }
        }
    }

    private OutputRefused refused() {
        return OutputRefused.of(
                Problem.error("size", "card.does-not-fit", card.mixId().text(), CardSize.WALLET.symbol()));
    }

    private List<Block> front() throws IOException {
        double place = width - CODE - GAP;
        List<Block> blocks = new ArrayList<>();
        for (String warning : warnings()) {
            blocks.add(kept(Weight.BOLD, 7, 4, place, warning, MARGIN));
        }
        blocks.add(text(
                fit(
                        Weight.REGULAR,
                        6.5,
                        1,
                        place,
                        card.laboratory().map(one -> one.name()).orElse("")),
                MARGIN,
                place));
        blocks.add(text(fit(Weight.BOLD, 13, 1, place, card.mixId().text()), MARGIN, place));
        if (!card.mixTitle().isBlank()) {
            blocks.add(text(fit(Weight.REGULAR, 7, 1, place, card.mixTitle()), MARGIN, place));
        }
        blocks.add(new Block(GAP, top -> {}));
        blocks.add(new FactorBox(pen, words, issue, 44, true).block(MARGIN, place));
        String from = words.say("card.from-the-reading." + issue.meterType());
        String formula = words.say("card.formula." + issue.meterType(), words.signed(issue.factorPercent()));
        blocks.add(kept(Weight.REGULAR, 6.5, 1, place, from, MARGIN));
        blocks.add(kept(Weight.REGULAR, 6.5, 1, place, formula, MARGIN));
        blocks.add(new Block(GAP, top -> {}));
        blocks.add(kept(Weight.BOLD, 9, 2, place, CardText.passes(card, words.card()), MARGIN));
        blocks.add(kept(Weight.REGULAR, 6, 2, place, CardText.target(card, words.card()), MARGIN));
        if (issue.factorPercent().signum() < 0) {
            blocks.add(kept(
                    Weight.BOLD,
                    6,
                    3,
                    place,
                    words.say(
                            "card.negative", words.number(issue.factorPercent().abs())),
                    MARGIN));
        }
        return blocks;
    }

    private List<String> warnings() {
        List<String> said = new ArrayList<>();
        if (card.isTraining()) {
            said.add(words.say("simulated.word") + ". " + words.say("simulated.why"));
        }
        if (card.isMarked()) {
            said.add(words.say("card.marked." + card.state()) + ". "
                    + words.say("card.marked-why", words.date(imprint.date())));
        }
        return said;
    }

    private List<Block> dates() throws IOException {
        double left = face - MARGIN - CODE;
        List<Block> blocks = new ArrayList<>();
        blocks.add(text(
                fit(
                        Weight.BOLD,
                        7,
                        1,
                        CODE,
                        words.say("card.revision") + " " + issue.revision() + ", "
                                + words.say("meter." + issue.meterType())),
                left,
                CODE));
        String at =
                issue.terms().at().map(time -> " " + FactorTerms.written(time)).orElse("");
        String until = card.until().map(time -> " " + FactorTerms.written(time)).orElse("");
        for (String[] pair : new String[][] {
            {"card.in-force-from", words.date(issue.inForceFrom()) + at},
            {"card.recheck-by", words.date(card.lastDay()) + until}
        }) {
            blocks.add(text(fit(Weight.REGULAR, 6, 1, CODE, words.say(pair[0])), left, CODE));
            blocks.add(text(fit(Weight.BOLD, 9, 1, CODE, pair[1]), left, CODE));
        }
        blocks.add(text(fit(Weight.REGULAR, 5.5, 1, CODE, words.say("card.approved-by")), left, CODE));
        String approved = issue.approvedBy().isBlank() ? "\u2013" : issue.approvedBy();
        blocks.add(text(fit(Weight.REGULAR, 6, 1, CODE, approved), left, CODE));
        return blocks;
    }

    private List<Block> back() throws IOException {
        double left = face + MARGIN;
        List<Block> blocks = new ArrayList<>();
        if (!issue.terms().conditions().isBlank()) {
            String said = words.say("card.conditions", issue.terms().conditions());
            blocks.add(kept(Weight.BOLD, 7, 5, width, said, left));
        }
        if (card.wetSieved()) {
            blocks.add(kept(Weight.BOLD, 6.5, 2, width, words.say("card.wet-sieved"), left));
        }
        if (!card.isMarked()) {
            String valid = words.say("card.valid-only", Integer.toString(issue.revision()));
            blocks.add(kept(Weight.BOLD, 6, 2, width, valid, left));
        }
        Optional<String> notShown = new CardLetters(card, pen.faces()).note(words);
        if (notShown.isPresent()) {
            blocks.add(kept(Weight.REGULAR, 6, 2, width, notShown.get(), left));
        }
        TextFit line = new TextFit(Weight.REGULAR, 6, SMALLEST, width, 1);
        blocks.add(text(new CardNames(card, pen, words).sources(line), left, width));
        for (String key : List.of("caution.pressure." + issue.meterType(), "caution.caustic-heavy")) {
            blocks.add(kept(Weight.REGULAR, 5.75, 2, width, words.say(key), left));
        }
        String head = words.say(
                "print.head", Long.toString(card.head().entries()), card.head().printed());
        String printed = words.say("card.printed", words.date(imprint.date()));
        blocks.add(text(
                fit(
                        Weight.REGULAR,
                        SMALLEST + 0.5,
                        2,
                        width,
                        words.say("caution.local-rules") + " " + head + ". " + printed),
                left,
                width));
        return blocks;
    }

    private FittedText fit(Weight weight, double largest, int lines, double place, String text) throws IOException {
        return new TextFit(weight, largest, SMALLEST, place, lines).fit(pen.faces(), text);
    }

    private Block text(FittedText fitted, double left, double place) {
        return new Block(fitted.height(), top -> pen.text(fitted, left, top, place, Align.LEFT));
    }

    /** Sets what must not be cut. */
    private Block kept(Weight weight, double largest, int lines, double place, String text, double left)
            throws IOException {
        FittedText fitted = fit(weight, largest, lines, place, text);
        if (fitted.cut()) {
            throw refused();
        }
        return text(fitted, left, place);
    }
}
