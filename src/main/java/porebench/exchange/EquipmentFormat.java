package porebench.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.id.EquipmentId;

/** {@code equipment.csv}: one row a balance, cylinder, thermometer or marked vessel, with its newest calibration. */
final class EquipmentFormat implements Format.RowByRow<Equipment> {
    private static final Columns COLUMNS = Columns.of(
            "equipment_id,kind,description,division,limit,calibrated_on,due_on,certificate,used_from,used_until",
            "remarks");

    @Override
    public Class<Equipment> type() {
        return Equipment.class;
    }

    @Override
    public String fileName() {
        return "equipment.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("equipment_id");
    }

    @Override
    public Optional<Equipment> read(Entry entry) {
        Optional<EquipmentId> id = entry.id("equipment_id", EquipmentId::new);
        Optional<EquipmentKind> kind = entry.choice("kind", List.of(EquipmentKind.values()), EquipmentKind::symbol);
        Optional<LocalDate> from = entry.date("used_from");
        Optional<LocalDate> until = entry.optionalDate("used_until");
        if (id.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        Bounds bounds = Bounds.of(kind.get().limit());
        var division = entry.number("division", bounds);
        Optional<Equipment.Calibration> calibration = calibration(entry, bounds);
        if (division.isEmpty() || from.isEmpty() || !entry.isGood()) {
            return Optional.empty();
        }
        Equipment piece = new Equipment(
                id.get(),
                kind.get(),
                entry.text("description"),
                division.get(),
                calibration,
                from.get(),
                until,
                entry.text("remarks"));
        piece.check().stream().filter(Problem::isError).forEach(problem -> entry.error(column(problem), problem));
        return Optional.of(piece);
    }

    /** A calibration is stated whole or not at all. */
    private static Optional<Equipment.Calibration> calibration(Entry entry, Bounds bounds) {
        boolean isStated = Stream.of("limit", "calibrated_on", "due_on", "certificate")
                .anyMatch(column -> entry.optionalWord(column).isPresent());
        if (!isStated) {
            return Optional.empty();
        }
        var limit = entry.number("limit", bounds);
        Optional<LocalDate> on = entry.date("calibrated_on");
        Optional<LocalDate> due = entry.date("due_on");
        return limit.isEmpty() || on.isEmpty() || due.isEmpty()
                ? Optional.empty()
                : Optional.of(new Equipment.Calibration(on.get(), limit.get(), due.get(), entry.text("certificate")));
    }

    /** Returns the column of the field that a problem is about. */
    static String column(Problem problem) {
        return switch (problem.field()) {
            case "calibratedOn" -> "calibrated_on";
            case "dueOn" -> "due_on";
            case "usedFrom" -> "used_from";
            case "usedUntil" -> "used_until";
            default -> problem.field();
        };
    }

    @Override
    public List<String> row(Equipment value) {
        Optional<Equipment.Calibration> made = value.calibration();
        return List.of(
                value.id().text(),
                value.type().symbol(),
                value.description(),
                value.division().toString(),
                Format.cell(made.map(Equipment.Calibration::limit)),
                Format.cell(made.map(Equipment.Calibration::on)),
                Format.cell(made.map(Equipment.Calibration::dueOn)),
                made.map(Equipment.Calibration::certificate).orElse(""),
                value.usedFrom().toString(),
                Format.cell(value.usedUntil()),
                value.remarks());
    }
}
