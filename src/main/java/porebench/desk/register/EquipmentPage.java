package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.StateMark;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Equipment;
import porebench.record.column.EquipmentColumns;

/** The register of equipment. */
public final class EquipmentPage extends RecordPage<Equipment> {
    private static final int MARK_SIDE = 12;

    public EquipmentPage(DeskModel desk) {
        this(new EquipmentModel(desk, texts(desk)));
    }

    private EquipmentPage(EquipmentModel model) {
        super(model, columns(model, model.texts()), Optional.empty());
    }

    private static List<ShownColumn<Equipment>> columns(EquipmentModel model, Texts texts) {
        return List.of(
                shown(model, EquipmentColumns.ID, 58).sortedBy(Equipment::recordId),
                new ShownColumn<>(texts.get("equipment.state.heading"), 112, model::stateWords)
                        .mark((piece, selected) -> new StateMark(model.state(piece), MARK_SIDE))
                        .sortedBy(model::state),
                new ShownColumn<>(texts.get("equipment.due"), 88, model::standingDueWords),
                shown(model, EquipmentColumns.KIND, 112),
                shown(model, EquipmentColumns.DIVISION, texts.get("equipment.division.short"), 92),
                new ShownColumn<>(texts.get("equipment.limit.short"), 92, model::standingLimitWords),
                new ShownColumn<>(texts.get("equipment.calibrated"), 90, model::standingDayWords));
    }
}
