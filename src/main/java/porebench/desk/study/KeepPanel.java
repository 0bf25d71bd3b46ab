package porebench.desk.study;

import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Asker;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;

/** The form in which a study is kept: its name, title, day, who made it and remarks. */
final class KeepPanel {
    private final KeepModel model;
    private final StudyModel studies;
    private final Texts texts;
    private final ColumnForm form;
    private final ProblemLines others;
    private final WrappedText heading = new WrappedText("keep.heading", "h2");
    private final Action save;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 12, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill,0:600:700]"));

    KeepPanel(StudyModel studies) {
        this.studies = studies;
        this.model = studies.keeping();
        this.texts = studies.texts();
        this.form = new ColumnForm(model, studies.desk().tools().problemText()).addAll(KeepModel.TYPED);
        this.others = new ProblemLines("keep.problems", studies.desk().tools().problemText()).keepingRoom(1);
        save = Commands.of(texts.get("keep.save"), this::save);
        panel.putClientProperty("FlatLaf.styleClass", "box");
        panel.add(heading, "wmin 0");
        form.panel().setOpaque(false);
        panel.add(form.panel());
        panel.add(others.panel(), "wmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]8[]"));
        buttons.setOpaque(false);
        buttons.add(Commands.button("keep.save", save));
        buttons.add(Commands.button("keep.drop", Commands.of(texts.get("keep.drop"), this::drop)));
        panel.add(buttons);
        model.history().onChange(this::refresh);
        refresh();
    }

    JComponent component() {
        return panel;
    }

    /** Begins to keep the study on view. */
    void begin() {
        model.begin();
        refresh();
        form.field(KeepModel.ID.field()).requestFocusInWindow();
    }

    void drop() {
        model.close();
        refresh();
    }

    void refresh() {
        panel.setVisible(model.isOpen());
        form.pull();
        if (model.isOpen()) {
            heading.setText(model.base()
                    .map(before -> texts.get(
                            "keep.heading-again",
                            before.value().recordId(),
                            Integer.toString(before.number() + 1),
                            studies.subject()))
                    .orElseGet(() -> texts.get("keep.heading", studies.subject())));
            others.show(form.show(model.problems()));
        }
        save.setEnabled(!model.isUnderWay());
        panel.revalidate();
    }

    private Asker asker() {
        return studies.desk().tools().asker();
    }

    /** Keeps it before anything else is done: for somebody who wants to leave, and may once it is kept. */
    void saveToTheEnd() {
        save();
        if (model.isUnderWay()) {
            SecondaryLoop waiting =
                    Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
            model.whenEnded(waiting::exit);
            waiting.enter();
        }
    }

    /** Keeps it; a correction is asked why, and what must be corrected is shown. */
    void save() {
        boolean isGood = model.tryKeeping();
        refresh();
        if (!isGood) {
            return;
        }
        String title = texts.get("keep.question");
        Optional<String> why = model.base().isEmpty()
                ? Optional.of(texts.get("keep.first"))
                : asker().reason(panel, title, texts.get("keep.why"), texts.get("keep.act"));
        if (why.isEmpty() || asker().person(panel).isEmpty()) {
            return;
        }
        model.keep(
                why.get(),
                refused -> {
                    refresh();
                    if (!refused.isEmpty()) {
                        asker().problems(panel, title, refused);
                    }
                },
                failure -> {
                    refresh();
                    asker().failure(panel, texts.get("keep.doing"), failure);
                });
        refresh();
    }
}
