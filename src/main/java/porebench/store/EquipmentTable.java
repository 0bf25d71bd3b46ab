package porebench.store;

import java.time.LocalDate;
import java.util.Optional;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.RecordKind;
import porebench.record.id.EquipmentId;

/** The table {@code equipment}. */
final class EquipmentTable implements RecordTable<Equipment> {
    @Override
    public RecordKind kind() {
        return RecordKind.EQUIPMENT;
    }

    @Override
    public String name() {
        return "equipment";
    }

    @Override
    public StoredRecord rows(Equipment piece) {
        Optional<Equipment.Calibration> made = piece.calibration();
        return StoredRecord.of(new StoredRow(name())
                .cell("equipment_id", piece.id().text())
                .cell("equipment_kind", piece.type().symbol())
                .cell("description", piece.description())
                .number("division", piece.division())
                .text("calibrated_on", made.map(one -> one.on().toString()))
                .number("limit_of_error", made.map(Equipment.Calibration::limit))
                .text("due_on", made.map(one -> one.dueOn().toString()))
                .text("certificate", made.map(Equipment.Calibration::certificate))
                .cell("used_from", piece.usedFrom().toString())
                .text("used_until", piece.usedUntil().map(LocalDate::toString))
                .cell("remarks", piece.remarks()));
    }

    @Override
    public Equipment value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Equipment(
                new EquipmentId(row.text("equipment_id")),
                row.word("equipment_kind", EquipmentKind.values(), EquipmentKind::symbol),
                row.text("description"),
                row.number("division"),
                row.has("calibrated_on") ? Optional.of(calibration(row)) : Optional.empty(),
                LocalDate.parse(row.text("used_from")),
                row.textIfAny("used_until").map(LocalDate::parse),
                row.text("remarks"));
    }

    private static Equipment.Calibration calibration(StoredRow row) {
        return new Equipment.Calibration(
                LocalDate.parse(row.text("calibrated_on")),
                row.number("limit_of_error"),
                LocalDate.parse(row.text("due_on")),
                row.text("certificate"));
    }
}
