package porebench.desk.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** What the page of a meter says of its state, its calibrations and the one that is looked at; without a display. */
class MeterModelTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    private MixDesk mixDesk;
    private MeterModel model;
    private int changes;

    @BeforeEach
    void open() {
        mixDesk = new MixDesk(Locale.ENGLISH);
        mixDesk.keepElsewhere(Draft.of(Samples.meter("A-1", MeterType.A)));
        mixDesk.desk.refresh();
        model = new MeterModel(mixDesk.desk);
        model.onChange(() -> changes++);
    }

    private void keep(MeterCalibration... calibrations) {
        for (MeterCalibration one : calibrations) {
            mixDesk.keepElsewhere(Draft.of(one));
        }
        mixDesk.desk.refresh();
    }

    private void keepAYear() {
        keep(MeterStories.ofTypeB(TODAY).toArray(MeterCalibration[]::new));
        model.open(new MeterId("B-1"));
    }

    private static String id(JudgedCalibration one) {
        return one.calibration().value().recordId();
    }

    @Test
    void theFirstMeterIsLookedAtUntilAnotherIsOpened() {
        assertThat(model.meters()).containsExactly(new MeterId("A-1"), new MeterId("B-1"));
        assertThat(model.story()).map(story -> story.meter().value().id()).contains(new MeterId("A-1"));
        assertThat(model.heading()).isEqualTo("Meter A-1 · Type A");
        int before = changes;
        model.open(new MeterId("B-1"));
        assertThat(changes).isEqualTo(before + 1);
        assertThat(model.heading()).isEqualTo("Meter B-1 · Type B");
    }

    @Test
    void aMeterThatWasNeverCalibratedSaysSoInEveryPlace() {
        model.open(new MeterId("B-1"));
        assertThat(model.stateSentence()).isEqualTo("Never calibrated. Trials on this meter carry a doubt.");
        assertThat(model.bowlInForce())
                .containsExactly("7.050 L as the register states it. The bowl was never calibrated here.");
        assertThat(model.meterInForce()).containsExactly("The dial was never checked. Readings are taken as they are.");
        assertThat(model.concerns()).extracting(Problem::code).containsExactly("meter.never-calibrated");
        assertThat(model.bowlPlot().map(plot -> 1)).isEmpty();
        assertThat(model.dialPlot().map(plot -> 1)).isEmpty();
        assertThat(model.shownDial()).isEmpty();
        assertThat(model.chosen()).isEmpty();
        model.open(new MeterId("A-1"));
        assertThat(model.meterInForce()).containsExactly("The column was never calibrated.");
        assertThat(model.elevationPlot().map(plot -> 1)).isEmpty();
        model.useAt("500");
        assertThat(model.usedElevationSentence()).isEqualTo("The column was never calibrated.");
    }

    @Test
    void aYearOfChecksIsShownNewestFirstWithTheNewestLookedAt() {
        keepAYear();
        assertThat(model.state()).contains(MeterState.FAILED);
        assertThat(model.stateSentence())
                .isEqualTo("The last calibration did not pass. Trials on this meter carry a doubt until it is "
                        + "repaired and calibrated.");
        assertThat(model.concerns()).extracting(Problem::code).contains("meter.calibration-failed");
        assertThat(model.calibrations()).extracting(MeterModelTest::id).containsExactly("B-1/3", "B-1/2", "B-1/1");
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/3");
        assertThat(model.bowlInForce().get(0)).startsWith("Volume ").contains("from 3 fills");
        assertThat(model.meterInForce()).hasSizeGreaterThan(1);
        assertThat(model.bowlPlot().map(plot -> 1)).isPresent();
        assertThat(model.dialPlot().map(plot -> 1)).isPresent();
        assertThat(model.shownDial()).isEqualTo(model.story().orElseThrow().dialOn(TODAY));
    }

    @Test
    void aCalibrationThatIsChosenIsTheOneThatIsShown() {
        keepAYear();
        int before = changes;
        model.choose(new CalibrationId("B-1/1"));
        assertThat(changes).isEqualTo(before + 1);
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/1");
        assertThat(model.shownDial())
                .isEqualTo(model.story().orElseThrow().dialOn(TODAY.minusMonths(9)))
                .isNotEqualTo(model.story().orElseThrow().dialOn(TODAY));
        model.lookAt("B-1/2");
        assertThat(changes).isEqualTo(before + 2);
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/2");
        // Opening the same meter again leaves it; another meter begins anew.
        model.open(new MeterId("B-1"));
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/2");
        model.open(new MeterId("A-1"));
        model.open(new MeterId("B-1"));
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/3");
    }

    @Test
    void theDriftOfAChamberIsThatOfItsOwnCheck() {
        keepAYear();
        List<MeterStory.ChamberChange> changesOfChamber =
                model.story().orElseThrow().chamberChanges();
        assertThat(changesOfChamber).hasSize(2);
        assertThat(model.driftAt(model.calibrations().get(0)))
                .contains(changesOfChamber.get(1).drift());
        assertThat(model.driftAt(model.calibrations().get(1)))
                .contains(changesOfChamber.get(0).drift());
        assertThat(model.driftAt(model.calibrations().get(2))).isEmpty();
    }

    @Test
    void aTypeAMeterIsReadWhereItIsUsed() {
        keep(MeterStories.ofTypeA("A-1", TODAY));
        model.open(new MeterId("A-1"));
        assertThat(model.state()).contains(MeterState.OK);
        assertThat(model.stateSentence())
                .startsWith("Calibrated. The calibration holds until ")
                .contains(model.story().orElseThrow().nextDue().orElseThrow().toString());
        assertThat(model.meterInForce()).isNotEmpty().doesNotContain("The column was never calibrated.");
        assertThat(model.elevationPlot().map(plot -> 1)).isPresent();
        assertThat(model.usedElevationSentence()).isEmpty();
        int before = changes;
        model.useAt("400");
        assertThat(changes).isEqualTo(before + 1);
        assertThat(model.usedElevation()).isEqualTo("400");
        assertThat(model.usedElevationSentence()).isNotBlank();
        String there = model.usedElevationSentence();
        model.useAt("90000");
        assertThat(model.usedElevationSentence()).isNotBlank().isNotEqualTo(there);
        model.open(new MeterId("B-1"));
        assertThat(model.usedElevation()).isEmpty();
    }

    @Test
    void whatSomebodyElseKeepsIsSeenAtOnce() {
        model.open(new MeterId("B-1"));
        int before = changes;
        keepAYear();
        assertThat(changes).isGreaterThan(before);
        assertThat(model.calibrations()).hasSize(3);
        assertThat(model.story()).map(story -> story.meter().value().id()).contains(new MeterId("B-1"));
    }

    @Test
    void theVersionsOfACalibrationAreShownNewestFirstWithWhoKeptThem() {
        keepAYear();
        MeterCalibration first = model.calibrations().get(2).calibration().value();
        Version<MeterCalibration> there =
                mixDesk.book.latest(MeterCalibration.class, "B-1/1").orElseThrow();
        MeterCalibration corrected = new MeterCalibration(
                first.id(),
                first.meterId(),
                first.meterType(),
                first.calibratedOn(),
                "M. Ash",
                first.reason(),
                first.elevationMetres(),
                first.bowl(),
                first.dial(),
                first.column(),
                first.remarks());
        mixDesk.keepElsewhere(Draft.correcting(there, corrected));
        List<Version<MeterCalibration>> versions = model.versions(new CalibrationId("B-1/1"));
        assertThat(versions).extracting(Version::number).containsExactly(2, 1);
        assertThat(model.stampWords(versions.get(0)))
                .startsWith("Version 2 · 2026-03-02 12:00 · N. Orrin · ")
                .endsWith("meanwhile");
        assertThat(model.reasonWords(MeterCalibration.Reason.PROJECT)).isEqualTo("new project");
        assertThat(model.measured(first)).isNotEmpty();
    }

    @Test
    void whoListensHearsOfTheLabBookAndOfEveryLetterTyped() {
        model.open(new MeterId("B-1"));
        model.begin();
        int before = changes;
        model.entry().type(CalibrationColumns.REMARKS, "by the window");
        assertThat(changes).isEqualTo(before + 1);
        mixDesk.keepElsewhere(Draft.of(Samples.meter("C-1", MeterType.B)));
        mixDesk.desk.refresh();
        assertThat(changes).isEqualTo(before + 2);
    }

    /** A note that the meter came into doubt checks no dial; the dial in force is the one of the check before. */
    @Test
    void aNoteShowsTheDialInForceAndACheckItsOwn() {
        keepAYear();
        assertThat(model.dialPlot().orElseThrow().calibration()).isEqualTo("B-1/3");
        model.choose(new CalibrationId("B-1/1"));
        assertThat(model.dialPlot().orElseThrow().calibration()).isEqualTo("B-1/1");
        keep(SampleCalibrations.note("B-1/4", "B-1", TODAY.minusDays(1), MeterCalibration.Reason.DOUBT));
        model.choose(new CalibrationId("B-1/4"));
        assertThat(model.dialPlot().orElseThrow().calibration()).isEqualTo("B-1/3");
        assertThat(model.shownDial())
                .isPresent()
                .isEqualTo(model.story().orElseThrow().dialOn(TODAY));
    }

    /** The clock of the bench was put forward when the newest check was entered. */
    @Test
    void aCheckOfADayToComeIsNotTheDialInForce() {
        keep(MeterStories.ofTypeB(TODAY.plusDays(1)).toArray(MeterCalibration[]::new));
        keep(SampleCalibrations.note("B-1/4", "B-1", TODAY.plusDays(2), MeterCalibration.Reason.DOUBT));
        model.open(new MeterId("B-1"));
        assertThat(model.chosen()).map(MeterModelTest::id).contains("B-1/4");
        assertThat(model.dialPlot().orElseThrow().calibration()).isEqualTo("B-1/2");
        assertThat(model.shownDial()).isEqualTo(model.story().orElseThrow().dialOn(TODAY));
    }

    @Test
    void theDialInForceIsSaidWithTheDriftOfItsChamber() {
        keepAYear();
        assertThat(model.meterInForce()).anyMatch(sentence -> sentence.startsWith("The implied chamber changed by "));
    }
}
