package porebench.desk.register;

import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.SourceMeasurement;
import porebench.record.book.Version;

/** The form in which a measurement of a source is entered or corrected. */
final class MeasurementForm {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final MeasurementModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final JLabel title = Form.heading("", "h3");
    private final ColumnForm form;
    private final ProblemLines lines;
    private final Action drop;

    MeasurementForm(SourcesModel sources) {
        model = new MeasurementModel(sources);
        desk = sources.desk();
        texts = model.texts();
        form = new ColumnForm(model, desk.tools().problemText()).addAll(MeasurementModel.TYPED);
        // The form of the source has fields of the same names.
        MeasurementModel.TYPED.forEach(column -> form.field(column.field()).setName("measured." + column.field()));
        nameMessages(form.panel());
        lines = new ProblemLines("measured.problems", desk.tools().problemText());
        drop = Commands.of(texts.get("measured.drop"), model::begin);
        JButton keep = Commands.button("measured.keep", Commands.of(texts.get("measured.keep"), this::keep));
        form.then(keep::requestFocusInWindow);
        title.setName("measured.title");
        panel.setName("measured.form");
        panel.setOpaque(false);
        panel.add(title);
        panel.add(form.panel(), "wmin 0, wmax 560");
        JPanel buttons = new JPanel(new MigLayout("insets 0"));
        buttons.setOpaque(false);
        buttons.add(keep);
        buttons.add(Commands.button("measured.drop", drop));
        panel.add(buttons);
        panel.add(lines.panel(), "wmin 0");
        model.history().onChange(this::refresh);
    }

    private static void nameMessages(Container parts) {
        for (Component part : parts.getComponents()) {
            if (part.getName() != null && part.getName().endsWith(".message")) {
                part.setName("measured." + part.getName());
            }
            if (part instanceof Container inner) {
                nameMessages(inner);
            }
        }
    }

    JComponent component() {
        return panel;
    }

    /** Begins the correction of a measurement. */
    void correct(Version<SourceMeasurement> version) {
        model.correct(version);
        form.field(MeasurementModel.TYPED.get(0).field()).requestFocusInWindow();
    }

    void refresh() {
        model.follow();
        Optional<SourceMeasurement> corrected = model.corrected();
        title.setText(corrected
                .map(one -> texts.get("measured.correcting", one.id().text()))
                .orElseGet(() -> texts.get("measured.new")));
        drop.setEnabled(corrected.isPresent() || model.history().isChanged());
        form.pull();
        List<Problem> rest = form.show(model.problems());
        lines.show(rest);
        panel.revalidate();
    }

    private void keep() {
        boolean isGood = model.canKeep();
        refresh();
        if (!isGood || desk.tools().asker().person(panel).isEmpty()) {
            return;
        }
        if (model.corrected().isEmpty()) {
            keep(texts.get("measured.why"));
        } else {
            desk.tools()
                    .asker()
                    .reason(
                            panel,
                            texts.get("measured.correct"),
                            texts.get("measured.question"),
                            texts.get("measured.keep"))
                    .ifPresent(this::keep);
        }
    }

    private void keep(String why) {
        model.keep(why, refused -> {
            refresh();
            if (!refused.isEmpty()) {
                lines.show(refused);
            }
        });
    }
}
