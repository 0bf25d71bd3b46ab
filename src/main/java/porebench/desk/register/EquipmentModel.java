package porebench.desk.register;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.evidence.EquipmentState;
import porebench.evidence.LaboratoryEquipment;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.id.EquipmentId;

/** The register of equipment. */
final class EquipmentModel extends RecordModel<Equipment, EquipmentDraft> {
    private Map<EquipmentId, LaboratoryEquipment.Piece> pieces = Map.of();
    private int noticeDays;

    EquipmentModel(DeskModel desk, Texts texts) {
        super(desk, texts, Equipment.class, blank(desk));
        follow();
        readPieces();
        desk.onChange(this::readPieces);
    }

    private void readPieces() {
        pieces = desk().equipment().pieces().stream()
                .collect(Collectors.toMap(piece -> piece.newest().id(), piece -> piece));
        noticeDays = desk().usualProfile().count(FigureName.CALIBRATION_NOTICE_DAYS);
    }

    private static EquipmentDraft blank(DeskModel desk) {
        return new EquipmentDraft(
                "",
                EquipmentKind.BALANCE,
                "",
                "",
                "",
                "",
                "",
                "",
                Days.show(desk.tools().today()),
                "",
                "");
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

    String typeWords(EquipmentKind kind) {
        return texts().get("equipment.type." + kind.name());
    }

    /** Returns the unit of the figures of a kind. */
    String unitWords(EquipmentKind kind) {
        return texts().get("equipment.unit." + kind.name());
    }

    String divisionWords(Equipment piece) {
        return desk().tools().numbers().show(piece.division()) + " " + unitWords(piece.type());
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

    private String limitWords(Equipment piece) {
        return piece.calibration().map(made -> limitWords(piece, made)).orElse("");
    }

    private static String calibratedWords(Equipment piece) {
        return piece.calibration().map(made -> Days.show(made.on())).orElse("");
    }

    private static String dueWords(Equipment piece) {
        return piece.calibration().map(made -> Days.show(made.dueOn())).orElse("");
    }

    private static String untilWords(Equipment piece) {
        return piece.usedUntil().map(Days::show).orElse("");
    }

    @Override
    EquipmentDraft blank() {
        return blank(desk());
    }

    @Override
    EquipmentDraft draftOf(Equipment piece) {
        Numbers numbers = desk().tools().numbers();
        return new EquipmentDraft(
                piece.id().text(),
                piece.type(),
                piece.description(),
                numbers.show(piece.division()),
                piece.calibration().map(made -> numbers.show(made.limit())).orElse(""),
                calibratedWords(piece),
                dueWords(piece),
                piece.calibration().map(Equipment.Calibration::certificate).orElse(""),
                Days.show(piece.usedFrom()),
                untilWords(piece),
                piece.remarks());
    }

    @Override
    Answer<Equipment> read(EquipmentDraft draft) {
        List<Problem> problems = new ArrayList<>();
        TypedNumber typed = new TypedNumber(desk().tools().numbers(), problems);
        typed.requireText("id", texts().get("equipment.id.plain"), draft.id());
        Limit limit = draft.type().limit();
        Optional<BigDecimal> division =
                typed.required("division", texts().get("equipment.division.plain"), draft.division(), limit);
        Optional<Equipment.Calibration> calibration =
                draft.hasCalibration() ? calibration(draft, typed, limit, problems) : Optional.empty();
        Optional<LocalDate> from = required("usedFrom", draft.usedFrom(), typed, problems);
        Optional<LocalDate> until = day("usedUntil", draft.usedUntil(), problems);
        checkId(draft, problems);
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        Equipment piece = new Equipment(
                new EquipmentId(draft.id()),
                draft.type(),
                draft.description().strip(),
                division.orElseThrow(),
                calibration,
                from.orElseThrow(),
                until,
                draft.remarks().strip());
        problems.addAll(piece.check(desk().tools().today()));
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(piece, problems);
    }

    /** Reads a calibration, which is stated whole or not at all. */
    private Optional<Equipment.Calibration> calibration(
            EquipmentDraft draft, TypedNumber typed, Limit limit, List<Problem> problems) {
        Optional<BigDecimal> wrong =
                typed.required("limit", texts().get("equipment.limit.plain"), draft.limit(), limit);
        Optional<LocalDate> on = required("calibratedOn", draft.calibratedOn(), typed, problems);
        Optional<LocalDate> due = required("dueOn", draft.dueOn(), typed, problems);
        return wrong.isEmpty() || on.isEmpty() || due.isEmpty()
                ? Optional.empty()
                : Optional.of(new Equipment.Calibration(
                        on.get(), wrong.get(), due.get(), draft.certificate().strip()));
    }

    private Optional<LocalDate> required(String field, String text, TypedNumber typed, List<Problem> problems) {
        typed.requireText(field, texts().get("equipment." + field + ".plain"), text);
        return day(field, text, problems);
    }

    private static Optional<LocalDate> day(String field, String text, List<Problem> problems) {
        Optional<LocalDate> day = Days.parse(text);
        if (day.isEmpty() && !text.isBlank()) {
            problems.add(Problem.error(field, "form.not-a-date", text.strip()));
        }
        return day;
    }

    private void checkId(EquipmentDraft draft, List<Problem> problems) {
        boolean taken = rows().stream()
                .anyMatch(row -> row.value().recordId().equals(draft.id().strip()));
        if (isNew() && taken) {
            problems.add(Problem.error(
                    "id",
                    "book.already-there",
                    texts().get("equipment.word"),
                    draft.id().strip()));
        }
    }

    @Override
    Map<String, String> said(Equipment piece) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put(texts().get("equipment.type.plain"), typeWords(piece.type()));
        said.put(texts().get("equipment.description.plain"), piece.description());
        said.put(texts().get("equipment.division.plain"), divisionWords(piece));
        said.put(texts().get("equipment.limit.plain"), limitWords(piece));
        said.put(texts().get("equipment.calibratedOn.plain"), calibratedWords(piece));
        said.put(texts().get("equipment.dueOn.plain"), dueWords(piece));
        said.put(
                texts().get("equipment.certificate.plain"),
                piece.calibration().map(Equipment.Calibration::certificate).orElse(""));
        said.put(texts().get("equipment.usedFrom.plain"), Days.show(piece.usedFrom()));
        said.put(texts().get("equipment.usedUntil.plain"), untilWords(piece));
        said.put(texts().get("equipment.remarks.plain"), piece.remarks());
        return said;
    }
}
