package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.FactorHistory.HistoryChange;
import porebench.method.Role;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.id.SourceId;

class FactorHistoryTest {
    private final TimeBook lab = new TimeBook();

    private List<List<HistoryChange>> changes() {
        return lab.history().changes();
    }

    @Test
    void trialsOfAllMixesStandInTheOrderMade() {
        lab.begin("M-1/1", "M-1");
        lab.begin("M-2/1", "M-2");
        lab.trials("M-2/1", "M-2", TimeBook.START.plusDays(1), 0.5);
        lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.4, 0.4);
        assertThat(lab.history().made())
                .extracting(made -> made.trial().id().text())
                .containsExactly("T-002", "T-001", "T-003", "T-004");
        assertThat(lab.history().made().get(1).sources())
                .extracting(SourceId::text)
                .containsExactlyInAnyOrder("S-1", "S-3");
        assertThat(lab.history().made().get(0).divisionPercent()).isEqualTo(0.1);
        assertThat(changes()).allSatisfy(each -> assertThat(each).isEmpty());
    }

    @Test
    void anotherStoneIsAChangeAtTheFirstTrialMadeWithIt() {
        lab.begin("M-1/1", "M-1");
        LocalDate next = lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.4);
        lab.correct(Source.class, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        next = lab.trials("M-1/1", "M-1", next, 0.4);
        lab.begin("M-1/2", "M-1");
        lab.trials("M-1/2", "M-1", next, 0.6, 0.6);
        assertThat(changes())
                .containsExactly(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new HistoryChange(HistoryChange.Of.SOURCE, "S-2")),
                        List.of());
    }

    @Test
    void otherAggregatesAndAnotherMethodAreChangesOfTheMix() {
        lab.begin("M-1/1", "M-1");
        LocalDate next = lab.trials("M-1/1", "M-1", TimeBook.START, 0.4);
        MixDesign before = lab.book.latest(MixDesign.class, "M-1").orElseThrow().value();
        MixDesign other = Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", "900"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "850"));
        lab.correct(
                MixDesign.class,
                new MixDesign(
                        before.id(),
                        before.title(),
                        other.batch(),
                        before.soakMinutes(),
                        before.airTolerancePercent(),
                        "en-12350-7",
                        "",
                        Optional.empty()));
        lab.begin("M-1/2", "M-1");
        lab.trials("M-1/2", "M-1", next, 0.4);
        assertThat(changes().get(1))
                .containsExactly(
                        new HistoryChange(HistoryChange.Of.MIX, "M-1"),
                        new HistoryChange(HistoryChange.Of.METHOD, "en-12350-7"));
    }

    /** Trials of the day of a calibration come after it. */
    @Test
    void aCalibrationOrRepairOfAMeterThatIsUsedIsAChangeAndANoteOfAProjectIsNone() {
        lab.begin("M-1/1", "M-1");
        lab.keep(
                SampleCalibrations.dialCalibration("C-0", "B-1", TimeBook.START.minusDays(9), "0.0", "5.0", "10.0"),
                SampleCalibrations.dialCalibration("C-1", "B-1", TimeBook.START.plusDays(1), "0.0", "5.0", "10.0"),
                SampleCalibrations.dialCalibration("C-2", "B-2", TimeBook.START.plusDays(1), "0.0", "5.0", "10.0"),
                SampleCalibrations.note("C-3", "B-1", TimeBook.START.plusDays(2), MeterCalibration.Reason.REPAIR),
                SampleCalibrations.note("C-4", "B-1", TimeBook.START.plusDays(3), MeterCalibration.Reason.PROJECT));
        lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.4, 0.4, 0.4);
        assertThat(changes())
                .containsExactly(
                        List.of(),
                        List.of(new HistoryChange(HistoryChange.Of.CALIBRATION, "B-1")),
                        List.of(new HistoryChange(HistoryChange.Of.REPAIR, "B-1")),
                        List.of());
    }

    @Test
    void ofSomeTrialsOnlyTheirOwnChangesAreSeen() {
        lab.begin("M-1/1", "M-1");
        lab.begin("M-2/1", "M-2");
        lab.keep(SampleCalibrations.dialCalibration("C-1", "B-2", TimeBook.START.plusDays(1), "0.0", "5.0", "10.0"));
        lab.keep(
                lab.trial("M-1/1", "M-1", TimeBook.START, "R. Vale", "B-1", 0.4),
                lab.trial("M-2/1", "M-2", TimeBook.START.plusDays(1), "R. Vale", "B-2", 0.4),
                lab.trial("M-1/1", "M-1", TimeBook.START.plusDays(2), "R. Vale", "B-1", 0.4));
        assertThat(changes().get(1)).containsExactly(new HistoryChange(HistoryChange.Of.CALIBRATION, "B-2"));
        assertThat(lab.history()
                        .where(made -> made.trial().meterId().text().equals("B-1"))
                        .changes())
                .allSatisfy(each -> assertThat(each).isEmpty());
    }

    @Test
    void anEmptyLaboratoryHasNoHistory() {
        assertThat(lab.history().made()).isEmpty();
        assertThat(changes()).isEmpty();
    }
}
