package porebench.print.card;

import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.print.page.Align;
import porebench.print.page.Band;
import porebench.print.page.Block;
import porebench.print.page.CardLetters;
import porebench.print.page.Facts;
import porebench.print.page.FittedText;
import porebench.print.page.Imprint;
import porebench.print.page.Pen;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.Laboratory;

/**
 * Draws a factor card on one page.
 *
 * <p>What the crew acts on stands largest: the factor, the readings at which the load passes, the table. Everything above and
 * below the table takes the height its words need and the table gets the rest; where that is too little, the words are set
 * tighter.
 */
public final class CardPage {
    /** 6 mm: printers that feed cards reach this far. */
    private static final double MARGIN = 6 * 72 / 25.4;
    /** Below this height, in points, the table would skip too many readings. */
    private static final double LEAST_TABLE = 106;

    /** Below this height, in points, hardly a reading would be left. */
    private static final double LEAST_TABLE_AT_ALL = 50;

    /** Below this height, in points, the readings would be too small to be read, and there is no card. */
    private static final double NO_TABLE = 20;

    private static final double GAP = 3;
    private static final double UNDER_TABLE = 7.5;
    /**
     * More lines about doubts taken on would leave the table too little room, and beside conditions one less is there; the lab book has
     * them all.
     */
    private static final int MOST_TAKEN_ON = 2;

    private static final int MOST_CONDITION_LINES = 6;

    private final FactorCard card;
    private final FactorIssue issue;
    private final Pen pen;
    private final Words words;
    private final Imprint imprint;
    private final CardNames names;
    private final String text;
    private final String sizeSaid;
    private final double width;
    private final double bottom;

    public CardPage(FactorCard card, Pen pen, Words words, Imprint imprint, PDRectangle page, String sizeSaid) {
        this.card = card;
        this.issue = card.issue();
        this.pen = pen;
        this.words = words;
        this.imprint = imprint;
        this.sizeSaid = sizeSaid;
        this.names = new CardNames(card, pen, words);
        this.text = CardText.of(card, words.card());
        this.width = page.getWidth() - 2 * MARGIN;
        this.bottom = page.getHeight() - MARGIN;
    }

    public void draw() throws IOException {
        List<Block> below = below(false);
        double rest = rest(below);
        List<Block> above = above(Setting.EASY);
        if (rest - Block.height(above) < LEAST_TABLE) {
            above = above(Setting.TIGHT);
        }
        if (rest - Block.height(above) < LEAST_TABLE_AT_ALL) {
            above = above(Setting.TIGHTEST);
            below = below(true);
            rest = rest(below);
        }
        if (rest - Block.height(above) < NO_TABLE) {
            throw OutputRefused.of(
                    Problem.error("size", "card.does-not-fit", card.mixId().text(), sizeSaid));
        }
        double tableTop = Block.draw(above, MARGIN);
        double tableHeight = rest - Block.height(above);
        List<Object> sameTable = List.of(
                "table", words, card.window(), card.targetAirPercent(), tableHeight, card.rule(), issue.meterType());
        fixed(sameTable, tableHeight + GAP + UNDER_TABLE * FittedText.LEADING, top -> drawTable(top, tableHeight))
                .drawing()
                .draw(tableTop);
        Block.draw(below, bottom - Block.height(below));
        if (card.isMarked()) {
            pen.across(mark(), MARGIN, MARGIN, width, bottom - MARGIN);
        }
    }

    /** Returns a block that is the same on many cards, so that it stands in their document once. */
    private Block fixed(Object key, double height, Block.Drawing drawing) {
        return new Block(height, top -> pen.fixed(key, new Pen.Place(MARGIN, top, width, height), drawing));
    }

    private Block fixed(Object key, List<Block> blocks) {
        return fixed(key, Block.height(blocks), top -> Block.draw(blocks, top));
    }

    private Block fixed(List<FittedText> texts) {
        return fixed(List.of("texts", texts), texts.stream().map(this::words).toList());
    }

    private double rest(List<Block> below) {
        return bottom - MARGIN - Block.height(below) - UNDER_TABLE * FittedText.LEADING - GAP;
    }

    private void drawTable(double top, double height) throws IOException {
        CardTable table = new CardTable(issue.meterType(), pen, words);
        ReadingGrid grid = ReadingGrid.choose(
                card.window(), card.targetAirPercent(), table.place(width, height), ReadingGrid.IN_THE_HAND);
        table.draw(grid, MARGIN, top, width);
        String text = grid.every() == 1
                ? words.say("card.under-table", card.rule())
                : words.say("card.under-table.stepped", card.rule(), Integer.toString(grid.every()));
        FittedText fitted = new TextFit(Weight.REGULAR, UNDER_TABLE, 5.5, width, 1).fit(pen.faces(), text);
        pen.text(fitted, MARGIN, top + height + GAP / 2, width, Align.LEFT);
    }

    /** How much height the words above the table may take. */
    private enum Setting {
        EASY,
        TIGHT,
        /** Names of more than a line are cut; they stand whole in the code. */
        TIGHTEST
    }

    private List<Block> above(Setting setting) throws IOException {
        boolean tight = setting != Setting.EASY;
        boolean tightest = setting == Setting.TIGHTEST;
        List<Block> blocks = new ArrayList<>();
        if (card.isTraining()) {
            blocks.add(band(Band.ofTraining(pen, words)));
        }
        if (card.isMarked()) {
            blocks.add(band(new Band(pen, mark(), words.say("card.marked-why", words.date(imprint.date())))));
        }
        String laboratory = card.laboratory().map(Laboratory::name).orElse("");
        blocks.add(fixed(List.of("head", words, laboratory), List.of(names.head(MARGIN, width))));
        blocks.add(names.block(MARGIN, width, tight, tightest, text));
        blocks.add(gap());
        double boxHeight = tightest ? 38 : tight ? 48 : 56;
        blocks.add(fixed(
                List.of("factor", words, issue.factorPercent(), issue.meterType(), boxHeight),
                List.of(new FactorBox(pen, words, issue, boxHeight, false).block(MARGIN, width))));
        blocks.add(gap());
        TextFit note = new TextFit(Weight.BOLD, tight ? 7.5 : 9, 6.5, width, 2);
        if (issue.factorPercent().signum() < 0) {
            blocks.add(words(
                    note,
                    words.say(
                            "card.negative", words.number(issue.factorPercent().abs()))));
        }
        if (card.wetSieved()) {
            blocks.add(words(note, words.say("card.wet-sieved")));
            // That they are not known stands in the code: it takes no room from what is.
            for (String said :
                    card.sievedAirs().isEmpty() ? List.<String>of() : CardText.sievedAirs(card, words.card())) {
                blocks.add(words(new TextFit(Weight.REGULAR, tight ? 7 : 8, 5.5, width, 1), said));
            }
        }
        blocks.add(gap());
        blocks.add(facts(tightest ? 8 : tight ? 9 : 11));
        blocks.add(gap());
        if (!issue.terms().conditions().isBlank()) {
            blocks.add(words(conditions(tight)));
            blocks.add(gap());
        }
        blocks.add(fixed(List.of(
                fit(new TextFit(Weight.BOLD, 14, 9, width, 1), CardText.passes(card, words.card())),
                fit(new TextFit(Weight.REGULAR, 9, 6.5, width, 1), CardText.target(card, words.card())))));
        blocks.add(gap());
        return blocks;
    }

    private Block band(Band band) {
        return new Block(Band.HEIGHT + GAP, top -> band.draw(MARGIN, top, width));
    }

    /** Returns the state of a card that is no card to work by, as it stands across it. */
    private String mark() {
        return words.say("card.marked." + card.state());
    }

    private Block gap() {
        return new Block(GAP, top -> {});
    }

    private Block words(TextFit place, String text) throws IOException {
        return words(fit(place, text));
    }

    private FittedText fit(TextFit place, String text) throws IOException {
        return place.fit(pen.faces(), text);
    }

    private Block words(FittedText fitted) {
        return new Block(fitted.height(), top -> pen.text(fitted, MARGIN, top, width, Align.LEFT));
    }

    private Block facts(double size) throws IOException {
        Facts facts = new Facts(
                pen,
                size,
                width,
                List.of(
                        new Facts.Fact(words.say("card.revision"), Integer.toString(issue.revision()), 0.8),
                        new Facts.Fact(
                                words.say("card.in-force-from"),
                                moment(issue.inForceFrom(), issue.terms().at()),
                                1.35),
                        new Facts.Fact(words.say("card.recheck-by"), moment(card.lastDay(), card.until()), 1.35),
                        new Facts.Fact(words.say("card.meter-type"), words.say("meter." + issue.meterType()), 1)));
        return new Block(facts.height(), top -> facts.draw(MARGIN, top));
    }

    /** The conditions are never cut: as many lines as the longest that a lab book takes needs are there for them. */
    private FittedText conditions(boolean tight) throws IOException {
        String said = words.say("card.conditions", issue.terms().conditions());
        return TextFit.first(
                pen.faces(),
                said,
                new TextFit(Weight.BOLD, tight ? 8 : 9.5, 7, width, 2),
                new TextFit(Weight.BOLD, tight ? 5.5 : 7, 5.5, width, MOST_CONDITION_LINES));
    }

    private String moment(LocalDate day, Optional<LocalTime> time) {
        return words.date(day) + time.map(at -> " " + FactorTerms.written(at)).orElse("");
    }

    private List<Block> below(boolean tight) throws IOException {
        List<Block> blocks = new ArrayList<>();
        List<Block> cautions = new ArrayList<>();
        cautions.add(new Block(1, top -> pen.line(MARGIN, top, MARGIN + width, top, 0.75)));
        for (String key :
                List.of("caution.pressure." + issue.meterType(), "caution.caustic-heavy", "caution.local-rules")) {
            cautions.add(caution(words.say(key), tight ? 5.75 : 6.75));
        }
        blocks.add(fixed(List.of("cautions", words, issue.meterType(), tight), cautions));
        if (!card.isMarked()) {
            blocks.add(fixed(List.of(fit(
                    new TextFit(Weight.BOLD, tight ? 6 : 6.75, 5.5, width, 2),
                    words.say("card.valid-only", Integer.toString(issue.revision()))))));
        }
        for (String taken : takenOn(tight ? 1 : MOST_TAKEN_ON)) {
            blocks.add(words(new TextFit(Weight.REGULAR, tight ? 6 : 7, 5.5, width, tight ? 1 : 2), taken));
        }
        Optional<String> notShown = new CardLetters(card, pen.faces()).note(words);
        if (notShown.isPresent()) {
            blocks.add(words(new TextFit(Weight.REGULAR, tight ? 6 : 7, 5.5, width, 1), notShown.get()));
        }
        blocks.add(gap());
        List<Facts.Fact> people = people();
        Facts signatures = new Facts(pen, 8.5, width, people);
        FittedText head = fit(
                new TextFit(Weight.REGULAR, 6, 5.5, width, 1),
                words.say(
                        "print.head",
                        Long.toString(card.head().entries()),
                        card.head().printed()));
        blocks.add(fixed(
                List.of("people", people, head),
                List.of(new Block(signatures.height(), top -> signatures.draw(MARGIN, top)), words(head))));
        return blocks;
    }

    private List<Facts.Fact> people() {
        List<Facts.Fact> people = new ArrayList<>();
        people.add(new Facts.Fact(words.say("card.issued-by"), issue.issuedBy(), 1.2));
        if (!issue.terms().checkedBy().isBlank()) {
            people.add(
                    new Facts.Fact(words.say("card.checked-by"), issue.terms().checkedBy(), 1.2));
        }
        people.add(new Facts.Fact(
                words.say("card.approved-by"), issue.approvedBy().isBlank() ? "\u2013" : issue.approvedBy(), 1.2));
        people.add(new Facts.Fact(imprint.program(), words.say("card.printed", words.date(imprint.date())), 1));
        return people;
    }

    /** Says who took doubts about the evidence on and why, each person and reason once. */
    private List<String> takenOn(int lines) {
        Map<List<String>, Integer> taken = new LinkedHashMap<>();
        issue.takenOn().forEach(doubt -> taken.merge(List.of(doubt.by(), doubt.reason()), 1, Integer::sum));
        if (issue.isOverridden()) {
            taken.merge(List.of(issue.overrideBy(), issue.overrideReason()), 1, Integer::sum);
        }
        List<String> said = new ArrayList<>();
        taken.forEach(
                (who, count) -> said.add(words.say("card.taken-on", Integer.toString(count), who.get(0), who.get(1))));
        int most = issue.terms().conditions().isBlank() ? lines : 1;
        if (said.size() > most) {
            String others = taken.keySet().stream()
                    .skip(most - 1)
                    .map(who -> who.get(0))
                    .distinct()
                    .collect(Collectors.joining(", "));
            said.subList(most - 1, said.size()).clear();
            said.add(words.say("card.taken-on.more", others));
        }
        return said;
    }

    private Block caution(String text, double size) throws IOException {
        double sign = 11;
        FittedText fitted =
                new TextFit(Weight.REGULAR, size, Math.min(size, 6.5) - 0.5, width - sign, 2).fit(pen.faces(), text);
        return new Block(fitted.height(), top -> {
            pen.cautionSign(MARGIN, top + 0.5, 8);
            pen.text(fitted, MARGIN + sign, top, width - sign, Align.LEFT);
        });
    }
}
