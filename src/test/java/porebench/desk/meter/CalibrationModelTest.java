package porebench.desk.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.Reading;
import porebench.desk.Refused;
import porebench.desk.form.UnitSystem;
import porebench.desk.table.RowTable;
import porebench.evidence.JudgedCalibration;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.MeterState;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.MeterId;

/** Entering and correcting calibrations, without a display. */
class CalibrationModelTest {
    private MixDesk mixDesk;
    private MeterModel model;
    private CalibrationModel entry;

    @BeforeEach
    void openDesk() {
        open(Locale.ENGLISH);
    }

    private void open(Locale locale) {
        mixDesk = new MixDesk(locale);
        mixDesk.keepElsewhere(Draft.of(Samples.meter("A-1", MeterType.A)));
        mixDesk.desk.refresh();
        model = new MeterModel(mixDesk.desk);
        model.open(new MeterId("B-1"));
        entry = model.entry();
    }

    private void fill(int row, String... cells) {
        for (int column = 0; column < cells.length; column++) {
            entry.fills().type(row, CalibrationColumns.OF_FILL.columns().all().get(column), cells[column]);
        }
    }

    private void point(int row, String amount, String unit, String gauge) {
        entry.points().type(row, CalibrationColumns.AMOUNT, amount);
        entry.points().chooseUnit(row, CalibrationColumns.AMOUNT, unit);
        entry.points().type(row, CalibrationColumns.GAUGE, gauge);
    }

    /** The bowl holds 10.920 - 3.500 - 0.400 = 7.020 kg of water, the vessel 0.3510 kg: 5.000 % of it. */
    private void typeAWholeCalibration(String second) {
        entry.chooseUnit(CalibrationColumns.FILLS, "kg");
        fill(0, "3.500", "0.400", "10.920", "20");
        fill(1, "3.500", "400 g", "10.920", "20");
        entry.type(CalibrationColumns.VESSEL_WATER, "351.0");
        entry.chooseUnit(CalibrationColumns.VESSEL_WATER, "g");
        entry.type(CalibrationColumns.DIAL_WATER, "20");
        point(0, "1", "vessels", "5.05");
        point(1, "2", "vessels", second);
    }

    @Test
    void aNewCalibrationBeginsTodayByThePersonAndAsksForNothingYet() {
        model.begin();
        String today = mixDesk.desk.tools().today().toString();
        assertThat(entry.draft().text(CalibrationColumns.CALIBRATED_ON)).isEqualTo(today);
        assertThat(entry.draft().text(CalibrationColumns.ID)).isEqualTo("B-1/" + today);
        assertThat(entry.draft().text(CalibrationColumns.BY)).isEqualTo("R. Vale");
        assertThat(entry.shownProblems()).isEmpty();
        assertThat(entry.history().isChanged()).isFalse();
        assertThat(entry.trySaving()).isFalse();
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("reason", "meter.nothing-measured"));
    }

    @Test
    void theNameFollowsTheDayUntilSomebodyGivesAnother() {
        model.begin();
        entry.type(CalibrationColumns.CALIBRATED_ON, "2026-01-15");
        assertThat(entry.draft().text(CalibrationColumns.ID)).isEqualTo("B-1/2026-01-15");
        entry.type(CalibrationColumns.ID, "C-1");
        entry.type(CalibrationColumns.CALIBRATED_ON, "2026-01-16");
        assertThat(entry.draft().text(CalibrationColumns.ID)).isEqualTo("C-1");
    }

    @Test
    void noResultIsShownBesideANumberThatIsRefused() {
        model.begin();
        typeAWholeCalibration("10.08");
        assertThat(entry.reading().orElseThrow().results().bowl()).isPresent();
        fill(1, "3.500", "400 g", "10.9x", "20");
        CalibrationReading reading = entry.reading().orElseThrow();
        assertThat(reading.problems()).extracting(Problem::code).contains("form.not-its-unit");
        assertThat(reading.results().bowl()).isEmpty();
        assertThat(reading.results().dial()).isEmpty();
        assertThat(reading.drift()).isEmpty();
        fill(1, "3.500", "400 g", "10.920", "20");
        point(1, "2", "vessels", "1o.08");
        assertThat(entry.reading().orElseThrow().results().bowl()).isPresent();
        assertThat(entry.reading().orElseThrow().results().dial()).isEmpty();
    }

    @Test
    void aCalibrationIsRefusedWhosePersonHidesSomething() {
        model.begin();
        typeAWholeCalibration("10.08");
        entry.type(CalibrationColumns.BY, "R. Vale\u2066");
        assertThat(entry.trySaving()).isFalse();
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("by", "text.unseen"));
    }

    @Test
    void resultsShowWhileItIsTyped() {
        model.begin();
        fill(0, "3500", "400");
        assertThat(entry.reading().orElseThrow().results().bowl()).isEmpty();
        assertThat(entry.shownProblems()).isEmpty();
        typeAWholeCalibration("10.08");
        CalibrationReading reading = entry.reading().orElseThrow();
        assertThat(reading.problems()).isEmpty();
        List<String> said = model.words().all(reading.results(), reading.drift());
        // 7.020 kg / 0.998207 kg/L = 7.0326 L, both fills alike.
        assertThat(said.get(0)).startsWith("Volume 7.0326 L ±").endsWith("from 2 fills.");
        assertThat(said).contains("✔ Worst error of the dial 0.08 % air: passes (at most 0.10).");
        // b = (10.08 - 5.05) / 5, a = 5.05 - 5 b = 0.02; with 5 % of the bowl: 1.004 / 1.006 x 0.35163 L = 0.3509 L.
        assertThat(said).anyMatch(sentence -> sentence.contains("imply an air chamber of 0.3509 L"));
    }

    @Test
    void aWholeCalibrationIsKeptAsTypedAndPutsTheMeterInOrder() {
        assertThat(model.state()).contains(MeterState.NEVER);
        model.begin();
        typeAWholeCalibration("10.08");
        String id = entry.draft().text(CalibrationColumns.ID);
        assertThat(entry.trySaving()).isTrue();
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
        MeterCalibration kept =
                mixDesk.book.latest(MeterCalibration.class, id).orElseThrow().value();
        assertThat(kept.bowl().orElseThrow().fills().get(1).plate()).isEqualTo(Typed.of("400", MassUnit.GRAM));
        assertThat(kept.dial().orElseThrow().points().get(1).amount().unit()).isEqualTo(CheckAmount.Unit.VESSELS);
        assertThat(entry.isOpen()).isFalse();
        assertThat(model.state()).contains(MeterState.OK);
        assertThat(model.bowlInForce().get(0)).startsWith("Volume 7.0326 L");
    }

    @Test
    void aFailedDialIsKeptAndSaid() {
        model.begin();
        typeAWholeCalibration("10.20");
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("dial.points", "meter.dial-off"));
        assertThat(entry.trySaving()).isTrue();
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
        assertThat(model.state()).contains(MeterState.FAILED);
        RowTable<JudgedCalibration> table = CalibrationTable.of(model);
        table.show(model.calibrations());
        assertThat(table.getValueAt(0, table.getColumnCount() - 1)).isEqualTo("does not pass");
    }

    @Test
    void aCorrectionIsANewVersionOfWhatWasTyped() {
        model.begin();
        typeAWholeCalibration("10.20");
        String id = entry.draft().text(CalibrationColumns.ID);
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
        model.correctChosen();
        assertThat(entry.fills().rows().get(1).text(CalibrationColumns.PLATE)).isEqualTo("400 g");
        assertThat(entry.draft().unit(CalibrationColumns.VESSEL_WATER)).isEqualTo("g");
        assertThat(entry.history().isChanged()).isFalse();
        point(1, "2", "vessels", "10.08");
        assertThat(Refused.by(out -> entry.save("misread", out))).isEmpty();
        assertThat(mixDesk.book.history(MeterCalibration.class, id)).hasSize(2);
        assertThat(model.calibrations()).hasSize(1);
        assertThat(model.state()).contains(MeterState.OK);
    }

    @Test
    void everythingWrongStandsAtItsCell() {
        model.begin();
        entry.chooseUnit(CalibrationColumns.FILLS, "kg");
        fill(0, "3,5x", "0.400", "10.920", "41");
        fill(1, "3.500", "0.400", "3.000", "20");
        point(0, "2", "pct", "2.1");
        point(1, "1", "pct", "1.1");
        entry.trySaving();
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .contains(
                        tuple("bowl.fills.0.empty", "form.sign-is-point"),
                        tuple("bowl.fills.1.full", "bowl.full-too-light"),
                        tuple("dial.points.1.amount", "meter.points-out-of-order"));
    }

    @Test
    void aDayToComeAndAnElevationInSpaceAreRefused() {
        model.begin();
        LocalDate tomorrow = mixDesk.desk.tools().today().plusDays(1);
        entry.type(CalibrationColumns.CALIBRATED_ON, tomorrow.toString());
        entry.type(CalibrationColumns.ELEVATION, "9000");
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(
                        tuple("calibratedOn", "meter.date-to-come"),
                        tuple("elevation", "meter.elevation-out-of-range"));
        entry.type(CalibrationColumns.CALIBRATED_ON, "0026-03-02");
        assertThat(entry.shownProblems()).extracting(Problem::code).contains("form.year-impossible");
    }

    @Test
    void aRepairIsWorthANote() {
        model.begin();
        entry.type(CalibrationColumns.REASON, MeterCalibration.Reason.REPAIR.symbol());
        assertThat(entry.trySaving()).isTrue();
        assertThat(Refused.by(out -> entry.save("repaired", out))).isEmpty();
        assertThat(model.calibrations().get(0).calibration().value().isNote()).isTrue();
    }

    @Test
    void aTypeAColumnNeedsItsElevationAndSaysHowReadingsMove() {
        model.open(new MeterId("A-1"));
        model.begin();
        entry.chooseUnit(CalibrationColumns.COLUMN_VESSEL_WATER, "g");
        entry.type(CalibrationColumns.COLUMN_VESSEL_WATER, "280.0");
        entry.chooseUnit(CalibrationColumns.BOWL_WATER, "kg");
        entry.type(CalibrationColumns.BOWL_WATER, "7.000");
        entry.type(CalibrationColumns.EXPANSION, "0.06");
        entry.type(CalibrationColumns.WORKING_PRESSURE, "100");
        entry.trySaving();
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("elevation", "form.required"));
        entry.type(CalibrationColumns.ELEVATION, "0");
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
        // R = 98 x 0.2800 / 7.000 = 3.92, K = 3.98.
        assertThat(model.meterInForce().get(0))
                .startsWith("It must read K = 3.98 % air under the working pressure P = 100.0 kPa");
        model.useAt("100");
        assertThat(model.usedElevationSentence()).startsWith("✔ At 100 m it is 100 m from");
        model.useAt("500");
        assertThat(model.usedElevationSentence())
                .startsWith("✖ At 500 m it is 500 m from")
                .contains("more than 183 m");
        model.useAt("high");
        assertThat(model.usedElevationSentence()).startsWith("Type an elevation from");
    }

    @Test
    void aDecimalCommaIsReadAndUnitsAreThoseShown() {
        open(Locale.GERMANY);
        mixDesk.desk.show(UnitSystem.US);
        model.begin();
        assertThat(entry.draft().unit(CalibrationColumns.FILLS)).isEqualTo("lb");
        fill(0, "8,000", "1,000", "24,500", "68");
        assertThat(entry.reading().orElseThrow().results().bowl()).isPresent();
        model.begin();
        fill(0, "8.000", "1.000", "24.500", "68");
        assertThat(entry.shownProblems()).extracting(Problem::code).containsOnly("form.point-or-thousands");
    }

    @Test
    void theDraftOfOneVersionIsNotKeptOverANewerOne() {
        model.begin();
        typeAWholeCalibration("10.08");
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
        model.correctChosen();
        var base = entry.base().orElseThrow();
        entry.type(CalibrationColumns.REMARKS, "seen first");
        mixDesk.keepElsewhere(Draft.correcting(
                base, entry.reading().orElseThrow().calibration().orElseThrow()));
        entry.type(CalibrationColumns.REMARKS, "seen later");
        assertThat(Refused.by(out -> entry.save("late", out)))
                .extracting(Problem::code)
                .containsExactly("book.changed-meanwhile");
        assertThat(entry.isOpen()).isTrue();
    }

    private void saveAWholeCalibration() {
        model.begin();
        typeAWholeCalibration("10.08");
        assertThat(entry.trySaving()).isTrue();
        assertThat(Refused.by(out -> entry.save("calibration entered", out))).isEmpty();
    }

    @Test
    void calibrationsOfOneDayAreNumberedOn() {
        for (int made = 0; made < 3; made++) {
            saveAWholeCalibration();
        }
        String today = mixDesk.desk.tools().today().toString();
        assertThat(mixDesk.book.latest(MeterCalibration.class))
                .extracting(version -> version.value().recordId())
                .containsExactlyInAnyOrder("B-1/" + today, "B-1/" + today + "-2", "B-1/" + today + "-3");
    }

    @Test
    void whatIsTypedIsAnUnsavedDraftUntilItIsLeft() {
        assertThat(entry.isOpen()).isFalse();
        assertThat(entry.history().isChanged()).isFalse();
        model.begin();
        assertThat(entry.story()).map(story -> story.meter().value().id()).contains(new MeterId("B-1"));
        entry.type(CalibrationColumns.REMARKS, "by the window");
        assertThat(entry.history().isChanged()).isTrue();
        entry.close();
        assertThat(entry.isOpen()).isFalse();
        assertThat(entry.history().isChanged()).isFalse();
        assertThat(entry.reading()).isEmpty();
        assertThat(entry.draft().text(CalibrationColumns.REMARKS)).isEmpty();
    }

    @Test
    void errorsAreCountedOnceSavingWasTried() {
        model.begin();
        entry.type(CalibrationColumns.ELEVATION, "9000");
        assertThat(entry.errorsInTheWay()).isZero();
        assertThat(entry.trySaving()).isFalse();
        // The elevation, and that nothing was measured.
        assertThat(entry.errorsInTheWay()).isEqualTo(2);
    }

    @Test
    void aDraftIsHeldAgainstWhatSomebodyElseKeepsMeanwhile() {
        model.begin();
        typeAWholeCalibration("10.08");
        assertThat(entry.shownProblems()).isEmpty();
        mixDesk.keepElsewhere(
                Draft.of(entry.reading().orElseThrow().calibration().orElseThrow()));
        mixDesk.desk.refresh();
        assertThat(entry.draft().text(CalibrationColumns.VESSEL_WATER)).isEqualTo("351.0");
        assertThat(entry.shownProblems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "book.already-there"));
        assertThat(entry.trySaving()).isFalse();
    }

    @Test
    void aDraftIsLeftWithItsLabBookAndGoneOnWithInIt() {
        model.begin();
        entry.type(CalibrationColumns.BY, "somebody else");
        LabBook book = mixDesk.desk.turnAway();
        assertThat(entry.isOpen()).isFalse();
        mixDesk.desk.turnTo(Reading.of(book, mixDesk.desk.tools().now()));
        model.open(new MeterId("B-1"));
        assertThat(entry.isOpen()).isFalse();
        entry.goOn(model.story().orElseThrow());
        assertThat(entry.story()).map(story -> story.meter().value().id()).contains(new MeterId("B-1"));
        assertThat(entry.draft().text(CalibrationColumns.BY)).isEqualTo("somebody else");
        entry.close();
        entry.goOn(model.story().orElseThrow());
        assertThat(entry.isOpen()).as("a dropped draft is not found again").isFalse();
    }

    @Test
    void theCorrectionOfACalibrationIsGoneOnWithToo() {
        for (MeterCalibration one : MeterStories.ofTypeB(mixDesk.desk.tools().today())) {
            mixDesk.keepElsewhere(Draft.of(one));
        }
        mixDesk.desk.refresh();
        model.correctChosen();
        String corrected = entry.typedName();
        entry.type(CalibrationColumns.BY, "somebody else");
        entry.leave();
        entry.goOn(model.story().orElseThrow());
        assertThat(entry.typedName()).isEqualTo(corrected);
        assertThat(entry.isNew()).isFalse();
        assertThat(entry.draft().text(CalibrationColumns.BY)).isEqualTo("somebody else");
    }

    /** The chamber of B-1/2 has drifted since B-1/1, and not since itself. */
    @Test
    void aCorrectionIsHeldAgainstTheOtherCalibrationsOnly() {
        for (MeterCalibration one : MeterStories.ofTypeB(mixDesk.desk.tools().today())) {
            mixDesk.keepElsewhere(Draft.of(one));
        }
        mixDesk.desk.refresh();
        model.lookAt("B-1/2");
        model.correctChosen();
        assertThat(entry.reading().orElseThrow().drift())
                .isPresent()
                .isEqualTo(model.driftAt(model.chosen().orElseThrow()));
        assertThat(model.driftAt(model.chosen().orElseThrow()).orElseThrow().toString())
                .isNotEqualTo(
                        model.driftAt(model.calibrations().get(0)).orElseThrow().toString());
    }
}
