package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.NewerVersion;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.KeptRoom;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.FilterLine;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.desk.table.VersionsTable;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** A register on the left, below it what rests on the record on view; on the right that record: form, what it would change, versions. */
final class RecordPanel<T extends Kept> {
    /** In lines: what changing a source makes untrue, in a small window. */
    private static final int ROOM = 6;

    private final JPanel panel = new JPanel(
            new MigLayout("insets 18 22 14 22, fill", "[grow,fill,0::]24[max(400px,44%)!,fill]", "[][0:0:,grow,fill]"));
    private final RecordModel<T> model;
    private final NewerVersion<T> newer;
    private final Texts texts;
    private final String what;
    private final ColumnForm fields;
    private final RowTable<T> table;
    private final JLabel heading = Form.heading("", "h2");
    private final WrappedText empty;
    private final WrappedText noteText;
    private final WrappedText newerText;
    private final JPanel effectsBox = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final WrappedText effects;
    private final ProblemLines problems;
    private final VersionsTable<T> versions;
    private final JLabel versionsTitle;
    private final Optional<Action> open;
    private final MixLinks usedBy;
    private final RecordSections sections;

    /**
     * Makes the panel.
     *
     * @param newer says what somebody else kept meanwhile
     * @param choose takes the id of the record that a person chose
     * @param open opens a page of the record on view; empty where there is none
     * @param openMix turns the window to a mix that uses the record on view
     * @param sections what stands of the record below the register
     */
    RecordPanel(
            RecordModel<T> model,
            NewerVersion<T> newer,
            List<ShownColumn<T>> columns,
            Action begin,
            Action save,
            Action drop,
            Consumer<String> choose,
            Optional<Action> open,
            Consumer<MixId> openMix,
            RecordSections sections) {
        this.model = model;
        this.sections = sections;
        this.newer = newer;
        this.texts = model.texts();
        this.what = model.what();
        this.open = open;
        usedBy = new MixLinks(what + ".usedBy", texts, openMix);
        fields = new ColumnForm(model, model.desk().tools().problemText()).addAll(model.inForm());
        table = new RowTable<>(what + ".table", texts.get(what + ".title"), columns);
        table.onSelect(chosen -> chosen.ifPresent(record -> {
            choose.accept(record.recordId());
            refresh();
        }));
        empty = new WrappedText(what + ".empty", "quiet", texts.get(what + ".empty"));
        noteText = new WrappedText(what + ".note", "quiet");
        newerText = new WrappedText(what + ".newer", "fieldWarning");
        effects = new WrappedText(what + ".effects", "caution");
        problems = new ProblemLines(what + ".problems", model.desk().tools().problemText());
        versions = new VersionsTable<>(
                what + ".versions",
                texts.locale(),
                model.desk().tools().zone(),
                true,
                (before, after) -> String.join("\n", model.changes(before, after)));
        versionsTitle = Form.heading(texts.get("version.title"), "h2");
        open.ifPresent(action -> table.on("ENTER", action));
        panel.setName(what + ".register");
        panel.add(head(begin), "spanx 2, growx, wrap");
        panel.add(left());
        panel.add(right(save, drop));
    }

    JComponent component() {
        return panel;
    }

    private JComponent head(Action begin) {
        JPanel head = new JPanel(new MigLayout("insets 0 0 12 0, fillx", "[grow,fill,0::]16[]", "[]4[]"));
        head.add(Form.heading(texts.get(what + ".title"), "h1"));
        head.add(Commands.button(what + ".new", begin), "spany 2, aligny top, wrap");
        head.add(new WrappedText(what + ".sentence", "quiet", texts.get(what + ".sentence")), "wmin 0");
        return head;
    }

    private JComponent left() {
        boolean hasSections = sections != RecordSections.NONE;
        JPanel left = new JPanel(new MigLayout(
                "insets 0, fill, wrap 1, hidemode 3",
                "[grow,fill,0::]",
                hasSections ? "[][][grow 40,fill,0::]12[grow 60,fill,0::]" : "[][][grow,fill]"));
        left.add(empty, "wmin 0");
        left.add(new FilterLine(table, texts.locale()).component(), "wmin 0");
        left.add(new JScrollPane(table), "cell 0 2, wmin 0, hmin 0, grow, push" + (hasSections ? ", h 40%" : ""));
        if (hasSections) {
            TallPanel below = new TallPanel(new MigLayout("insets 0 0 8 4, fillx", "[grow,fill,0::]"));
            below.add(sections.component(), "wmin 0");
            left.add(below.scrolled(), "cell 0 3, wmin 0, hmin 0, grow, push, h 60%");
        }
        return left;
    }

    private JComponent right(Action save, Action drop) {
        TallPanel right = new TallPanel(
                new MigLayout("insets 0 0 8 4, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]6[]6[]6[]10[]14[]"));
        effectsBox.setOpaque(false);
        effectsBox.add(effects, "wmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
        buttons.add(newer.button(what + ".save", save));
        buttons.add(Commands.button(what + ".drop", drop));
        right.add(heading, "split 2, wmin 0, growx");
        open.ifPresentOrElse(
                action -> right.add(Commands.button(what + ".open", action), "growx 0"),
                () -> right.add(new JLabel(), "growx 0"));
        right.add(fields.panel());
        right.add(buttons);
        right.add(new KeptRoom(said(), ROOM), "wmin 0");
        right.add(usedBy.component(), "wmin 0");
        right.add(versionsTitle);
        right.add(versions.component(), "wmin 0");
        JScrollPane scroll = right.scrolled();
        scroll.setName(what + ".record");
        return scroll;
    }

    /** Puts the caret where a record begins. */
    void focusFirst() {
        fields.field(model.inForm().get(0).field()).requestFocusInWindow();
    }

    /** Makes what is said of the draft as a whole, which comes and goes below the buttons. */
    private JComponent said() {
        JPanel said = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 4", "[grow,fill,0::]"));
        said.setOpaque(false);
        said.add(newerText, "wmin 0");
        said.add(problems.panel(), "wmin 0");
        said.add(effectsBox, "wmin 0");
        said.add(noteText, "wmin 0");
        return said;
    }

    /** Shows the register and the draft as they are. */
    void refresh() {
        List<T> records = model.rows().stream().map(Version::value).toList();
        table.show(records);
        table.select(record -> model.base()
                .filter(version -> version.value().recordId().equals(record.recordId()))
                .isPresent());
        empty.setVisible(records.isEmpty());
        heading.setText(model.base()
                .map(version ->
                        texts.get("record.heading", version.value().recordId(), Integer.toString(version.number())))
                .orElse(texts.get(what + ".new.heading")));
        fields.pull();
        problems.show(fields.show(model.problems()));
        Optional<String> untrue = model.effects();
        effects.setText(untrue.orElse(""));
        effectsBox.setVisible(untrue.isPresent());
        newerText.say(newer.words());
        noteText.say(model.note());
        usedBy.show(model.usedBy());
        sections.refresh();
        versions.show(model.versions());
        versionsTitle.setVisible(!model.isNew());
        versions.component().setVisible(!model.isNew());
        open.ifPresent(action -> action.setEnabled(!model.isNew()));
    }
}
