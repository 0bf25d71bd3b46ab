package porebench.desk.register;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.EquipmentState;
import porebench.evidence.LaboratoryEquipment;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.column.Column;
import porebench.record.column.EquipmentColumns;
import porebench.record.id.EquipmentId;

/** The register of equipment. */
final class EquipmentModel extends RecordModel<Equipment> {
    private static final Set<Column<Equipment, ?>> DAYS = Set.of(
            EquipmentColumns.CALIBRATED_ON,
            EquipmentColumns.DUE_ON,
            EquipmentColumns.USED_FROM,
            EquipmentColumns.USED_UNTIL);

    private Map<EquipmentId, LaboratoryEquipment.Piece> pieces = Map.of();
    private int noticeDays;

    EquipmentModel(DeskModel desk, Texts texts) {
        super(desk, texts, Equipment.class, EquipmentColumns.ALL, "equipment", () -> blank(desk));
        follow();
        readPieces();
        desk.onChange(this::readPieces);
    }

    private void readPieces() {
        pieces = desk().equipment().pieces().stream()
                .collect(Collectors.toMap(piece -> piece.newest().id(), piece -> piece));
        noticeDays = desk().usualProfile().count(FigureName.CALIBRATION_NOTICE_DAYS);
    }

    private static TypedDraft blank(DeskModel desk) {
        return TypedDraft.BLANK
                .with(EquipmentColumns.KIND, EquipmentKind.BALANCE.symbol())
                .with(EquipmentColumns.USED_FROM, Days.show(desk.tools().today()));
    }

    /** Returns how it stands with a piece today, by all its versions. */
    EquipmentState state(Equipment piece) {
        return Optional.ofNullable(pieces.get(piece.id()))
                .map(known -> known.stateOn(desk().tools().today(), noticeDays))
                .orElse(EquipmentState.NOT_CALIBRATED);
    }

    String stateWords(Equipment piece) {
        return texts().get("equipment.state." + state(piece).name());
    }

    /** Returns the unit of the figures of a kind. */
    String unitWords(EquipmentKind kind) {
        return texts().get("equipment.unit." + kind.name());
    }

    /** Returns the calibration by which a piece stands today: not one of a day to come, though its newest version states it. */
    private Optional<Equipment.Calibration> standing(Equipment piece) {
        return Optional.ofNullable(pieces.get(piece.id()))
                .flatMap(known -> known.calibrationBy(desk().tools().today()));
    }

    String standingLimitWords(Equipment piece) {
        return standing(piece).map(made -> limitWords(piece, made)).orElse("");
    }

    String standingDayWords(Equipment piece) {
        return standing(piece).map(made -> Days.show(made.on())).orElse("");
    }

    String standingDueWords(Equipment piece) {
        return standing(piece).map(made -> Days.show(made.dueOn())).orElse("");
    }

    private String limitWords(Equipment piece, Equipment.Calibration made) {
        return desk().tools().numbers().show(made.limit()) + " " + unitWords(piece.type());
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get("equipment.type."
                + TypedDraft.BLANK
                        .with(column, symbol)
                        .chosen(EquipmentColumns.KIND)
                        .name());
    }

    @Override
    public String beside(Column<?, ?> column, TypedDraft draft) {
        return DAYS.contains(column) ? texts().get("equipment.date-pattern") : spokenUnit(column, draft);
    }

    @Override
    public String spokenUnit(Column<?, ?> column, TypedDraft draft) {
        boolean isOfKind = column == EquipmentColumns.DIVISION || column == EquipmentColumns.LIMIT;
        return isOfKind ? unitWords(draft.chosen(EquipmentColumns.KIND)) : "";
    }

    @Override
    String note() {
        return isNew() ? "" : texts().get("equipment.note");
    }

    @Override
    List<Problem> lookAt(Equipment piece) {
        return piece.check(desk().tools().today());
    }
}
