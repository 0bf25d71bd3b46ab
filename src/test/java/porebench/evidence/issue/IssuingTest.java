package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.trial.Readings;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.store.Books;

class IssuingTest {
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

    /** The codes of an answer, but for what M. Ash takes on about every trial of the bench: see the test of the doubts. */
    private static List<String> codes(Answer<?> answer) {
        return Books.codes(answer.problems()).stream()
                .filter(code -> !code.equals("issue.doubt-of-trial") && !code.startsWith("issue.stop-"))
                .toList();
    }

    private Answer<FactorIssue> issue(Optional<LocalDate> recheckBy, String who, String reason) {
        return bench.issuing(new Issuing.Decision(Bench.FIRST, Bench.START, recheckBy, who, "", reason));
    }

    @Test
    void theFirstRevisionSaysAllThatItRestsOn() {
        Answer<FactorIssue> answer = issue(Optional.empty(), " R. Vale ", " first factor\n");
        assertThat(codes(answer)).isEmpty();
        assertThat(answer.value().map(issue -> issue.on(Grounds.NONE)))
                .contains(new FactorIssue(
                        Bench.MIX,
                        1,
                        FactorIssue.Action.ISSUED,
                        Samples.number("0.4"),
                        Bench.FIRST,
                        MeterType.B,
                        Bench.START,
                        LocalDate.of(2027, 3, 9),
                        "R. Vale",
                        "",
                        "first factor",
                        1,
                        Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1),
                        "astm-c231",
                        "",
                        "",
                        Grounds.NONE));
    }

    @Test
    void itNamesTheVersionsOfAllItsTrialsAndOfTheirMetersCalibrations() {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", LocalDate.of(2026, 3, 2), "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", LocalDate.of(2026, 3, 1), "0.00", "5.00", "10.00"),
                SampleCalibrations.bowlCalibration("C-3", "B-1", LocalDate.of(2026, 3, 3), "11.207"));
        bench.strike(List.of("T-2"));
        Grounds grounds = bench.issue(Bench.START).grounds();
        assertThat(grounds.trialVersions())
                .isEqualTo(Map.of(new TrialId("T-1"), 1, new TrialId("T-2"), 2, new TrialId("T-3"), 1));
        // C-3 is of the day after the trials.
        assertThat(grounds.calibrationVersions())
                .isEqualTo(Map.of(new CalibrationId("C-1"), 1, new CalibrationId("C-2"), 1));
        assertThat(grounds.origin()).isEqualTo(FactorOrigin.HERE);
        assertThat(grounds.simulated()).isFalse();
    }

    @Test
    void everyDoubtIsNamedAndTakenOnOneByOne() {
        List<IssueDoubt> doubts = Issuing.doubts(bench.evidence(), bench.scatter(), Bench.FIRST);
        assertThat(doubts)
                .extracting(doubt -> doubt.trial().map(TrialId::text).orElse("") + " "
                        + doubt.problem().code())
                .containsExactly(
                        "T-1 trial.masses-missing",
                        "T-1 trial.meter-never-calibrated",
                        "T-2 trial.masses-missing",
                        "T-2 trial.meter-never-calibrated",
                        "T-3 trial.masses-missing",
                        "T-3 trial.meter-never-calibrated",
                        " issue.stop-more-could-change");
        for (int left = 0; left < doubts.size(); left++) {
            List<IssueDoubt> butOne = new java.util.ArrayList<>(doubts);
            butOne.remove(left);
            Answer<FactorIssue> refused = Issuing.issue(
                    bench.evidence(),
                    bench.scatter(),
                    new Issuing.Decision(
                            Bench.FIRST,
                            Bench.START,
                            Optional.empty(),
                            "R. Vale",
                            "",
                            "first",
                            Optional.of(Bench.takingOn(butOne, "M. Ash", "looked at"))));
            assertThat(refused.value()).isEmpty();
            assertThat(refused.problems())
                    .contains(Problem.error("override", "issue.doubts-open", 1L).of(Problem.Kind.NOT_YET));
        }
        assertThat(bench.issue(Bench.START).takenOn()).hasSize(doubts.size());
    }

    @Test
    void aTrialKeptWithAReasonIsSettled() {
        Books.correct(bench.book, bench.newest(Trial.class, "T-1").keptFor(Optional.of("weighed by eye")));
        assertThat(Issuing.doubts(bench.evidence(), bench.scatter(), Bench.FIRST))
                .extracting(doubt -> doubt.trial().map(TrialId::text).orElse("") + " "
                        + doubt.problem().code())
                .doesNotContain("T-1 trial.masses-missing")
                .contains("T-1 trial.meter-never-calibrated", "T-2 trial.masses-missing");
    }

    @Test
    void theSameDecisionTwiceMakesOneRevision() {
        bench.issue(Bench.START);
        Answer<FactorIssue> again = bench.issuing(Bench.decision(Bench.FIRST, Bench.START));
        assertThat(codes(again)).containsExactly("issue.already-issued");
        assertThat(again.value()).isEmpty();
        assertThat(bench.issuing(Bench.decision(Bench.FIRST, Bench.START.plusDays(1)))
                        .value())
                .isPresent();
        bench.strike(List.of("T-3"));
        assertThat(bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value())
                .isPresent();
    }

    @Test
    void aFactorDoesNotHoldBeforeItsLastTrialWasMade() {
        LocalDate lastTrial = LocalDate.of(2026, 3, 2);
        assertThat(codes(bench.issuing(Bench.decision(Bench.FIRST, lastTrial)))).isEmpty();
        assertThat(codes(bench.issuing(Bench.decision(Bench.FIRST, lastTrial.minusDays(1)))))
                .containsExactly("issue.before-evidence");
        assertThat(codes(bench.issuing(Bench.decision(Bench.FIRST, LocalDate.of(1, 1, 1)))))
                .containsExactly("issue.before-evidence");
    }

    @Test
    void aFactorBeyondTheProfilesLimitsIsRefusedWhoeverTakesItOn() {
        // The profile lets -0.1 to 2 % be issued; withdrawn are 5.0 %, so that a gauge of 4.9 gives -0.1 and 7.0 gives
        // 2.0.
        for (Map.Entry<String, Boolean> each : Map.of(
                        "4.9", true, "4.8", false, "7.0", true, "7.1", false, "3.37", false)
                .entrySet()) {
            for (String id : List.of("T-1", "T-2", "T-3")) {
                Trial trial = Samples.trial(id, "M-1", "M-1/1", each.getKey());
                if (!bench.newest(Trial.class, id).equals(trial)) {
                    Books.correct(bench.book, trial);
                }
            }
            Answer<FactorIssue> answer = bench.issuing(Bench.decision(Bench.FIRST, Bench.START));
            assertThat(answer.value().isPresent()).as(each.getKey()).isEqualTo(each.getValue());
            assertThat(codes(answer).contains("issue.beyond-limits")).isNotEqualTo(each.getValue());
        }
    }

    @Test
    void theProfileCanAskForASecondPerson() {
        Books.keep(
                bench.book,
                new LaboratoryProfile(porebench.method.profile.Profiles.standard()
                        .copyAs("two", "Two pairs of eyes")
                        .with(
                                porebench.method.FigureName.SECOND_PERSON,
                                new porebench.method.Figure("yes", "Own choice", porebench.method.Mark.LABORATORY))));
        MixDesign mix = bench.mix();
        Books.correct(
                bench.book,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        mix.batch(),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        "two",
                        mix.remarks(),
                        Optional.empty()));
        for (Map.Entry<String, String> each : Map.of(
                        "", "issue.second-person-missing",
                        " r.  vale ", "issue.second-person-is-first")
                .entrySet()) {
            Answer<FactorIssue> answer = bench.issuing(new Issuing.Decision(
                    Bench.FIRST, Bench.START, Optional.empty(), "R. Vale", each.getKey(), "first"));
            assertThat(codes(answer)).containsExactly(each.getValue());
        }
        assertThat(codes(bench.issuing(Bench.decision(Bench.FIRST, Bench.START))))
                .isEmpty();
    }

    @Test
    void revisionsCountOnThroughWithdrawals() {
        assertThat(bench.issue(Bench.START).revision()).isEqualTo(1);
        assertThat(bench.withdraw(Bench.START).revision()).isEqualTo(2);
        assertThat(bench.issue(Bench.START).revision()).isEqualTo(3);
    }

    @Test
    void aDeterminationThatIsNotOfThisMixGivesNoFactor() {
        Books.keep(bench.book, Samples.mix("M-2"), Samples.determination("M-2/1", "M-2"));
        for (String id : List.of("M-2/1", "nothing")) {
            assertThat(codes(bench.issuing(Bench.decision(new DeterminationId(id), Bench.START))))
                    .containsExactly("issue.determination-unknown");
        }
    }

    @Test
    void struckTrialsAloneGiveNoFactor() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        assertThat(codes(issue(Optional.empty(), "R. Vale", "first"))).containsExactly("issue.no-trial-counts");
    }

    @Test
    void whoAndWhyMustBeSaidAndAllIsSaidAtOnce() {
        Answer<FactorIssue> answer = issue(Optional.of(Bench.START.minusDays(1)), " ", "");
        assertThat(codes(answer)).containsExactly("form.required", "form.required", "issue.recheck-before-start");
        assertThat(answer.problems())
                .filteredOn(Problem::isError)
                .extracting(problem -> problem.field())
                .containsExactly("issuedBy", "reason", "recheckBy");
        assertThat(answer.value()).isEmpty();
    }

    @Test
    void aFactorMayLapseOnItsFirstDayButNotBefore() {
        assertThat(issue(Optional.of(Bench.START), "R. Vale", "one day").value())
                .map(FactorIssue::recheckBy)
                .contains(Bench.START);
        assertThat(issue(Optional.of(Bench.START.minusDays(1)), "R. Vale", "never")
                        .value())
                .isEmpty();
    }

    @Test
    void aRevisionDoesNotBeginBeforeTheLastOne() {
        bench.issue(Bench.START);
        assertThat(codes(bench.issuing(Bench.decision(Bench.FIRST, Bench.START.minusDays(1)))))
                .containsExactly("issue.starts-before-last");
        assertThat(codes(bench.issuing(new Issuing.Decision(
                        Bench.FIRST, Bench.START, Optional.empty(), "R. Vale", "", "another reason"))))
                .isEmpty();
    }

    @Test
    void itsDoubtsComeWithTheIssue() {
        bench.strike(List.of("T-2"));
        Answer<FactorIssue> few = issue(Optional.empty(), "R. Vale", "first");
        assertThat(codes(few)).containsExactly("determination.few-trials");
        assertThat(few.value()).isPresent();
    }

    @Test
    void saysWhenTheMixIsNoLongerTheOneThatWasTested() {
        Books.correct(bench.book, Samples.mix("M-1", "S-1", "S-9"));
        Answer<FactorIssue> answer = issue(Optional.empty(), "R. Vale", "first");
        assertThat(codes(answer)).containsExactly("issue.mix-changed-since-trials");
        // It rests on what was tested, not on what the mix has become.
        assertThat(answer.value()).map(FactorIssue::mixVersion).contains(1);
        assertThat(answer.value().orElseThrow().sourceVersions())
                .isEqualTo(Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1));
    }

    private static Trial onTypeA(String id) {
        Trial trial = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings readings = new Readings(
                MeterType.A,
                Typed.of("7.050", VolumeUnit.LITRE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Samples.some("0.8"),
                Samples.some("0.4"),
                false);
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId(),
                readings,
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    @Test
    void refusesTrialsOnBothMeterTypesWhoeverTakesItOn() {
        Books.keep(bench.book, onTypeA("T-4"));
        Answer<FactorIssue> both = issue(Optional.empty(), "R. Vale", "first");
        assertThat(codes(both)).containsExactly("issue.two-meter-types");
        assertThat(both.value()).isEmpty();
        bench.strike(List.of("T-4"));
        Answer<FactorIssue> one = issue(Optional.empty(), "R. Vale", "first");
        assertThat(codes(one)).isEmpty();
        assertThat(one.value()).map(FactorIssue::meterType).contains(MeterType.B);
    }

    @Test
    void onlyAFactorThatWasIssuedCanBeWithdrawn() {
        assertThat(codes(Issuing.withdraw(bench.evidence(), Bench.START, "", " ")))
                .containsExactly("form.required", "form.required", "issue.nothing-to-withdraw");
        FactorIssue issued = bench.issue(Bench.START);
        FactorIssue withdrawn = bench.withdraw(Bench.START.plusDays(5));
        assertThat(withdrawn)
                .isEqualTo(new FactorIssue(
                        Bench.MIX,
                        2,
                        FactorIssue.Action.WITHDRAWN,
                        issued.factorPercent(),
                        Bench.FIRST,
                        MeterType.B,
                        Bench.START.plusDays(5),
                        issued.recheckBy(),
                        "R. Vale",
                        "",
                        "pit closed",
                        1,
                        issued.sourceVersions(),
                        "astm-c231",
                        "",
                        "",
                        Grounds.NONE));
        assertThat(codes(Issuing.withdraw(bench.evidence(), Bench.START.plusDays(6), "R. Vale", "again")))
                .containsExactly("issue.nothing-to-withdraw");
    }
}
