package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.record.FactorIssue;
import porebench.record.Meter;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.TakenDoubt;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/** A trial is judged with its meter as that was on the day, and no factor rests unseen on a meter not to be trusted. */
class TrialOnItsMeterTest {
    /** The day of the trials. */
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private JudgedTrial judged(String id) {
        return bench.evidence().determination(Bench.FIRST).orElseThrow().trials().stream()
                .filter(one -> one.trial().value().id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The doubts about the meter: the trials of the bench state no masses, and draw off less than the mix's air. */
    private static List<String> doubts(JudgedTrial trial) {
        return Books.codes(trial.doubts()).stream()
                .filter(code -> !code.equals("trial.masses-missing") && !code.equals("trial.withdrawal-far"))
                .toList();
    }

    private void calibrated(LocalDate bowl, LocalDate dial) {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", bowl, "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", dial, "0.00", "5.00", "10.00"));
    }

    private Answer<FactorIssue> issue(Optional<TakingOn> takingOn) {
        return Issuing.issue(
                bench.evidence(),
                bench.scatter(),
                new Issuing.Decision(Bench.FIRST, Bench.START, Optional.empty(), "R. Vale", "", "first", takingOn));
    }

    private List<IssueDoubt> open() {
        return Issuing.doubts(bench.evidence(), bench.scatter(), Bench.FIRST);
    }

    private Optional<TakingOn> taken(String who, String why) {
        return Optional.of(Bench.takingOn(open(), who, why));
    }

    @Test
    void aLaboratoryThatKeepsNoCalibrationsIsNotReminded() {
        JudgedTrial trial = judged("T-1");
        assertThat(doubts(trial)).isEmpty();
        assertThat(trial.meterState()).isEmpty();
        assertThat(trial.figures().correctionPercent()).isEmpty();
    }

    @Test
    void calibrationsThatBeginLaterSayNothingAboutEarlierTrials() {
        calibrated(DAY.plusDays(1), DAY.plusDays(1));
        assertThat(doubts(judged("T-1"))).isEmpty();
        assertThat(judged("T-1").meterState()).isEmpty();
    }

    @Test
    void theReadingIsCorrectedAlongTheDialAndTheUncorrectedFactorIsKept() {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.05", "10.10"));
        JudgedTrial trial = judged("T-1");
        // The dial reads 5.05 of 5 and 10.10 of 10: 5.4 is 5.4 / 1.01 = 5.346535; less 5.0 withdrawn.
        assertThat(trial.factorPercent().orElseThrow()).isEqualTo(0.346535, within(1e-6));
        assertThat(trial.figures().uncorrectedPercent().orElseThrow()).isEqualTo(0.4, within(1e-9));
        assertThat(trial.figures().correctionPercent().orElseThrow()).isEqualTo(-0.053465, within(1e-6));
        assertThat(trial.trial().value().readings().gaugePercent()).contains(Samples.number("5.4"));
        assertThat(trial.meterState()).contains(MeterState.OK);
        assertThat(doubts(trial)).isEmpty();
    }

    @Test
    void aReadingBeyondTheCheckPointsIsDoubted() {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.00", "10.00"),
                Samples.trial("T-9", "M-1", "M-1/1", "10.1"));
        assertThat(doubts(judged("T-9"))).contains("trial.gauge-beyond-checks");
        assertThat(judged("T-9").figures().correctionPercent().orElseThrow()).isEqualTo(0, within(1e-9));
    }

    @Test
    void theVolumeInForceIsUsedWhateverTheSheetStates() {
        Trial stated = Samples.trial("T-8", "M-1", "M-1/1", "5.4");
        Readings read = stated.readings();
        Readings millilitres = new Readings(
                read.meterType(),
                read.bowl(),
                read.fine(),
                read.coarse(),
                read.soakMinutes(),
                read.waterCelsius(),
                Optional.of(new Withdrawal(Samples.number("352.5"), Withdrawal.Unit.MILLILITRE)),
                read.gaugePercent(),
                read.h1Percent(),
                read.h2Percent(),
                false);
        Books.keep(
                bench.book,
                new Trial(
                        stated.id(),
                        stated.mixId(),
                        stated.determinationId(),
                        stated.testedAt(),
                        stated.operator(),
                        stated.meterId(),
                        millilitres,
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false),
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.307"),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.00", "10.00"));
        JudgedTrial trial = judged("T-8");
        // 11.307 - 3.450 - 0.720 = 7.137 kg, / 998.207 = 7.14982 L; 100 x 352.5 / 7149.82 = 4.93019; 5.4 less that.
        assertThat(trial.factorPercent().orElseThrow()).isEqualTo(0.46981, within(1e-4));
        // 100 x 352.5 / 7050 = 5.0
        assertThat(trial.figures().uncorrectedPercent().orElseThrow()).isEqualTo(0.4, within(1e-9));
        assertThat(doubts(trial)).containsExactly("trial.bowl-not-in-force");
        Problem doubt = trial.doubts().stream()
                .filter(problem -> problem.field().equals("bowl"))
                .findFirst()
                .orElseThrow();
        assertThat(doubt.values().get(0)).isEqualTo(read.bowl());
        assertThat((double) doubt.values().get(1)).isEqualTo(7.14982, within(1e-4));
    }

    @Test
    void aVolumeThatRoundsToTheOneStatedIsNoDoubt() {
        // 7.04964 L: the sheet states 7.050.
        calibrated(DAY, DAY);
        assertThat(doubts(judged("T-1"))).isEmpty();
    }

    /** Returns the codes of what a person must take on about the meters of the trials. */
    private List<String> openAboutMeters() {
        return open().stream()
                .filter(doubt ->
                        doubt.trial().isPresent() && doubt.problem().field().equals("meter"))
                .map(doubt -> doubt.trial().get() + " " + doubt.problem().code())
                .toList();
    }

    @Test
    void aMeterNeverCalibratedIsNoEasierToIssueOnThanOneOverdue() {
        assertThat(openAboutMeters())
                .containsExactly(
                        "T-1 trial.meter-never-calibrated",
                        "T-2 trial.meter-never-calibrated",
                        "T-3 trial.meter-never-calibrated");
        assertThat(issue(Optional.empty()).value()).isEmpty();
        Books.keep(bench.book, SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"));
        assertThat(doubts(judged("T-1"))).containsExactly("trial.meter-never-calibrated");
        assertThat(openAboutMeters())
                .containsExactly(
                        "T-1 trial.meter-never-calibrated",
                        "T-2 trial.meter-never-calibrated",
                        "T-3 trial.meter-never-calibrated");
        assertThat(issue(Optional.empty()).value()).isEmpty();
    }

    @Test
    void aMeterThatIsUnknownOrOutOfServiceMustBeTakenOn() {
        Meter meter = bench.newest(Meter.class, "B-1");
        calibrated(DAY, DAY);
        assertThat(openAboutMeters()).isEmpty();
        Books.correct(
                bench.book,
                new Meter(
                        meter.id(),
                        meter.type(),
                        "",
                        meter.bowl(),
                        meter.divisionPercent(),
                        meter.scaleTopPercent(),
                        false,
                        ""));
        assertThat(openAboutMeters()).hasSize(3).allMatch(each -> each.endsWith("trial.meter-out-of-service"));
        Books.correct(
                bench.book,
                new Meter(
                        meter.id(),
                        MeterType.A,
                        "",
                        meter.bowl(),
                        meter.divisionPercent(),
                        meter.scaleTopPercent(),
                        true,
                        ""));
        assertThat(openAboutMeters()).contains("T-1 trial.meter-of-other-type", "T-3 trial.meter-of-other-type");
        Trial elsewhere = Samples.trial("T-1", "M-1", "M-1/1", "5.4");
        Books.correct(
                bench.book,
                new Trial(
                        elsewhere.id(),
                        elsewhere.mixId(),
                        elsewhere.determinationId(),
                        elsewhere.testedAt(),
                        elsewhere.operator(),
                        new MeterId("Z-9"),
                        elsewhere.readings(),
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false));
        assertThat(openAboutMeters()).contains("T-1 trial.meter-unknown");
    }

    @Test
    void aBowlThatTheRegisterDoesNotKnowMustBeTakenOn() {
        Meter meter = bench.newest(Meter.class, "B-1");
        Books.correct(
                bench.book,
                new Meter(
                        meter.id(),
                        meter.type(),
                        "",
                        porebench.quantity.Typed.of("6.500", porebench.quantity.VolumeUnit.LITRE),
                        meter.divisionPercent(),
                        meter.scaleTopPercent(),
                        true,
                        ""));
        assertThat(openAboutMeters()).contains("T-1 trial.bowl-not-registered", "T-2 trial.bowl-not-registered");
        // Once the bowl was calibrated the register's volume is not asked any more.
        calibrated(DAY, DAY);
        assertThat(openAboutMeters()).isEmpty();
    }

    @Test
    void aFactorOnAMeterOutOfDateNeedsANameAndAReason() {
        calibrated(DAY.minusMonths(4), DAY.minusMonths(4));
        assertThat(doubts(judged("T-1"))).containsExactly("trial.meter-overdue");
        Answer<FactorIssue> refused = issue(Optional.empty());
        assertThat(refused.value()).isEmpty();
        assertThat(refused.problems())
                .filteredOn(Problem::isError)
                .containsExactly(Problem.error("override", "issue.doubts-open", (long) open().size())
                        .of(Problem.Kind.NOT_YET));
        for (Optional<TakingOn> half : List.of(taken("M. Ash", " "), taken("", "checked since"))) {
            assertThat(issue(half).value()).isEmpty();
            assertThat(Books.codes(issue(half).problems())).contains("issue.override-incomplete");
        }
        Answer<FactorIssue> issued = issue(taken(" M. Ash ", " checked the day after "));
        FactorIssue factor = bench.keep(issued);
        assertThat(factor.takenOn())
                .contains(new TakenDoubt(
                        Optional.of(new TrialId("T-2")),
                        "trial.meter-overdue",
                        "trial.meter-overdue",
                        "M. Ash",
                        "checked the day after"));
        assertThat(bench.newest(FactorIssue.class, "M-1/r1")).isEqualTo(factor);
        assertThat(RegisterRow.of(bench.evidence(), Bench.START).missing())
                .contains(Problem.warning(
                        "override",
                        "register.doubts-taken-on",
                        "M. Ash",
                        factor.takenOn().size(),
                        "checked the day after"));
    }

    @Test
    void keepingATrialDoesNotSettleThatItsMeterFailed() {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.20", "10.00"));
        assertThat(doubts(judged("T-1"))).contains("trial.meter-failed");
        for (String id : List.of("T-1", "T-2", "T-3")) {
            Books.correct(bench.book, bench.newest(Trial.class, id).keptFor(Optional.of("all was as usual")));
        }
        assertThat(openAboutMeters())
                .contains("T-1 trial.meter-failed", "T-2 trial.meter-failed", "T-3 trial.meter-failed");
        assertThat(Books.codes(issue(Optional.empty()).problems())).contains("issue.doubts-open");
    }

    @Test
    void aStruckTrialIsNoDoubt() {
        calibrated(DAY.minusMonths(4), DAY.minusMonths(4));
        bench.strike(List.of("T-1", "T-2", "T-3"));
        assertThat(openAboutMeters()).isEmpty();
    }
}
