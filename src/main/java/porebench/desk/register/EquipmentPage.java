package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.StateMark;
import porebench.desk.form.History;
import porebench.method.Texts;
import porebench.record.Equipment;

/** The register of equipment. */
public final class EquipmentPage implements Page {
    private static final int MARK_SIDE = 12;

    private final Texts texts;
    private final RecordPage<Equipment> page;

    public EquipmentPage(DeskModel desk) {
        texts = RecordPage.texts(desk);
        EquipmentModel model = new EquipmentModel(desk, texts);
        page = new RecordPage<>(
                model, "equipment", columns(model), () -> model.isNew() ? "" : texts.get("equipment.note"));
    }

    private List<ShownColumn<Equipment>> columns(EquipmentModel model) {
        return List.of(
                new ShownColumn<>(texts.get("equipment.id.plain"), 58, Equipment::recordId),
                new ShownColumn<>(
                        texts.get("equipment.state.heading"),
                        112,
                        model::stateWords,
                        Optional.of(piece -> new StateMark(model.state(piece), MARK_SIDE))),
                new ShownColumn<>(texts.get("equipment.due"), 88, model::standingDueWords),
                new ShownColumn<>(texts.get("equipment.type.plain"), 112, piece -> model.typeWords(piece.type())),
                new ShownColumn<>(texts.get("equipment.division.short"), 92, model::divisionWords),
                new ShownColumn<>(texts.get("equipment.limit.short"), 92, model::standingLimitWords),
                new ShownColumn<>(texts.get("equipment.calibrated"), 90, model::standingDayWords));
    }

    @Override
    public String name() {
        return "equipment";
    }

    @Override
    public String title() {
        return texts.get("equipment.title");
    }

    @Override
    public JComponent component() {
        return page.component();
    }

    @Override
    public boolean hasUnsavedDraft() {
        return page.hasUnsavedDraft();
    }

    @Override
    public void dropDraft() {
        page.dropDraft();
    }

    @Override
    public void save() {
        page.save();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(page.history());
    }
}
