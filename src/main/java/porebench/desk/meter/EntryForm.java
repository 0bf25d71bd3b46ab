package porebench.desk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.quantity.Unit;
import porebench.record.MeterCalibration;

/** The fields of a calibration outside its tables, in one form a section. */
final class EntryForm {
    private final MeterModel model;
    private final EntryModel entry;
    private final Texts texts;
    private final Form general;
    private final Form bowl;
    private final Form vessel;
    private final Form dial;
    private final Form column;
    private final List<Runnable> pulls = new ArrayList<>();
    private final JTextField first;
    private final JTextField id;
    private final JComboBox<MeterCalibration.Reason> reason;
    private final JCheckBox buoyancy = new JCheckBox();
    private final JComboBox<Unit<?>> fillUnit;

    EntryForm(MeterModel model, ProblemText problemText) {
        this.model = model;
        this.entry = model.entry();
        this.texts = model.texts();
        general = new Form(problemText);
        bowl = new Form(problemText);
        vessel = new Form(problemText);
        dial = new Form(problemText);
        column = new Form(problemText);
        first = text(general, CalibrationField.DATE, texts.get("hint.date"));
        text(general, CalibrationField.BY, "");
        reason = Choices.of(
                "reason",
                List.of(MeterCalibration.Reason.values()),
                model::reasonWords,
                chosen -> entry.update("name.reason", entry.draft().with(chosen)));
        general.add("reason", texts.get("label.reason"), reason, "");
        text(general, CalibrationField.ELEVATION, "m");
        id = text(general, CalibrationField.ID, "");
        text(general, CalibrationField.REMARKS, "");
        fillUnit = units(CalibrationField.FILL_MASS);
        buoyancy.setText(texts.get("buoyancy.tick"));
        buoyancy.addActionListener(
                event -> entry.update("name.bowl.buoyancy", entry.draft().withBuoyancy(buoyancy.isSelected())));
        bowl.add("bowl.buoyancy", texts.get("label.bowl.buoyancy"), buoyancy, "");
        text(bowl, CalibrationField.AIR_TEMPERATURE, "°C");
        text(bowl, CalibrationField.AIR_PRESSURE, "kPa");
        text(bowl, CalibrationField.DIAMETER, "mm");
        text(bowl, CalibrationField.HEIGHT, "mm");
        quantity(vessel, CalibrationField.VESSEL_WATER);
        text(vessel, CalibrationField.WATER_TEMPERATURE, "°C");
        text(dial, CalibrationField.INITIAL_LINE, texts.get("percent-air"));
        text(dial, CalibrationField.LEAK, texts.get("marks"));
        quantity(dial, CalibrationField.CHAMBER);
        quantity(dial, CalibrationField.INITIAL_PRESSURE);
        quantity(column, CalibrationField.COLUMN_VESSEL);
        quantity(column, CalibrationField.COLUMN_BOWL);
        text(column, CalibrationField.EXPANSION, texts.get("percent-air"));
        quantity(column, CalibrationField.WORKING_PRESSURE);
    }

    private JTextField text(Form form, CalibrationField field, String unit) {
        return text(form, field, new JLabel(unit));
    }

    private void quantity(Form form, CalibrationField field) {
        text(form, field, units(field));
    }

    private JTextField text(Form form, CalibrationField field, JComponent unit) {
        JTextField input = new JTextField();
        TextLink link = new TextLink(input, typed -> entry.type(field, typed));
        pulls.add(() -> link.pull(entry.draft().text(field)));
        form.add(field.field(), texts.get("label." + field.field()), input, unit);
        return input;
    }

    private JComboBox<Unit<?>> units(CalibrationField field) {
        JComboBox<Unit<?>> box = Choices.of(field.field() + ".unit", field.units(), Unit::symbol, chosen -> {
            if (!chosen.symbol().equals(entry.draft().unit(field))) {
                entry.update("name." + field.field(), entry.draft().withUnit(field, chosen.symbol()));
            }
        });
        box.getAccessibleContext().setAccessibleName(texts.get("unit-of", texts.get("name." + field.field())));
        pulls.add(() -> field.units().stream()
                .filter(unit -> unit.symbol().equals(entry.draft().unit(field)))
                .filter(unit -> !Objects.equals(unit, box.getSelectedItem()))
                .findFirst()
                .ifPresent(box::setSelectedItem));
        return box;
    }

    Form general() {
        return general;
    }

    Form bowl() {
        return bowl;
    }

    Form vessel() {
        return vessel;
    }

    Form dial() {
        return dial;
    }

    Form column() {
        return column;
    }

    /** Returns the box with the unit of masses in the table of fills. */
    JComboBox<Unit<?>> fillUnit() {
        return fillUnit;
    }

    void focusFirst() {
        first.requestFocusInWindow();
    }

    /** Shows the draft. */
    void pull() {
        pulls.forEach(Runnable::run);
        CalibrationDraft draft = entry.draft();
        if (draft.reason() != reason.getSelectedItem()) {
            reason.setSelectedItem(draft.reason());
        }
        buoyancy.setSelected(draft.buoyancy());
        id.setEditable(entry.base().isEmpty());
    }

    /** Shows each problem under its field, and returns those without a field here. */
    List<Problem> show(List<Problem> problems) {
        List<Problem> others = problems;
        for (Form form : List.of(general, bowl, vessel, dial, column)) {
            others = form.show(others);
        }
        return others;
    }
}
