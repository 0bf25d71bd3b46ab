package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.id.EquipmentId;

/** The columns of a piece of equipment; its calibration is stated whole or not at all. */
public final class EquipmentColumns {
    /** From the finest division of any kind to its coarsest. */
    private static final NumberRange ANY_KIND = NumberRange.of("0.0001", "1000");

    public static final Column<Equipment, EquipmentId> ID = Column.needed(
                    "equipment_id", CellType.word(EquipmentId::new, EquipmentId::text), Equipment::id)
            .called("id");
    public static final Column<Equipment, EquipmentKind> KIND = Column.needed(
                    "equipment_kind", CellType.choice(EquipmentKind.values(), EquipmentKind::symbol), Equipment::type)
            .headed("kind")
            .called("type");
    public static final Column<Equipment, String> DESCRIPTION =
            Column.needed("description", CellType.text(), Equipment::description);
    public static final Column<Equipment, BigDecimal> DIVISION =
            Column.needed("division", CellType.number(EquipmentColumns::ofKind), Equipment::division);
    public static final Column<Equipment, BigDecimal> LIMIT = ofCalibration(
                    "limit_of_error", CellType.number(EquipmentColumns::ofKind), Equipment.Calibration::limit)
            .headed("limit")
            .neededWhere(EquipmentColumns::statesCalibration);
    public static final Column<Equipment, LocalDate> CALIBRATED_ON = ofCalibration(
                    "calibrated_on", CellType.day(), Equipment.Calibration::on)
            .neededWhere(EquipmentColumns::statesCalibration);
    public static final Column<Equipment, LocalDate> DUE_ON = ofCalibration(
                    "due_on", CellType.day(), Equipment.Calibration::dueOn)
            .neededWhere(EquipmentColumns::statesCalibration);
    public static final Column<Equipment, String> CERTIFICATE = ofCalibration(
                    "certificate", CellType.text(), Equipment.Calibration::certificate)
            .neededWhere(EquipmentColumns::statesCalibration);
    public static final Column<Equipment, LocalDate> USED_FROM =
            Column.needed("used_from", CellType.day(), Equipment::usedFrom);
    public static final Column<Equipment, LocalDate> USED_UNTIL =
            Column.any("used_until", CellType.day(), Equipment::usedUntil);
    public static final Column<Equipment, String> REMARKS =
            Column.needed("remarks", CellType.text(), Equipment::remarks).extra();

    public static final Columns<Equipment> ALL = Columns.of(
                    "equipment",
                    EquipmentColumns::made,
                    ID,
                    KIND,
                    DESCRIPTION,
                    DIVISION,
                    LIMIT,
                    CALIBRATED_ON,
                    DUE_ON,
                    CERTIFICATE,
                    USED_FROM,
                    USED_UNTIL,
                    REMARKS)
            .since(8)
            .checked(Equipment::check);

    private EquipmentColumns() {}

    /** The bounds of a division and a limit, in the unit of the kind that is stated beside them. */
    private static NumberRange ofKind(CellReader from) {
        return KIND.read(from).map(kind -> NumberRange.of(kind.limit())).orElse(ANY_KIND);
    }

    private static boolean statesCalibration(CellReader from) {
        return Stream.of(LIMIT, CALIBRATED_ON, DUE_ON, CERTIFICATE).anyMatch(from::states);
    }

    private static <V> Column<Equipment, V> ofCalibration(
            String name, CellType<V> type, Function<Equipment.Calibration, V> of) {
        return Column.any(name, type, piece -> piece.calibration().map(of));
    }

    private static Equipment made(Cells cells) {
        Optional<BigDecimal> limit = cells.any(LIMIT);
        Optional<LocalDate> on = cells.any(CALIBRATED_ON);
        Optional<LocalDate> due = cells.any(DUE_ON);
        boolean isWhole = limit.isPresent() && on.isPresent() && due.isPresent();
        return new Equipment(
                cells.get(ID),
                cells.get(KIND),
                cells.get(DESCRIPTION),
                cells.get(DIVISION),
                isWhole
                        ? Optional.of(new Equipment.Calibration(
                                on.get(),
                                limit.get(),
                                due.get(),
                                cells.any(CERTIFICATE).orElse("")))
                        : Optional.empty(),
                cells.get(USED_FROM),
                cells.any(USED_UNTIL),
                cells.get(REMARKS));
    }
}
