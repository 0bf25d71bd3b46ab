package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.desk.form.TypedDraft;
import porebench.record.Kept;
import porebench.record.column.Column;

/** The fields of one record, one a column in the order of the columns, linked to its draft. */
final class ColumnForm<T extends Kept> {
    private final RecordModel<T> model;
    private final Form form;
    private final List<Runnable> pulls = new ArrayList<>();

    ColumnForm(RecordModel<T> model) {
        this.model = model;
        this.form = new Form(model.desk().tools().problemText());
        model.columns().all().forEach(this::add);
    }

    private void add(Column<T, ?> column) {
        String label = model.texts().get(model.key(column));
        if (!column.type().choices().isEmpty()) {
            form.add(column.field(), label, choices(column), "");
        } else if (column.type().isYesNo()) {
            form.add(column.field(), label, tick(column), "");
        } else {
            form.add(column.field(), label, text(column), column.hasUnit() ? units(column) : unit(column));
        }
    }

    private void update(Column<T, ?> column, TypedDraft changed) {
        model.history().update(model.words(column), changed);
    }

    private JTextField text(Column<T, ?> column) {
        JTextField input = new JTextField();
        TextLink link =
                new TextLink(input, typed -> update(column, model.draft().with(column, typed)));
        boolean isName = column.equals(model.columns().all().get(0));
        pulls.add(() -> {
            link.pull(model.draft().text(column));
            input.setEditable(!isName || model.isNew());
        });
        return input;
    }

    private JComboBox<String> choices(Column<T, ?> column) {
        JComboBox<String> box = Choices.of(
                column.field(),
                column.type().choices(),
                symbol -> model.choiceWords(column, symbol),
                symbol -> update(column, model.draft().with(column, symbol)));
        pulls.add(() -> choose(box, model.draft().text(column)));
        return box;
    }

    private JComboBox<String> units(Column<T, ?> column) {
        JComboBox<String> box = Choices.of(
                column.field() + "Unit",
                column.type().units(),
                symbol -> symbol,
                symbol -> update(column, model.draft().withUnit(column, symbol)));
        box.getAccessibleContext().setAccessibleName(model.texts().get(model.key(column) + "Unit"));
        pulls.add(() -> choose(box, model.draft().unit(column)));
        return box;
    }

    private static void choose(JComboBox<String> box, String symbol) {
        if (!symbol.equals(box.getSelectedItem())) {
            box.setSelectedItem(symbol);
        }
    }

    private JCheckBox tick(Column<T, ?> column) {
        JCheckBox box = new JCheckBox(model.texts().get(model.key(column) + ".tick"));
        box.addActionListener(event -> update(column, model.draft().with(column, box.isSelected())));
        pulls.add(() -> box.setSelected(model.draft().isYes(column)));
        return box;
    }

    private JComponent unit(Column<T, ?> column) {
        JLabel unit = new JLabel();
        pulls.add(() -> unit.setText(model.unitWords(column, model.draft())));
        return unit;
    }

    /** Returns the rows. */
    Form form() {
        return form;
    }

    /** Shows the draft in the fields. */
    void pull() {
        pulls.forEach(Runnable::run);
    }
}
