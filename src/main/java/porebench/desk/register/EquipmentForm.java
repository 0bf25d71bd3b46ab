package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.desk.form.Texts;
import porebench.record.EquipmentKind;

/** The fields of a piece of equipment. */
final class EquipmentForm implements RecordForm {
    private final EquipmentModel model;
    private final Texts texts;
    private final Form form;
    private final List<Runnable> pulls = new ArrayList<>();
    private final JTextField id;
    private final JComboBox<EquipmentKind> type;
    private final JLabel divisionUnit = new JLabel();
    private final JLabel limitUnit = new JLabel();

    EquipmentForm(EquipmentModel model) {
        this.model = model;
        this.texts = model.texts();
        this.form = new Form(model.desk().tools().problemText());
        id = text("id", new JLabel(), EquipmentDraft::id, EquipmentDraft::withId);
        type = Choices.of(
                "type",
                List.of(EquipmentKind.values()),
                model::typeWords,
                chosen -> update("type", model.draft().withType(chosen)));
        form.add("type", texts.get("equipment.type"), type, "");
        text("description", new JLabel(), EquipmentDraft::description, EquipmentDraft::withDescription);
        text("division", divisionUnit, EquipmentDraft::division, EquipmentDraft::withDivision);
        text("limit", limitUnit, EquipmentDraft::limit, EquipmentDraft::withLimit);
        text("calibratedOn", dayPattern(), EquipmentDraft::calibratedOn, EquipmentDraft::withCalibratedOn);
        text("dueOn", dayPattern(), EquipmentDraft::dueOn, EquipmentDraft::withDueOn);
        text("certificate", new JLabel(), EquipmentDraft::certificate, EquipmentDraft::withCertificate);
        text("usedFrom", dayPattern(), EquipmentDraft::usedFrom, EquipmentDraft::withUsedFrom);
        text("usedUntil", dayPattern(), EquipmentDraft::usedUntil, EquipmentDraft::withUsedUntil);
        text("remarks", new JLabel(), EquipmentDraft::remarks, EquipmentDraft::withRemarks);
    }

    private JLabel dayPattern() {
        return new JLabel(texts.get("equipment.date-pattern"));
    }

    private void update(String field, EquipmentDraft changed) {
        model.history().update(texts.get("equipment." + field + ".plain"), changed);
    }

    private JTextField text(
            String field,
            JLabel unit,
            Function<EquipmentDraft, String> get,
            BiFunction<EquipmentDraft, String, EquipmentDraft> with) {
        JTextField input = new JTextField();
        TextLink link = new TextLink(input, typed -> update(field, with.apply(model.draft(), typed)));
        pulls.add(() -> link.pull(get.apply(model.draft())));
        form.add(field, texts.get("equipment." + field), input, unit);
        return input;
    }

    @Override
    public Form form() {
        return form;
    }

    @Override
    public void pull() {
        pulls.forEach(Runnable::run);
        EquipmentKind kind = model.draft().type();
        if (kind != type.getSelectedItem()) {
            type.setSelectedItem(kind);
        }
        divisionUnit.setText(model.unitWords(kind));
        limitUnit.setText(model.unitWords(kind));
        id.setEditable(model.isNew());
    }
}
