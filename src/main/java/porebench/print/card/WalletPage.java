package porebench.print.card;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.method.air.PassWindow;
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
 * Draws a wallet card: on its front which mix, what to subtract, what passes and until when; on its back what else holds and the table, in
 * type that is legible at 60 cm ({@link LegibleType}), then the cautions and where it comes from, in type for the hand.
 *
 * <p>Front and back lie side by side. What a person works by is never cut and never smaller: where it does not fit, an example stands for the
 * table, and where that does not help, the card is refused.
 */
final class WalletPage {
    private static final double MARGIN = 3 * 72 / 25.4;
    private static final double CODE = 64;
    private static final double GAP = 2;
    private static final double BOX = 40;
    private static final double TIGHT_BOX = 34;
    private static final double TIGHTEST_BOX = 30;
    private static final int MOST_WORDS = 5;
    private static final double ABOVE_UNDER_TABLE = 1;

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
        Block.draw(front, MARGIN);
        QrMark.drawFine(pen, CardText.of(card, words.card()), face - MARGIN - CODE, MARGIN, CODE);
        Block.draw(back, MARGIN);
        if (card.isMarked()) {
            for (double left : new double[] {MARGIN, face + MARGIN}) {
                pen.across(words.say("card.marked." + card.state()), left, MARGIN, width, height);
            }
        }
    }

    /** Returns the front in the first setting in which it fits. */
    private List<Block> front() throws IOException {
        for (Setting setting : Setting.values()) {
            List<Block> front = front(setting);
            if (Block.height(front) <= height) {
                return front;
            }
        }
        throw refused();
    }

    /** Returns the back, with fewer names where it would not fit. */
    private List<Block> back() throws IOException {
        for (int lines : new int[] {3, 2}) {
            List<Block> back = back(small(lines));
            if (Block.height(back) <= height + 1e-6) {
                return back;
            }
        }
        throw refused();
    }

    private List<Block> back(List<Block> small) throws IOException {
        List<Block> back = new ArrayList<>(above());
        double place = height - Block.height(small) - Block.height(back);
        Optional<Block> table = table(place);
        if (table.isPresent()) {
            back.add(table.get());
        } else {
            Block example = legible(Weight.REGULAR, LegibleType.AT_ARMS_LENGTH, width, example(), face + MARGIN);
            back.add(example);
            back.add(new Block(Math.max(0, place - example.height()), top -> {}));
        }
        back.addAll(small);
        return back;
    }

    private OutputRefused refused() {
        return OutputRefused.of(
                Problem.error("size", "card.does-not-fit", card.mixId().text(), CardSize.WALLET.symbol()));
    }

    /** How much height the words of the front may take. */
    private enum Setting {
        EASY,
        /** The frame is lower, and what G is subtracted from is said by the formula alone. */
        TIGHT,
        /** The frame is lower still, and the state of a marked card stands across it alone. */
        TIGHTEST
    }

    /** Returns the front; the code stands at its upper right. */
    private List<Block> front(Setting setting) throws IOException {
        boolean easy = setting == Setting.EASY;
        double place = width - CODE - GAP;
        List<Block> beside = new ArrayList<>();
        if (card.isTraining()) {
            beside.add(legible(Weight.BOLD, LegibleType.AT_ARMS_LENGTH, place, words.say("simulated.word"), MARGIN));
        }
        if (card.isMarked() && setting != Setting.TIGHTEST) {
            String state = words.say("card.marked." + card.state());
            beside.add(legible(Weight.BOLD, LegibleType.AT_ARMS_LENGTH, place, state, MARGIN));
        }
        beside.add(legible(Weight.BOLD, 16, place, card.mixId().text(), MARGIN));
        String meter =
                words.say("card.revision") + " " + issue.revision() + ", " + words.say("meter." + issue.meterType());
        beside.add(legible(Weight.REGULAR, LegibleType.AT_ARMS_LENGTH, place, meter, MARGIN));
        double left = CODE - Block.height(beside) - GAP;
        double least = easy ? BOX : setting == Setting.TIGHT ? TIGHT_BOX : TIGHTEST_BOX;
        double box = Math.max(least, Math.min(left, BOX));
        beside.add(new Block(GAP, top -> {}));
        beside.add(new FactorBox(pen, words, issue, box, true).block(MARGIN, place));
        List<Block> blocks = new ArrayList<>(beside);
        blocks.add(new Block(Math.max(0, CODE - Block.height(beside)) + GAP, top -> {}));
        if (easy) {
            blocks.add(line(Weight.REGULAR, words.say("card.from-the-reading." + issue.meterType())));
        }
        blocks.add(line(
                Weight.REGULAR, words.say("card.formula." + issue.meterType(), words.signed(issue.factorPercent()))));
        blocks.add(line(Weight.BOLD, CardText.passes(card, words.card())));
        blocks.add(line(Weight.BOLD, words.say("card.recheck-by") + " " + moment(card.lastDay(), card.until())));
        return blocks;
    }

    private String moment(LocalDate day, Optional<LocalTime> time) {
        return words.date(day) + time.map(at -> " " + FactorTerms.written(at)).orElse("");
    }

    private Block line(Weight weight, String text) throws IOException {
        return legible(weight, LegibleType.AT_ARMS_LENGTH, width, text, MARGIN);
    }

    /** Returns what has to be known before a reading is taken, over the table. */
    private List<Block> above() throws IOException {
        double left = face + MARGIN;
        List<Block> blocks = new ArrayList<>();
        if (!issue.terms().conditions().isBlank()) {
            String said = words.say("card.conditions", issue.terms().conditions());
            blocks.add(legible(Weight.BOLD, LegibleType.AT_ARMS_LENGTH, width, said, left));
        }
        if (card.wetSieved()) {
            blocks.add(legible(Weight.BOLD, LegibleType.AT_ARMS_LENGTH, width, words.say("card.wet-sieved"), left));
        }
        if (issue.factorPercent().signum() < 0) {
            String said = words.say(
                    "card.negative", words.number(issue.factorPercent().abs()));
            blocks.add(legible(Weight.BOLD, LegibleType.AT_ARMS_LENGTH, width, said, left));
        }
        return blocks;
    }

    /** Returns the table; empty where there is no room for two lines of it in legible type. */
    private Optional<Block> table(double place) throws IOException {
        CardTable table = new CardTable(issue.meterType(), pen, words);
        // As long as the words under it can be.
        FittedText longest = inTheHand(
                Weight.REGULAR, LegibleType.IN_THE_HAND, 2, words.say("card.under-table.stepped", card.rule(), "100"));
        double high = place - longest.height() - ABOVE_UNDER_TABLE;
        ReadingGrid.Room room = table.place(width, high);
        if (room.height() < 2 * ReadingGrid.LINE * LegibleType.AT_ARMS_LENGTH) {
            return Optional.empty();
        }
        ReadingGrid grid = ReadingGrid.choose(card.window(), card.targetAirPercent(), room, ReadingGrid.AT_ARMS_LENGTH);
        if (grid.size() < LegibleType.AT_ARMS_LENGTH) {
            return Optional.empty();
        }
        String under = grid.every() == 1
                ? words.say("card.under-table", card.rule())
                : words.say("card.under-table.stepped", card.rule(), Integer.toString(grid.every()));
        FittedText fitted = inTheHand(Weight.REGULAR, LegibleType.IN_THE_HAND, 2, under);
        double left = face + MARGIN;
        return Optional.of(new Block(place, top -> {
            table.draw(grid, left, top, width);
            pen.text(fitted, left, top + high + ABOVE_UNDER_TABLE, width, Align.LEFT);
        }));
    }

    /** Returns the air of one reading, that whose air is nearest to the target. */
    private String example() {
        PassWindow.Row row = card.window().rows().stream()
                .min(Comparator.comparing(
                        one -> one.air().subtract(card.targetAirPercent()).abs()))
                .orElseThrow();
        BigDecimal bare = row.air().stripTrailingZeros();
        return words.say(
                "card.example", words.number(row.reading()), words.number(bare.setScale(Math.max(1, bare.scale()))));
    }

    /**
     * Returns the cautions and where the card comes from, in type for the hand.
     *
     * @param lines how many lines the last of it may have
     */
    private List<Block> small(int lines) throws IOException {
        List<Block> blocks = new ArrayList<>();
        blocks.add(whole(Weight.REGULAR, LegibleType.IN_THE_HAND, CardText.target(card, words.card())));
        if (card.isTraining()) {
            blocks.add(whole(Weight.BOLD, 6.5, words.say("simulated.word") + ". " + words.say("simulated.why")));
        }
        blocks.add(whole(
                Weight.BOLD,
                LegibleType.IN_THE_HAND,
                card.isMarked()
                        ? words.say("card.marked." + card.state()) + ". "
                                + words.say("card.marked-why", words.date(imprint.date()))
                        : words.say("card.valid-only", Integer.toString(issue.revision()))));
        Optional<String> notShown = new CardLetters(card, pen.faces()).note(words);
        if (notShown.isPresent()) {
            blocks.add(whole(Weight.REGULAR, LegibleType.IN_THE_HAND, notShown.get()));
        }
        for (String key : List.of("caution.pressure." + issue.meterType(), "caution.caustic-heavy")) {
            blocks.add(whole(Weight.REGULAR, LegibleType.IN_THE_HAND, words.say(key)));
        }
        blocks.add(block(inTheHand(Weight.REGULAR, LegibleType.IN_THE_HAND, lines, origin())));
        return blocks;
    }

    /** Returns where the card comes from, names last: the end is left off where it is too long, and the code has it whole. */
    private String origin() {
        String head = words.say(
                "print.head", Long.toString(card.head().entries()), card.head().printed());
        List<String> said = new ArrayList<>(List.of(
                words.say("caution.local-rules"),
                words.say("card.in-force-from") + " "
                        + moment(issue.inForceFrom(), issue.terms().at()) + ".",
                words.say("card.printed", words.date(imprint.date())) + ".",
                head + "."));
        if (!issue.approvedBy().isBlank()) {
            said.add(words.say("card.approved-by") + " " + issue.approvedBy() + ".");
        }
        card.laboratory().ifPresent(one -> said.add(one.name() + "."));
        return String.join(" ", said);
    }

    private Block whole(Weight weight, double size, String text) throws IOException {
        FittedText fitted = inTheHand(weight, size, MOST_WORDS, text);
        if (fitted.cut()) {
            throw refused();
        }
        return block(fitted);
    }

    private FittedText inTheHand(Weight weight, double size, int lines, String text) throws IOException {
        return new TextFit(weight, size, LegibleType.IN_THE_HAND, width, lines).fit(pen.faces(), text);
    }

    private Block block(FittedText fitted) {
        return new Block(fitted.height(), top -> pen.text(fitted, face + MARGIN, top, width, Align.LEFT));
    }

    /** Sets what a person works by: never cut, never smaller than what is legible. */
    private Block legible(Weight weight, double largest, double place, String text, double left) throws IOException {
        FittedText fitted =
                new TextFit(weight, largest, LegibleType.AT_ARMS_LENGTH, place, MOST_WORDS).fit(pen.faces(), text);
        if (fitted.cut()) {
            throw refused();
        }
        return new Block(fitted.height(), top -> pen.text(fitted, left, top, place, Align.LEFT));
    }
}
