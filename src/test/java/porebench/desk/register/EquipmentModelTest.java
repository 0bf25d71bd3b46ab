package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.desk.form.TypedDraft;
import porebench.evidence.EquipmentState;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.print.PdfPress;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.record.column.EquipmentColumns;
import porebench.store.SqliteShelf;

/** The register of equipment on the demo laboratory, without a display; today is 2026-11-25. */
class EquipmentModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private static EquipmentModel model(Locale locale) {
        MemoryLabBook book = new MemoryLabBook(DAY);
        new DemoYear().fill(book);
        Tools tools = new Tools(
                new SqliteShelf(DAY),
                new CsvSheets(),
                new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                Tasks.direct(),
                new ScriptedAsker(),
                DAY,
                ZoneOffset.UTC,
                locale);
        DeskModel desk = new DeskModel(tools, book);
        desk.setPerson("M. Quist");
        return new EquipmentModel(desk, RecordPage.texts(desk));
    }

    private final EquipmentModel model = model(Locale.ENGLISH);

    private static void type(EquipmentModel model, TypedDraft draft) {
        model.history().update("any", draft);
    }

    private TypedDraft filled() {
        model.begin();
        return model.draft()
                .with(EquipmentColumns.ID, "BAL-9")
                .with(EquipmentColumns.DIVISION, "0.1")
                .with(EquipmentColumns.LIMIT, "0.2")
                .with(EquipmentColumns.CALIBRATED_ON, "2026-11-02")
                .with(EquipmentColumns.DUE_ON, "2027-11-02")
                .with(EquipmentColumns.CERTIFICATE, "C 9");
    }

    /** BAL-1 is due on 2026-12-04, in nine days; the profile gives notice of fourteen. */
    @Test
    void eachPieceSaysHowItStandsToday() {
        assertThat(model.rows())
                .extracting(row -> row.value().recordId(), row -> model.state(row.value()))
                .containsExactly(
                        tuple("BAL-1", EquipmentState.DUE),
                        tuple("CYL-1", EquipmentState.CALIBRATED),
                        tuple("THM-1", EquipmentState.OVERDUE),
                        tuple("VES-0", EquipmentState.OUT_OF_USE),
                        tuple("VES-1", EquipmentState.CALIBRATED));
        Equipment balance = model.rows().get(0).value();
        assertThat(List.of(
                        model.stateWords(balance),
                        model.said(EquipmentColumns.KIND, model.draftOf(balance)),
                        model.said(EquipmentColumns.DIVISION, model.draftOf(balance)),
                        model.standingLimitWords(balance),
                        model.standingDayWords(balance),
                        model.standingDueWords(balance)))
                .containsExactly("due soon", "balance", "0.1 g", "0.4 g", "2025-11-17", "2026-12-04");
        Equipment broken = model.rows().get(3).value();
        assertThat(model.standingLimitWords(broken) + model.standingDayWords(broken) + model.standingDueWords(broken))
                .isEmpty();
        EquipmentModel spanish = model(new Locale("es"));
        assertThat(spanish.stateWords(balance) + ", " + spanish.standingLimitWords(balance))
                .isEqualTo("por vencer, 0,4 g");
    }

    @Test
    void aNewPieceIsKeptAsItWasTypedAndBeginsToday() {
        TypedDraft draft = filled();
        assertThat(draft.text(EquipmentColumns.USED_FROM)).isEqualTo("2026-11-25");
        type(model, draft.with(EquipmentColumns.DESCRIPTION, " No. 7 ").with(EquipmentColumns.REMARKS, "new"));
        assertThat(model.problems()).isEmpty();
        assertThat(Refused.by(out -> model.save("bought", out))).isEmpty();
        Equipment kept = model.base().orElseThrow().value();
        assertThat(kept.type()).isEqualTo(EquipmentKind.BALANCE);
        assertThat(kept.description()).isEqualTo("No. 7");
        assertThat(kept.division()).isEqualTo(new BigDecimal("0.1"));
        assertThat(kept.calibration())
                .contains(new Equipment.Calibration(
                        LocalDate.of(2026, 11, 2), new BigDecimal("0.2"), LocalDate.of(2027, 11, 2), "C 9"));
        assertThat(kept.usedFrom()).isEqualTo(LocalDate.of(2026, 11, 25));
        assertThat(kept.usedUntil()).isEmpty();
        assertThat(kept.remarks()).isEqualTo("new");
        assertThat(model.state(kept)).isEqualTo(EquipmentState.CALIBRATED);
    }

    @Test
    void everyPieceOfTheDemoStandsInTheFormAsItIsKept() {
        for (Version<Equipment> row : model.rows()) {
            model.show(row.value().recordId());
            assertThat(model.history().isChanged()).isFalse();
            assertThat(model.read(model.draft()).value()).contains(row.value());
        }
    }

    @Test
    void aCalibrationIsStatedWholeOrNotAtAll() {
        TypedDraft none = filled().with(EquipmentColumns.LIMIT, "")
                .with(EquipmentColumns.CALIBRATED_ON, "")
                .with(EquipmentColumns.DUE_ON, "")
                .with(EquipmentColumns.CERTIFICATE, "");
        assertThat(model.read(none).value()).map(Equipment::calibration).contains(Optional.empty());
        assertThat(model.read(none.with(EquipmentColumns.CERTIFICATE, "C 9")).problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(
                        tuple("limit", "form.required"),
                        tuple("calibratedOn", "form.required"),
                        tuple("dueOn", "form.required"));
        assertThat(model.read(filled().with(EquipmentColumns.LIMIT, "")).problems())
                .extracting(Problem::field)
                .containsExactly("limit");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-02, 2026-11-02, 2026-01-01, '', dueOn, equipment.due-before-calibrated",
        "2026-11-02, 2027-11-02, 2026-01-02, 2026-01-01, usedUntil, equipment.until-before-from",
        "2026-11-32, 2027-11-02, 2026-01-02, '', calibratedOn, form.not-a-date",
        "2026-11-02, soon, 2026-01-02, '', dueOn, form.not-a-date",
        "2026-11-02, 2027-11-02, '', '', usedFrom, form.required",
        "2026-11-02, 2027-11-02, 2026-01-02, later, usedUntil, form.not-a-date",
        "2026-11-02, 2200-11-02, 2026-01-02, '', dueOn, equipment.year-impossible",
        "2026-11-26, 2027-11-02, 2026-01-02, '', calibratedOn, meter.date-to-come",
        "1929-11-02, 2027-11-02, 2026-01-02, '', calibratedOn, equipment.year-impossible"
    })
    void daysOutOfOrderAreRefusedAsInAFile(
            String on, String due, String from, String until, String field, String code) {
        TypedDraft draft = filled().with(EquipmentColumns.CALIBRATED_ON, on)
                .with(EquipmentColumns.DUE_ON, due)
                .with(EquipmentColumns.USED_FROM, from)
                .with(EquipmentColumns.USED_UNTIL, until);
        assertThat(model.read(draft).value()).isEmpty();
        assertThat(model.read(draft).problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple(field, code));
    }

    /** A book may hold one from elsewhere, or from when the clock was wrong; today is 2026-11-25. */
    @Test
    void theRegisterShowsTheCalibrationThatStandsToday() {
        assertThat(model.read(filled().with(EquipmentColumns.CALIBRATED_ON, "2026-11-25"))
                        .problems())
                .isEmpty();
        Equipment old = model.rows().get(0).value();
        Equipment early = new Equipment(
                old.id(),
                old.type(),
                old.description(),
                old.division(),
                Optional.of(new Equipment.Calibration(
                        LocalDate.of(2026, 11, 26), new BigDecimal("0.2"), LocalDate.of(2027, 11, 26), "")),
                old.usedFrom(),
                old.usedUntil(),
                old.remarks());
        assertThat(Refused.by(out -> model.desk()
                        .keep(List.of(new Draft(early, model.rows().get(0).number())), "slip", out)))
                .isEmpty();
        assertThat(model.state(early)).isEqualTo(EquipmentState.DUE);
        assertThat(List.of(
                        model.standingLimitWords(early), model.standingDayWords(early), model.standingDueWords(early)))
                .containsExactly("0.4 g", "2025-11-17", "2026-12-04");
    }

    @Test
    void aYearIsWrittenWithoutAMarkBetweenItsDigits() {
        Problem problem = model.read(filled().with(EquipmentColumns.DUE_ON, "2200-11-02"))
                .problems()
                .get(0);
        assertThat(ProblemText.in(Locale.ENGLISH).say(problem))
                .isEqualTo("BAL-9: the year of 2200-11-02 must be from 1930 to 2199. Correct the year.");
    }

    /** A division of 600 can be one of a balance, in g; a cylinder ends at 500 mL. */
    @Test
    void theKindSetsUnitAndBounds() {
        TypedDraft coarse = filled().with(EquipmentColumns.DIVISION, "600").with(EquipmentColumns.LIMIT, "300");
        assertThat(model.read(coarse).problems()).isEmpty();
        assertThat(model.read(coarse.with(EquipmentColumns.KIND, EquipmentKind.CYLINDER.symbol()))
                        .problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("division", "form.out-of-range"));
        assertThat(model.unitWords(EquipmentKind.CYLINDER)).isEqualTo("mL");
        assertThat(model.unitWords(EquipmentKind.THERMOMETER)).isEqualTo("°C");
        assertThat(model.unitWords(EquipmentKind.VESSEL)).isEqualTo("% bowl");
        assertThat(model.read(coarse.with(EquipmentColumns.LIMIT, "299")).problems())
                .extracting(Problem::field, Problem::code, Problem::isError)
                .containsExactly(tuple("limit", "equipment.limit-below-division", false));
    }

    @Test
    void aNameThatIsThereIsRefusedAndANewOneIsAskedFor() {
        type(model, filled().with(EquipmentColumns.ID, "CYL-1"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "book.already-there"));
        model.dropDraft();
        model.begin();
        assertThat(model.problems()).isEmpty();
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems()).extracting(Problem::field).containsExactly("id", "division");
    }

    @Test
    void aNewCalibrationIsANewVersionAndSaysWhatIsNew() {
        model.show("THM-1");
        type(
                model,
                model.draft()
                        .with(EquipmentColumns.CALIBRATED_ON, "2026-11-24")
                        .with(EquipmentColumns.DUE_ON, "2027-11-24")
                        .with(EquipmentColumns.LIMIT, "0.3")
                        .with(EquipmentColumns.DIVISION, "0.2")
                        .with(EquipmentColumns.DESCRIPTION, "new probe")
                        .with(EquipmentColumns.CERTIFICATE, "HG-C 140")
                        .with(EquipmentColumns.USED_FROM, "2025-03-11")
                        .with(EquipmentColumns.USED_UNTIL, "2028-01-01")
                        .with(EquipmentColumns.REMARKS, "r"));
        assertThat(Refused.by(out -> model.save("calibrated", out))).isEmpty();
        assertThat(model.state(model.base().orElseThrow().value())).isEqualTo(EquipmentState.CALIBRATED);
        List<Version<Equipment>> versions = model.versions();
        assertThat(model.changes(versions.get(1).value(), versions.get(0).value()))
                .containsExactly(
                        "Serial number or make: nothing → new probe",
                        "Division: 0.1 °C → 0.2 °C",
                        "Wrong by at most: 0.2 °C → 0.3 °C",
                        "Calibrated on: 2025-05-26 → 2026-11-24",
                        "Holds until: 2026-05-26 → 2027-11-24",
                        "Certificate, or who: HG-C 087 → HG-C 140",
                        "Used from: 2025-03-10 → 2025-03-11",
                        "Used until: nothing → 2028-01-01",
                        "Remarks: nothing → r");
    }
}
