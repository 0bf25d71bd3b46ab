package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.PlantText;
import porebench.method.MeterType;
import porebench.print.page.Align;
import porebench.print.page.Band;
import porebench.print.page.CardLetters;
import porebench.print.page.Faces;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.QrMark;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;

/**
 * One page of a plant's card in one language: each mix in a row between strong lines, its name at the left, its number at the right.
 *
 * <p>The words are set before anything is drawn, so that it is known whether they fit. Names of people and of the laboratory may be
 * shortened; nothing else is cut.
 */
final class PlantPage {
    private static final double MARGIN = 6 * 72 / 25.4;
    /** 36 mm. */
    private static final double CODE = 36 * 72 / 25.4;

    /** 0.3 mm, the least side of a square of the code on A6 (common practice, no source); on larger cards it is larger with the rest. */
    private static final double LEAST_SQUARE = 0.3 * 72 / 25.4;

    private static final double GAP = 4;
    private static final double LINE = 1.5;
    private static final double INSET = 5;
    private static final double HEAD = 13;
    /** A row is not made higher than its words by more than this, so that the card reads as a table. */
    private static final double MOST_SPARE = 16;

    private static final double TINT = 0.86;
    private static final double NUMBER_SHARE = 0.31;
    private static final double FOOT = 5.75;
    /** Its digits are as high as capitals, 0.711 of it: 5 mm. */
    private static final double LEAST_NUMBER = 20;

    private final PlantCard card;
    private final Faces faces;
    private final Words words;
    private final String program;
    private final double width;
    private final double bottom;
    private final double number;
    private final double left;
    private final String text;

    private final List<FittedText> head = new ArrayList<>();
    private final List<FittedText> said = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<FittedText> cautions = new ArrayList<>();
    private final List<FittedText> foot = new ArrayList<>();
    private boolean cut;

    /** How large the words are set: the sizes to begin with, in points; what does not fit is set smaller. */
    private enum Setting {
        EASY(14, 9, 16, 8, 32, 6.75, 3),
        TIGHT(11, 8, 13, 7, 24, 5.75, 2.5),
        /** What is said of a row stands over its whole width. */
        DENSE(10, 7.25, 12, 6.5, 20, 5.75, 1.5);

        private final double title;
        private final double toDo;
        private final double name;
        private final double small;
        private final double number;
        private final double foot;
        private final double padding;

        Setting(double title, double toDo, double name, double small, double number, double foot, double padding) {
            this.title = title;
            this.toDo = toDo;
            this.name = name;
            this.small = small;
            this.number = number;
            this.foot = foot;
            this.padding = padding;
        }
    }

    /** A row as it is set. */
    private record Row(List<FittedText> words, FittedText number, List<FittedText> under, double padding) {
        double left() {
            return words.stream().mapToDouble(FittedText::height).sum();
        }

        double height() {
            return Math.max(left(), number.height())
                    + under.stream().mapToDouble(FittedText::height).sum()
                    + 2 * padding;
        }
    }

    /**
     * Sets the words of a page.
     *
     * @param program name and version of the program
     * @param width the width of the page before it is made larger, in points
     * @param height its height, likewise
     */
    PlantPage(PlantCard card, Faces faces, Words words, String program, double width, double height)
            throws IOException {
        this.card = card;
        this.faces = faces;
        this.words = words;
        this.program = program;
        this.width = width - 2 * MARGIN;
        this.bottom = height - MARGIN;
        this.number = this.width * NUMBER_SHARE;
        this.left = this.width - number - 4 * INSET;
        this.text = PlantText.of(card, words.card());
        for (Setting setting : Setting.values()) {
            set(setting);
            if (fits()) {
                return;
            }
        }
    }

    private void set(Setting setting) throws IOException {
        cut = false;
        for (List<FittedText> part : List.of(head, said, cautions, foot)) {
            part.clear();
        }
        rows.clear();
        head.add(new TextFit(Weight.BOLD, 9, 6, width * 0.72 - GAP, 2)
                .fit(faces, card.laboratory().map(Laboratory::name).orElse("")));
        head.add(TextFit.line(Weight.REGULAR, 9, width * 0.28).fit(faces, words.say("card.kind")));
        double place = width - CODE - GAP;
        said.add(kept(
                PlantText.title(card, words.card()),
                new TextFit(Weight.BOLD, setting.title, 9, place, 2),
                new TextFit(Weight.BOLD, 8.5, 7, place, 4)));
        for (String page : PlantText.page(card, words.card())) {
            said.add(kept(page, new TextFit(Weight.BOLD, setting.title, 8, place, 1)));
        }
        for (String line : PlantText.toDo(card, words.card())) {
            said.add(kept(line, new TextFit(Weight.BOLD, setting.toDo, 7, place, 3)));
        }
        said.add(
                kept(words.say("card.printed", words.date(card.day())), new TextFit(Weight.REGULAR, 7, 6.5, place, 1)));
        for (PlantCard.Row row : card.rows()) {
            rows.add(row(row, setting));
        }
        below(setting);
    }

    private Row row(PlantCard.Row row, Setting setting) throws IOException {
        List<FittedText> lines = new ArrayList<>();
        lines.add(kept(
                row.mixId().text(),
                new TextFit(Weight.BOLD, setting.name, 10, left, 1),
                new TextFit(Weight.BOLD, setting.name - 2, 9, left, 2),
                new TextFit(Weight.BOLD, 9, 8.5, left, 3)));
        double small = setting.small;
        if (!row.title().isBlank()) {
            lines.add(kept(
                    row.title(),
                    new TextFit(Weight.REGULAR, small, 6.25, left, 2),
                    new TextFit(Weight.REGULAR, 6.25, 6, left, 4)));
        }
        List<FittedText> under = new ArrayList<>();
        if (row.card().isEmpty()) {
            lines.add(kept(words.say("plant.none.why"), new TextFit(Weight.BOLD, small, 6.5, left, 2)));
            FittedText none = kept(words.say("plant.none"), new TextFit(Weight.BOLD, 13, 9, number, 2));
            return new Row(lines, none, under, setting.padding);
        }
        FactorCard own = row.card().get();
        boolean isOver = setting == Setting.DENSE;
        double place = isOver ? width - 2 * INSET : left;
        (isOver ? under : lines)
                .add(kept(PlantText.terms(own, words.card()), new TextFit(Weight.REGULAR, small, 6.5, place, 2)));
        for (String note : PlantText.notes(own, words.card())) {
            under.add(kept(
                    note,
                    new TextFit(Weight.BOLD, small, 6.5, width - 2 * INSET, 2),
                    new TextFit(Weight.BOLD, 6.5, 6.5, width - 2 * INSET, 6)));
        }
        String digits = PlantText.number(own, words.card());
        FittedText large = kept(digits, new TextFit(Weight.BOLD, setting.number, LEAST_NUMBER, number, 1));
        return new Row(lines, large, under, setting.padding);
    }

    private void below(Setting setting) throws IOException {
        double size = setting.foot;
        foot.add(kept(words.say("plant.valid-only"), new TextFit(Weight.BOLD, size, FOOT, width, 3)));
        List<String> warnings = new ArrayList<>();
        for (MeterType meter : PlantText.meters(card)) {
            warnings.add(words.say("caution.pressure." + meter));
        }
        warnings.add(words.say("caution.caustic-heavy") + " " + words.say("caution.local-rules"));
        for (String warning : warnings) {
            cautions.add(kept(warning, new TextFit(Weight.REGULAR, size, FOOT, width - 11, 3)));
        }
        if (lacksLetters()) {
            foot.add(kept(
                    words.say("card.not-shown", Character.toString(Faces.MISSING)),
                    new TextFit(Weight.REGULAR, FOOT, FOOT, width, 2)));
        }
        List<FactorIssue> issues = card.cards().stream().map(FactorCard::issue).toList();
        String issued = issues.stream().map(FactorIssue::issuedBy).distinct().collect(Collectors.joining(", "));
        String approved = issues.stream()
                .map(FactorIssue::approvedBy)
                .map(name -> name.isBlank() ? "\u2013" : name)
                .distinct()
                .collect(Collectors.joining(", "));
        foot.add(new TextFit(Weight.REGULAR, size, FOOT, width, 2)
                .fit(faces, words.say("plant.people", issued, approved)));
        foot.add(kept(
                words.say(
                                "print.head",
                                Long.toString(card.head().entries()),
                                card.head().printed())
                        + ". " + program,
                new TextFit(Weight.REGULAR, 6, FOOT - 0.25, width, 2)));
    }

    private boolean lacksLetters() {
        boolean isLacking = card.cards().stream()
                .anyMatch(one -> new CardLetters(one, faces).note(words).isPresent());
        return isLacking
                || !faces.lacking(card.plant()).isEmpty()
                || card.rows().stream()
                        .anyMatch(row -> !faces.lacking(row.title()).isEmpty());
    }

    private FittedText kept(String line, TextFit... places) throws IOException {
        FittedText fitted = TextFit.first(faces, line, places);
        cut |= fitted.cut();
        return fitted;
    }

    /** Returns whether all words stand on the page, no smaller than is stated, and the squares of the code are large enough. */
    boolean fits() {
        return !cut && spare() >= 0 && QrMark.square(text, CODE) >= LEAST_SQUARE;
    }

    private double spare() {
        return bottom
                - below()
                - table()
                - rows.stream().mapToDouble(Row::height).sum()
                - LINE;
    }

    private double headHeight() {
        return Math.max(head.get(0).height(), head.get(1).height()) + 3;
    }

    private double training() {
        return card.isTraining() ? Band.HEIGHT + GAP : 0;
    }

    /** Returns where the first row begins. */
    private double table() {
        double words = said.stream().mapToDouble(FittedText::height).sum();
        return MARGIN + training() + headHeight() + Math.max(words, CODE) + GAP / 2 + HEAD;
    }

    private double below() {
        return GAP
                + cautions.stream().mapToDouble(one -> one.height() + 0.5).sum()
                + foot.stream().mapToDouble(FittedText::height).sum();
    }

    void draw(Pen pen) throws IOException {
        double top = MARGIN;
        if (card.isTraining()) {
            top = Band.ofTraining(pen, words).draw(MARGIN, top, width) + GAP;
        }
        pen.text(head.get(0), MARGIN, top, width, Align.LEFT);
        pen.text(head.get(1), MARGIN, top, width, Align.RIGHT);
        top += headHeight();
        pen.line(MARGIN, top - 2, MARGIN + width, top - 2, 1);
        double line = top;
        for (FittedText one : said) {
            pen.text(one, MARGIN, line, width, Align.LEFT);
            line += one.height();
        }
        QrMark.drawFine(pen, text, MARGIN + width - CODE, top, CODE);
        drawTable(pen, Math.min(MOST_SPARE, spare() / rows.size()));
        double foot = bottom - below() + GAP;
        for (FittedText one : cautions) {
            pen.cautionSign(MARGIN, foot, 7);
            pen.text(one, MARGIN + 11, foot, width - 11, Align.LEFT);
            foot += one.height() + 0.5;
        }
        for (FittedText one : this.foot) {
            pen.text(one, MARGIN, foot, width, Align.LEFT);
            foot += one.height();
        }
    }

    private void drawTable(Pen pen, double spare) throws IOException {
        double top = table();
        FittedText mix = TextFit.line(Weight.BOLD, 8, left).fit(faces, words.say("plant.head.mix"));
        FittedText subtract =
                new TextFit(Weight.BOLD, 8, 6, number + INSET, 1).fit(faces, words.say("plant.head.number"));
        pen.text(mix, MARGIN + INSET, top - HEAD + 1.5, left, Align.LEFT);
        pen.text(subtract, MARGIN + width - number - 2 * INSET, top - HEAD + 1.5, number + INSET, Align.RIGHT);
        boolean isTinted = false;
        for (Row row : rows) {
            double height = row.height() + spare;
            if (isTinted) {
                pen.shade(MARGIN, top, width, height, TINT);
            }
            isTinted = !isTinted;
            draw(pen, row, top, height);
            pen.line(MARGIN, top, MARGIN + width, top, LINE);
            top += height;
        }
        pen.line(MARGIN, top, MARGIN + width, top, LINE);
        pen.line(MARGIN, table(), MARGIN, top, LINE);
        pen.line(MARGIN + width, table(), MARGIN + width, top, LINE);
    }

    private void draw(Pen pen, Row row, double top, double height) throws IOException {
        double under = row.under().stream().mapToDouble(FittedText::height).sum();
        double upper = height - under - 2 * row.padding();
        double line = top + row.padding() + (upper - row.left()) / 2;
        for (FittedText one : row.words()) {
            pen.text(one, MARGIN + INSET, line, left, Align.LEFT);
            line += one.height();
        }
        double digits = top + row.padding() + (upper - row.number().height()) / 2;
        pen.text(row.number(), MARGIN + width - number - INSET, digits, number, Align.RIGHT);
        double rule = MARGIN + width - number - 2 * INSET;
        pen.line(rule, top, rule, top + row.padding() + upper - 1, LINE);
        line = top + row.padding() + upper;
        for (FittedText one : row.under()) {
            pen.text(one, MARGIN + INSET, line, width - 2 * INSET, Align.LEFT);
            line += one.height();
        }
    }
}
