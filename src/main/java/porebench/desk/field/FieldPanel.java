package porebench.desk.field;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.NewerVersion;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.SteadyButton;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.FieldReading;
import porebench.record.column.Column;
import porebench.record.column.FieldReadingColumns;

/** The form of one reading, in two columns of fields that Enter goes through, with what the reading comes to below them. */
final class FieldPanel {
    private final FieldEntry entry;
    private final FieldWords words;
    private final Texts texts;
    private final Numbers numbers;
    private final ProblemText problemText;
    private final ColumnForm load;
    private final ColumnForm read;
    private final JLabel title = Form.heading("", "h2");
    private final WrappedText comesTo = new WrappedText("reading.comes-to", "answer");
    private final WrappedText newerText = new WrappedText("reading.newer", "fieldWarning");
    private final ProblemLines others;
    private final NewerVersion<FieldReading> newer;
    private final SteadyButton save;
    private final SteadyButton clear;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]8[]6[]6[]"));

    /**
     * Makes the form.
     *
     * @param words says how a reading is judged
     * @param newer says what somebody else kept meanwhile
     * @param saving saves what is typed
     * @param clearing empties the form
     */
    FieldPanel(FieldEntry entry, FieldWords words, NewerVersion<FieldReading> newer, Action saving, Action clearing) {
        this.entry = entry;
        this.words = words;
        this.newer = newer;
        this.texts = entry.texts();
        this.numbers = entry.desk().tools().numbers();
        this.problemText = entry.desk().tools().problemText();
        load = new ColumnForm(entry, problemText);
        read = new ColumnForm(entry, problemText);
        load.addAll(FieldEntry.LOAD);
        read.addAll(FieldEntry.READ);
        // Enter never goes where a number typed without looking would be lost, nor to the time, which is now.
        load.passingBy(FieldReadingColumns.METER)
                .passingBy(FieldReadingColumns.READ_AT)
                .then(() -> read.field(FieldReadingColumns.GAUGE.field()).requestFocusInWindow());
        read.then(() -> saving.actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, "")));
        meterBox();
        others = new ProblemLines("reading.problems", problemText);
        save = newer.button("reading.save", saving);
        clear = Commands.button("reading.clear", clearing);
        title.setName("reading.title");
        panel.setName("reading.form");
        panel.setOpaque(false);
        panel.add(title);
        panel.add(fields(), "wmin 0");
        panel.add(below(), "wmin 0");
        panel.add(newerText, "wmin 0");
        panel.add(others.panel(), "wmin 0");
    }

    /** As narrow as the other fields; the list is as wide as the longest name. */
    @SuppressWarnings("unchecked") // The field of a column that is chosen is a box of its symbols.
    private void meterBox() {
        ((JComboBox<String>) load.field(FieldReadingColumns.METER.field())).setPrototypeDisplayValue("M");
    }

    private JComponent fields() {
        JPanel both = new JPanel(new MigLayout("insets 0, fillx", "[grow 50,fill,0:0:]28[grow 50,fill,0:0:]", "[top]"));
        both.setOpaque(false);
        load.panel().setOpaque(false);
        read.panel().setOpaque(false);
        both.add(load.panel(), "wmin 0");
        both.add(read.panel(), "wmin 0");
        return both;
    }

    private JComponent below() {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx", "[]8[]18[grow,fill,0:0:]", "[top]"));
        line.setOpaque(false);
        line.add(save);
        line.add(clear);
        line.add(comesTo.keepingRoom(2), "wmin 0, " + WrappedText.ROOM_KEPT);
        return line;
    }

    JComponent component() {
        return panel;
    }

    private JComponent field(Column<?, ?> column) {
        return (FieldEntry.LOAD.contains(column) ? load : read).field(column.field());
    }

    /** Puts the caret where a reading begins: to the mix while none is typed, else to the truck. */
    void begin() {
        boolean hasMix = !entry.draft().text(FieldReadingColumns.MIX).isBlank();
        JComponent place = field(hasMix ? FieldReadingColumns.TRUCK : FieldReadingColumns.MIX);
        place.requestFocusInWindow();
        if (place instanceof JTextField text) {
            text.selectAll();
        }
    }

    /** Puts the caret into the first field with a problem that forbids keeping. */
    void goTo(List<Problem> errors) {
        List<Column<?, ?>> all = new ArrayList<>(FieldEntry.LOAD);
        all.addAll(FieldEntry.READ);
        all.stream()
                .filter(column -> errors.stream()
                        .anyMatch(
                                problem -> problem.isError() && problem.field().equals(column.field())))
                .findFirst()
                .ifPresent(column -> field(column).requestFocusInWindow());
    }

    /** Shows the form as it is, with the problems under its fields. */
    void refresh() {
        boolean isCorrection = !entry.isNew();
        title.setText(entry.base()
                .map(version -> texts.get("title.correct", version.value().recordId()))
                .orElseGet(() -> texts.get("title.new")));
        load.pull();
        read.pull();
        others.show(read.show(load.show(entry.problems())));
        newerText.say(newer.words());
        Commands.say(save.getAction(), newer.act(texts.get(isCorrection ? "act.save-correction" : "act.save")));
        Commands.say(clear.getAction(), texts.get(isCorrection ? "act.end-correction" : "act.clear"));
        save.setEnabled(!isCorrection || entry.history().isChanged());
        clear.setEnabled(isCorrection || entry.history().isChanged());
        comesTo.say(entry.held().flatMap(this::comesTo).orElse(""));
    }

    /** Says what the reading comes to: the air and the verdict, or why it would be marked. */
    private Optional<String> comesTo(FieldGate.Held held) {
        if (!held.errors().isEmpty()) {
            return Optional.empty();
        }
        Optional<String> air = held.air()
                .map(made -> texts.get(
                                "comes-to.air",
                                numbers.show(held.reading().gaugePercent()),
                                numbers.show(made.factorPercent()),
                                Integer.toString(made.revision()),
                                numbers.show(made.reportedPercent()),
                                words.verdict(made))
                        + words.spread(made).map(said -> " " + said).orElse(""));
        return air.or(() -> Optional.of(held.marks())
                .filter(marks -> !marks.isEmpty())
                .map(marks -> texts.get(
                        "comes-to.marked", marks.stream().map(problemText::say).collect(Collectors.joining(" ")))));
    }
}
