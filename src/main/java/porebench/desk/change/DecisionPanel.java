package porebench.desk.change;

import java.util.List;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.column.DecisionColumns;

/** The form in which a person decides on a comparison, and below it what was decided before. */
final class DecisionPanel {
    private static final int MOST_ROWS = 6;

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final JPanel deciding = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final DeskModel desk;
    private final DecisionModel model;
    private final Texts texts;
    private final ProblemText problemText;
    private final JComponent over;
    private final ColumnForm form;
    private final ProblemLines lines;
    private final WrappedText next = new WrappedText("decision.next", "h4");
    private final RowTable<DecisionModel.Made> table;
    private final JScrollPane scroll;

    /**
     * Makes the panel.
     *
     * @param change the comparison that is decided on
     * @param over the section, for dialogs to stand over
     */
    DecisionPanel(ChangeModel change, JComponent over) {
        desk = change.desk();
        model = new DecisionModel(change);
        texts = model.texts();
        problemText = desk.tools().problemText();
        this.over = over;
        form = new ColumnForm(model, problemText).addAll(DecisionModel.TYPED);
        lines = new ProblemLines("decision.problems", problemText);
        table = new RowTable<>("change.decisions", texts.get("decision.made"), columns());
        table.setMostRows(MOST_ROWS);
        scroll = table.scrolled();
        Action keep = Commands.of(texts.get("decision.keep"), this::keep);
        panel.setName("decision");
        panel.setOpaque(false);
        deciding.setOpaque(false);
        deciding.add(Form.heading(texts.get("decision.title"), "h3"));
        deciding.add(form.panel(), "wmin 0, wmax 640");
        // The factor page has a field of the same name.
        DecisionModel.TYPED.forEach(column -> form.field(column.field()).setName("decision." + column.field()));
        JButton button = Commands.button("decision.keep", keep);
        form.then(button::requestFocusInWindow);
        deciding.add(button, "growx 0, gaptop 4");
        deciding.add(lines.panel(), "wmin 0");
        panel.add(deciding, "wmin 0");
        panel.add(next, "wmin 0");
        panel.add(scroll, "wmin 0, gaptop 4");
        // What is typed here alters nothing above it, which would be laid out anew under the eyes of who types.
        model.history().onChange(this::show);
    }

    JComponent component() {
        return panel;
    }

    private List<ShownColumn<DecisionModel.Made>> columns() {
        return List.of(
                new ShownColumn<>(
                        texts.get("decision.id"),
                        90,
                        made -> made.decision().id().text()),
                new ShownColumn<>(texts.get("decision.column"), 110, made -> model.choiceWords(made.decision())),
                new ShownColumn<>(
                        texts.get("decision.verdict"),
                        110,
                        made -> texts.get("decision.choice."
                                + made.decision().figures().verdict().symbol())),
                new ShownColumn<DecisionModel.Made>(
                                texts.get("decision.margin"),
                                80,
                                made -> desk.tools()
                                        .numbers()
                                        .show(made.decision().figures().margin()))
                        .number()
                        .sortedBy(made -> made.decision().figures().margin()),
                new ShownColumn<DecisionModel.Made>(
                                texts.get("decision.on"),
                                90,
                                made -> Days.show(made.decision().decidedOn()))
                        .sortedBy(made -> made.decision().decidedOn()),
                new ShownColumn<>(
                        texts.get("decision.by"), 110, made -> made.decision().decidedBy()),
                new ShownColumn<DecisionModel.Made>(
                                texts.get("decision.why"),
                                200,
                                made -> made.decision().reason())
                        .wrapped(),
                new ShownColumn<>(texts.get("decision.since"), 220, this::since).wrapped());
    }

    private String since(DecisionModel.Made made) {
        return made.since().stream().map(problemText::say).collect(Collectors.joining(" "));
    }

    void show() {
        model.follow();
        deciding.setVisible(model.isOpen());
        form.pull();
        form.setVisible(DecisionColumns.MORE, model.asksForMore());
        List<Problem> rest = form.show(model.problems());
        lines.show(rest);
        next.say(model.next());
        List<DecisionModel.Made> made = model.made();
        if (!made.equals(table.shown())) {
            table.clearSelection();
            table.show(made);
        }
        scroll.setVisible(!made.isEmpty());
        panel.revalidate();
        panel.repaint();
    }

    private void keep() {
        if (!model.isOpen() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        model.keep(refused -> show());
    }
}
