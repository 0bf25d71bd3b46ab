package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.desk.form.Texts;
import porebench.method.MeterType;
import porebench.quantity.VolumeUnit;

/** The fields of a meter. */
final class MeterForm implements RecordForm {
    private static final List<VolumeUnit> BOWL_UNITS = List.of(
            VolumeUnit.LITRE,
            VolumeUnit.MILLILITRE,
            VolumeUnit.CUBIC_FOOT,
            VolumeUnit.CUBIC_INCH,
            VolumeUnit.CUBIC_METRE);

    private final MetersModel model;
    private final Texts texts;
    private final Form form;
    private final List<Runnable> pulls = new ArrayList<>();
    private final JTextField id;
    private final JComboBox<MeterType> type;
    private final JComboBox<VolumeUnit> bowlUnit;
    private final JCheckBox inService = new JCheckBox();

    MeterForm(MetersModel model) {
        this.model = model;
        this.texts = model.texts();
        this.form = new Form(model.desk().tools().problemText());
        id = text("id", new JLabel(), MeterDraft::id, MeterDraft::withId);
        type = Choices.of(
                "type",
                List.of(MeterType.values()),
                model::typeWords,
                chosen -> update("type", model.draft().withType(chosen)));
        form.add("type", texts.get("meter.type"), type, "");
        text("serial", new JLabel(), MeterDraft::serial, MeterDraft::withSerial);
        bowlUnit = Choices.ofUnits(
                "bowlUnit", BOWL_UNITS, chosen -> update("bowl", model.draft().withBowlUnit(chosen)));
        bowlUnit.getAccessibleContext().setAccessibleName(texts.get("meter.bowlUnit"));
        text("bowl", bowlUnit, MeterDraft::bowl, MeterDraft::withBowl);
        text("division", percent(), MeterDraft::division, MeterDraft::withDivision);
        text("scaleTop", percent(), MeterDraft::scaleTop, MeterDraft::withScaleTop);
        inService.setText(texts.get("meter.service.tick"));
        inService.addActionListener(event -> update("inService", model.draft().withInService(inService.isSelected())));
        form.add("inService", texts.get("meter.inService"), inService, "");
        text("remarks", new JLabel(), MeterDraft::remarks, MeterDraft::withRemarks);
    }

    private JLabel percent() {
        return new JLabel(texts.get("meter.percent-air"));
    }

    private void update(String field, MeterDraft changed) {
        model.history().update(texts.get("meter." + field + ".plain"), changed);
    }

    private JTextField text(
            String field,
            JComponent unit,
            Function<MeterDraft, String> get,
            BiFunction<MeterDraft, String, MeterDraft> with) {
        JTextField input = new JTextField();
        TextLink link = new TextLink(input, typed -> update(field, with.apply(model.draft(), typed)));
        pulls.add(() -> link.pull(get.apply(model.draft())));
        form.add(field, texts.get("meter." + field), input, unit);
        return input;
    }

    @Override
    public Form form() {
        return form;
    }

    @Override
    public void pull() {
        pulls.forEach(Runnable::run);
        MeterDraft draft = model.draft();
        if (draft.type() != type.getSelectedItem()) {
            type.setSelectedItem(draft.type());
        }
        if (draft.bowlUnit() != bowlUnit.getSelectedItem()) {
            if (BOWL_UNITS.indexOf(draft.bowlUnit()) < 0) {
                bowlUnit.addItem(draft.bowlUnit());
            }
            bowlUnit.setSelectedItem(draft.bowlUnit());
        }
        inService.setSelected(draft.inService());
        id.setEditable(model.isNew());
    }
}
