package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.meter.MeterState;
import porebench.method.profile.Profiles;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;
import porebench.store.Books;

/**
 * How a meter stood on any day, from a real lab book.
 *
 * <p>The profile is ASTM C231's: dial 3 months, bowl 12 months, notice 14 days; read off the profile's file. Volumes by
 * pencil: mass of the water over 998.207 kg/m3, the density at 20 C (Tanaka and others 2001, recalled).
 */
class MeterStoryTest {
    private static final MeterId B1 = new MeterId("B-1");
    private static final LocalDate SPRING = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(book, Samples.meter("B-1", MeterType.B), Samples.meter("A-1", MeterType.A));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private MeterStory story() {
        return MeterStory.of(book, B1, Profiles.standard()).orElseThrow();
    }

    private List<String> concerns(LocalDate day) {
        return Books.codes(story().toLookAtOn(day));
    }

    private static MeterCalibration dial(String id, LocalDate day) {
        return SampleCalibrations.dialCalibration(id, "B-1", day, "0.00", "5.00", "10.00");
    }

    private static MeterCalibration bowl(String id, LocalDate day) {
        return SampleCalibrations.bowlCalibration(id, "B-1", day, "11.207");
    }

    @Test
    void aMeterThatIsNotThereHasNoStory() {
        assertThat(MeterStory.of(book, new MeterId("X"), Profiles.standard())).isEmpty();
    }

    @Test
    void everyMeterHasAStoryWithItsOwnCalibrationsOldestFirst() {
        Books.keep(
                book,
                dial("C-2", SPRING),
                bowl("C-3", SPRING.minusDays(1)),
                dial("C-1", SPRING),
                SampleCalibrations.columnCalibration("K", "A-1", SPRING));
        assertThat(MeterStory.ofAll(book))
                .extracting(
                        story -> story.meter().value().recordId(),
                        story -> story.calibrations().stream()
                                .map(one -> one.calibration().value().recordId())
                                .toList())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("A-1", List.of("K")),
                        org.assertj.core.groups.Tuple.tuple("B-1", List.of("C-3", "C-1", "C-2")));
    }

    @Test
    void theBowlVolumeIsTheStatedOneUntilItWasWeighedAndThenTheNewest() {
        Books.keep(
                book,
                bowl("C-1", SPRING),
                SampleCalibrations.bowlCalibration("C-2", "B-1", SPRING.plusDays(10), "11.217"));
        assertThat(story().bowlOn(SPRING.minusDays(1)).in(VolumeUnit.LITRE)).isEqualTo(7.050, within(1e-12));
        // 11.207 - 3.450 - 0.720 = 7.037 kg; / 998.207 = 7.04964 L
        assertThat(story().bowlOn(SPRING).in(VolumeUnit.LITRE)).isEqualTo(7.04964, within(1e-4));
        assertThat(story().bowlOn(SPRING.plusDays(9)).in(VolumeUnit.LITRE)).isEqualTo(7.04964, within(1e-4));
        // 7.047 / 998.207 = 7.05966 L
        assertThat(story().bowlOn(SPRING.plusDays(10)).in(VolumeUnit.LITRE)).isEqualTo(7.05966, within(1e-4));
        assertThat(story().bowlCalibrationOn(SPRING.minusDays(1))).isEmpty();
        // The register says 7.050 L: 7.04964 rounds to 7.050 and keeps its digits, 7.05966 does not and is written
        // anew.
        assertThat(story().meterOn(SPRING.minusDays(1)).bowl()).hasToString("7.050 L");
        assertThat(story().meterOn(SPRING).bowl()).hasToString("7.050 L");
        assertThat(story().meterOn(SPRING.plusDays(10)).bowl()).hasToString("7.0597 L");
    }

    @Test
    void theDialCurveIsThatOfTheNewestCheckByThatDay() {
        Books.keep(
                book,
                dial("C-1", SPRING),
                SampleCalibrations.dialCalibration("C-2", "B-1", SPRING.plusDays(5), "0.00", "5.10", "10.00"));
        assertThat(story().dialCurveOn(SPRING.minusDays(1))).isEmpty();
        assertThat(story().dialCurveOn(SPRING.plusDays(4))
                        .orElseThrow()
                        .trueOf(5.1)
                        .truePercent())
                .isEqualTo(5.1, within(1e-9));
        assertThat(story().dialCurveOn(SPRING.plusDays(5))
                        .orElseThrow()
                        .trueOf(5.1)
                        .truePercent())
                .isEqualTo(5.0, within(1e-9));
    }

    @Test
    void theColumnOfATypeAMeterIsKept() {
        Books.keep(book, SampleCalibrations.columnCalibration("K", "A-1", SPRING));
        MeterStory story =
                MeterStory.of(book, new MeterId("A-1"), Profiles.standard()).orElseThrow();
        assertThat(story.columnOn(SPRING.minusDays(1))).isEmpty();
        // 100 x 0.98 x 0.3510 kg / (17.580 lb x 0.45359237) + 0.050 = 34.398 / 7.974154 + 0.050
        assertThat(story.columnOn(SPRING).orElseThrow().readingPercent()).isEqualTo(4.363687, within(1e-6));
    }

    @Test
    void aMeterOfWhichOnlyTheBowlWasCalibratedIsCalibratedInPart() {
        assertThat(story().isCalibratedInPartOn(SPRING)).isFalse();
        Books.keep(book, bowl("C-1", SPRING));
        assertThat(story().isCalibratedInPartOn(SPRING.minusDays(1))).isFalse();
        assertThat(story().isCalibratedInPartOn(SPRING)).isTrue();
        assertThat(story().stateOn(SPRING)).isEqualTo(MeterState.NEVER);
        Books.keep(book, dial("C-2", SPRING.plusDays(1)));
        assertThat(story().isCalibratedInPartOn(SPRING)).isTrue();
        assertThat(story().isCalibratedInPartOn(SPRING.plusDays(1))).isFalse();
    }

    @Test
    void aMeterIsDueAndOverdueByTheEarlierEnd() {
        Books.keep(book, bowl("C-1", SPRING.minusMonths(1)), dial("C-2", SPRING));
        assertThat(story().nextDue()).contains(LocalDate.of(2026, 6, 2));
        assertThat(story().stateOn(SPRING.minusDays(1))).isEqualTo(MeterState.NEVER);
        assertThat(story().stateOn(SPRING)).isEqualTo(MeterState.OK);
        assertThat(story().stateOn(LocalDate.of(2026, 5, 18))).isEqualTo(MeterState.OK);
        assertThat(story().stateOn(LocalDate.of(2026, 5, 19))).isEqualTo(MeterState.DUE);
        assertThat(story().stateOn(LocalDate.of(2026, 6, 2))).isEqualTo(MeterState.DUE);
        assertThat(story().stateOn(LocalDate.of(2026, 6, 3))).isEqualTo(MeterState.OVERDUE);
        assertThat(concerns(LocalDate.of(2026, 6, 3))).containsExactly("meter.calibration-overdue", "meter.one-fill");
        assertThat(concerns(LocalDate.of(2026, 6, 1))).containsExactly("meter.calibration-due", "meter.one-fill");
        assertThat(concerns(SPRING)).containsExactly("meter.one-fill");
    }

    @Test
    void aLaterCalibrationDoesNotChangeWhatTheMeterWas() {
        Books.keep(book, bowl("C-1", SPRING), dial("C-2", SPRING));
        LocalDate late = LocalDate.of(2026, 6, 10);
        assertThat(story().stateOn(late)).isEqualTo(MeterState.OVERDUE);
        Books.keep(book, dial("C-3", late.plusDays(1)));
        assertThat(story().stateOn(late)).isEqualTo(MeterState.OVERDUE);
        assertThat(story().stateOn(late.plusDays(1))).isEqualTo(MeterState.OK);
        assertThat(story().nextDue()).contains(LocalDate.of(2026, 9, 11));
        assertThat(story().nextDueOn(late)).contains(LocalDate.of(2026, 6, 2));
    }

    @Test
    void aDialOffByMoreThanItsToleranceFailsUntilOnePasses() {
        Books.keep(
                book,
                bowl("C-1", SPRING),
                SampleCalibrations.dialCalibration("C-2", "B-1", SPRING, "0.00", "5.11", "10.00"),
                bowl("C-3", SPRING.plusDays(1)),
                dial("C-4", SPRING.plusDays(2)));
        assertThat(story().stateOn(SPRING)).isEqualTo(MeterState.FAILED);
        assertThat(story().stateOn(SPRING.plusDays(1))).isEqualTo(MeterState.FAILED);
        assertThat(concerns(SPRING)).contains("meter.calibration-failed", "meter.dial-off");
        assertThat(story().stateOn(SPRING.plusDays(2))).isEqualTo(MeterState.OK);
    }

    @Test
    void aRepairEndsTheCalibrationUntilTheDialIsCheckedAgain() {
        Books.keep(
                book,
                bowl("C-1", SPRING),
                dial("C-2", SPRING),
                SampleCalibrations.note("N-1", "B-1", SPRING.plusDays(5), MeterCalibration.Reason.REPAIR),
                bowl("C-3", SPRING.plusDays(6)),
                dial("C-4", SPRING.plusDays(7)));
        assertThat(story().stateOn(SPRING.plusDays(4))).isEqualTo(MeterState.OK);
        assertThat(story().stateOn(SPRING.plusDays(5))).isEqualTo(MeterState.OVERDUE);
        assertThat(story().stateOn(SPRING.plusDays(6))).isEqualTo(MeterState.OVERDUE);
        assertThat(story().stateOn(SPRING.plusDays(7))).isEqualTo(MeterState.OK);
    }

    @Test
    void aNewProjectMattersOnlyWhereTheProfileSaysSo() {
        Books.keep(
                book,
                bowl("C-1", SPRING),
                dial("C-2", SPRING),
                SampleCalibrations.note("N-1", "B-1", SPRING.plusDays(5), MeterCalibration.Reason.PROJECT));
        assertThat(story().stateOn(SPRING.plusDays(5))).isEqualTo(MeterState.OK);
    }

    @Test
    void aChamberThatChangedIsFlagged() {
        // A dial that reads 3 % of the air too much explains itself by a chamber 3 % smaller: more than the limit of 2
        // %.
        Books.keep(
                book,
                bowl("C-1", SPRING),
                SampleCalibrations.dialCalibration("C-2", "B-1", SPRING, "0.000", "5.000", "10.000"),
                SampleCalibrations.dialCalibration("C-3", "B-1", SPRING.plusDays(30), "0.000", "5.150", "10.300"));
        List<MeterStory.ChamberChange> changes = story().chamberChanges();
        assertThat(changes).hasSize(1);
        assertThat(changes.get(0).earlier()).isEqualTo(new CalibrationId("C-2"));
        assertThat(changes.get(0).later()).isEqualTo(new CalibrationId("C-3"));
        // 1 / 1.03 - 1 = -2.913 %
        assertThat(changes.get(0).drift().percent()).isEqualTo(-2.913, within(0.001));
        assertThat(changes.get(0).drift().limitPercent()).isEqualTo(2);
    }

    @Test
    void aRegisterThatStatesAnotherVolumeIsToBeLookedAt() {
        Books.keep(book, SampleCalibrations.bowlCalibration("C-1", "B-1", SPRING, "11.217"), dial("C-2", SPRING));
        assertThat(concerns(SPRING)).containsExactly("meter.one-fill", "meter.stated-volume-not-in-force");
        assertThat(concerns(SPRING.minusDays(1))).containsExactly("meter.never-calibrated");
    }

    @Test
    void aCalibrationSaysWhatItIsAbout() {
        assertThat(SampleCalibrations.note("N", "B-1", SPRING, MeterCalibration.Reason.DOUBT)
                        .isNote())
                .isTrue();
        assertThat(bowl("C", SPRING).isNote()).isFalse();
        assertThat(bowl("C", SPRING).checksMeter()).isFalse();
        assertThat(dial("C", SPRING).checksMeter()).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampleCalibrations.note("N", "B-1", SPRING, MeterCalibration.Reason.ROUTINE))
                .withMessage("reason must be repair, project or doubt where nothing was measured, but is ROUTINE");
        MeterCalibration column = SampleCalibrations.columnCalibration("K", "A-1", SPRING);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeterCalibration(
                        column.id(),
                        column.meterId(),
                        MeterType.B,
                        SPRING,
                        "",
                        column.reason(),
                        column.elevationMetres(),
                        Optional.empty(),
                        Optional.empty(),
                        column.column(),
                        ""))
                .withMessageStartingWith("meterType must be A");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeterCalibration(
                        column.id(),
                        column.meterId(),
                        MeterType.A,
                        SPRING,
                        "",
                        column.reason(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        column.column(),
                        ""))
                .withMessageStartingWith("elevationMetres must be that of the column check");
    }
}
