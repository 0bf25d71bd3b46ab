package porebench.print.page;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import porebench.method.Profile;
import porebench.record.Laboratory;

/**
 * A sheet, or a part of one, and what all have in common: the head, sections, rows of facts, tables, the place to sign, and whose
 * rules are followed.
 */
public abstract class PrintedSheet {
    private static final double GAP = 7;
    private static final double SIGNATURE = 20;

    protected final Flow flow;
    protected final Words words;
    protected final PrintedFigures figures;

    /** Where the rule of the head was drawn, in points from the top. */
    protected double ruleBelowHead;

    protected PrintedSheet(Flow flow, Words words) {
        this.flow = flow;
        this.words = words;
        this.figures = new PrintedFigures(words);
    }

    /** Draws the laboratory and the kind of sheet over a rule, and below it what the sheet is about. */
    protected void head(Optional<Laboratory> laboratory, String kind, String subject) throws IOException {
        head(laboratory, kind, subject, 0);
    }

    /**
     * Draws a head that leaves room at the right of its subject.
     *
     * @param beside how wide the room is, in points
     */
    protected void head(Optional<Laboratory> laboratory, String kind, String subject, double beside)
            throws IOException {
        double half = flow.width() / 2 - 4;
        FittedText name = TextFit.first(
                flow.faces(),
                laboratory.map(Laboratory::name).orElse(""),
                new TextFit(Weight.BOLD, 11, 8, half, 1),
                new TextFit(Weight.BOLD, 9, 6.5, half, 2));
        FittedText right = TextFit.line(Weight.REGULAR, 11, half).fit(flow.faces(), kind);
        flow.pen().text(name, flow.left(), flow.top(), half, Align.LEFT);
        flow.pen().text(right, flow.left() + half + 8, flow.top(), half, Align.RIGHT);
        flow.down(Math.max(name.height(), right.height()) + 1);
        flow.pen().line(flow.left(), flow.top(), flow.left() + flow.width(), flow.top(), 1);
        ruleBelowHead = flow.top();
        flow.down(3);
        flow.text(new TextFit(Weight.BOLD, 20, 10, flow.width() - beside, 2), subject);
    }

    /** Begins a section whose heading stays with a height below it. */
    protected void section(String key, double below) throws IOException {
        flow.down(GAP);
        flow.keepTogether(18 + below);
        flow.text(TextFit.line(Weight.BOLD, 12, flow.width()), words.say(key));
        flow.down(2);
    }

    /** Draws facts side by side. */
    protected void facts(List<Facts.Fact> list) throws IOException {
        facts(11, list, 3);
    }

    /** Draws labels, each over a line to write on. */
    protected void toWrite(double size, List<String> labels) throws IOException {
        facts(size, labels.stream().map(label -> fact(label, "", 1)).toList(), 6);
    }

    /** Draws facts side by side. */
    protected void facts(Facts.Fact... list) throws IOException {
        facts(List.of(list));
    }

    private void facts(double size, List<Facts.Fact> list, double below) throws IOException {
        flow.need(new Facts(flow.pen(), size, flow.width(), list).height());
        // Only now is it settled which page they stand on.
        Facts facts = new Facts(flow.pen(), size, flow.width(), list);
        facts.draw(flow.left(), flow.top());
        flow.down(facts.height() + below);
    }

    protected Facts.Fact fact(String label, String value, double share) {
        return new Facts.Fact(words.say(label), value, share);
    }

    /** Makes a column of a table, its heading filled with some values. */
    protected PageTable.Column column(String key, double share, Align align, Object... filled) {
        return new PageTable.Column(words.say(key, filled), share, align, Weight.REGULAR);
    }

    /** Begins a table whose heading stays with a row below it. */
    protected PageTable table(double row, PageTable.Column... columns) throws IOException {
        PageTable table = new PageTable(flow, List.of(columns));
        table.heading(row);
        return table;
    }

    /** Draws cautions one below the other. */
    protected void cautions(List<String> keys) throws IOException {
        for (String key : keys) {
            CautionBox.draw(flow, words.say(key), 4);
        }
    }

    /** Draws lines to sign on, a date beside each, and makes sure of a height below them. */
    protected void signatures(List<String> keys, double below) throws IOException {
        flow.down(GAP);
        flow.need(SIGNATURE + below);
        List<Facts.Fact> lines = keys.stream()
                .flatMap(key -> List.of(fact(key, "", 1.6), fact("sheet.date", "", 1)).stream())
                .toList();
        Facts signature = new Facts(flow.pen(), SIGNATURE, flow.width(), lines);
        signature.draw(flow.left(), flow.top());
        flow.down(signature.height() + GAP);
    }

    /** Draws a small text. */
    protected void small(String text) throws IOException {
        flow.text(new TextFit(Weight.REGULAR, 8, 6.5, flow.width(), 3), text);
    }

    /** Draws whose rules the sheet follows, and who decides. */
    protected void authority(Profile profile) throws IOException {
        small(words.say("sheet.authority", profile.title(), words.source(profile.edition())));
    }
}
