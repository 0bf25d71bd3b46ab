package porebench.evidence;

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
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Verifying;
import porebench.method.MeterType;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.store.Books;

/** What a later correction of the evidence does to a factor, and how one that came in from a file is confirmed. */
class EvidenceChangesTest {
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

    private FactorState state() {
        return bench.evidence().stateOn(Bench.START);
    }

    private List<String> whyUntrue() {
        return Books.codes(
                bench.evidence().whyUntrue(bench.evidence().newestIssue().orElseThrow(), Bench.START));
    }

    @Test
    void aTrialCorrectedOrStruckAfterTheIssueMakesTheEvidenceAnotherOne() {
        bench.issue(Bench.START);
        assertThat(state()).isEqualTo(FactorState.IN_FORCE);
        bench.strike(List.of("T-2"));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(state().isUsable()).isFalse();
        assertThat(whyUntrue()).containsExactly("register.trial-changed");
        // Standing again it is a third version: somebody should look.
        Books.correct(bench.book, bench.newest(Trial.class, "T-2").standing());
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        FactorIssue anew = bench.issue(Bench.START);
        assertThat(anew.revision()).isEqualTo(2);
        assertThat(state()).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aFactorDoesNotStayInForceWhenAllItsTrialsAreStruck() {
        bench.issue(Bench.START);
        bench.strike(List.of("T-1", "T-2", "T-3"));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(whyUntrue())
                .containsExactly("register.trial-changed", "register.trial-changed", "register.trial-changed");
    }

    @Test
    void oneMoreTrialInItsDeterminationMakesTheEvidenceAnotherOne() {
        bench.issue(Bench.START);
        Books.keep(bench.book, Samples.trial("T-4", "M-1", "M-1/1", "5.4"));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(whyUntrue()).containsExactly("register.trial-added");
    }

    @Test
    void aTrialMovedToAnotherDeterminationIsGone() {
        bench.issue(Bench.START);
        Books.keep(bench.book, Samples.determination("M-1/2", "M-1"));
        Books.correct(bench.book, bench.newest(Trial.class, "T-3").in(new DeterminationId("M-1/2")));
        assertThat(whyUntrue()).containsExactly("register.trial-gone");
    }

    @Test
    void aCalibrationThatCameInLaterOfADayBeforeTheTrialsChangesTheEvidence() {
        bench.issue(Bench.START);
        LocalDate tested = LocalDate.of(2026, 3, 2);
        Books.keep(bench.book, SampleCalibrations.bowlCalibration("C-2", "B-1", tested.plusDays(1), "11.207"));
        assertThat(state()).isEqualTo(FactorState.IN_FORCE);
        Books.keep(bench.book, SampleCalibrations.bowlCalibration("C-1", "B-1", tested, "11.307"));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(whyUntrue()).containsExactly("register.calibration-added");
        bench.issue(Bench.START.plusDays(1));
        assertThat(bench.evidence().stateOn(Bench.START.plusDays(1))).isEqualTo(FactorState.IN_FORCE);
        Books.correct(bench.book, SampleCalibrations.bowlCalibration("C-1", "B-1", tested, "11.207"));
        assertThat(whyUntrue()).containsExactly("register.calibration-changed");
    }

    @Test
    void aFactorWithoutATrialInTheBookIsNotInForce() {
        Books.keep(bench.book, Samples.determination("M-1/7", "M-1"), Samples.issue("M-1", 1, "M-1/7", Bench.START));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(whyUntrue()).containsExactly("register.no-trials");
    }

    @Test
    void aFactorOfATimeBeforeVersionsWereNamedHoldsUntilItsTrialsChange() {
        // The fixed clock keeps all at one moment; a trial corrected later is of a later moment.
        Books.keep(bench.book, Samples.issue("M-1", 1, "M-1/1", Bench.START));
        assertThat(state()).isEqualTo(FactorState.IN_FORCE);
        bench.close();
        try (LabBook later = new porebench.store.SqliteShelf(
                        java.time.Clock.offset(Books.CLOCK, java.time.Duration.ofHours(1)))
                .open(folder.resolve("book.porebench"))) {
            Books.correct(
                    later,
                    later.latest(Trial.class, "T-1").orElseThrow().value().struck("spilled"));
            Evidence evidence = Evidence.of(later, Bench.MIX).orElseThrow();
            assertThat(evidence.stateOn(Bench.START)).isEqualTo(FactorState.EVIDENCE_CHANGED);
            assertThat(Books.codes(evidence.whyUntrue(evidence.newestIssue().orElseThrow(), Bench.START)))
                    .containsExactly("register.trial-changed");
        }
    }

    @Test
    void anImportedFactorIsNotInForceUntilSomebodyConfirmsIt() {
        FactorIssue imported =
                Samples.issue("M-1", 1, "M-1/1", Bench.START).on(Grounds.NONE.from(FactorOrigin.IMPORTED));
        Books.keep(bench.book, imported);
        assertThat(state()).isEqualTo(FactorState.NOT_VERIFIED);
        assertThat(state().isUsable()).isFalse();
        Evidence evidence = bench.evidence();
        List<IssueDoubt> doubts = Issuing.doubts(evidence, bench.scatter(), Bench.FIRST);
        Version<FactorIssue> newest = evidence.issues().get(0);
        assertThat(Verifying.confirm(evidence, bench.scatter(), newest, "M. Ash", "trials seen", Optional.empty())
                        .value())
                .isEmpty();
        FactorIssue confirmed = Verifying.confirm(
                        evidence,
                        bench.scatter(),
                        newest,
                        "M. Ash",
                        "trials seen",
                        Optional.of(Bench.takingOn(doubts, "M. Ash", "looked at")))
                .value()
                .orElseThrow();
        Books.correct(bench.book, confirmed);
        assertThat(state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(confirmed.origin()).isEqualTo(FactorOrigin.CONFIRMED);
        assertThat(confirmed.takenOn()).hasSize(doubts.size());
        bench.strike(List.of("T-1"));
        assertThat(state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
    }

    @Test
    void anImportedFactorThatItsTrialsDoNotGiveCannotBeConfirmed() {
        FactorIssue imported = new FactorIssue(
                        Bench.MIX,
                        1,
                        FactorIssue.Action.ISSUED,
                        Samples.number("0.5"),
                        Bench.FIRST,
                        MeterType.B,
                        Bench.START,
                        Bench.START.plusMonths(12),
                        "Q. Far",
                        "",
                        "elsewhere",
                        1,
                        Map.of(),
                        "astm-c231",
                        "",
                        "",
                        Grounds.NONE)
                .on(Grounds.NONE.from(FactorOrigin.IMPORTED));
        Books.keep(bench.book, imported);
        Evidence evidence = bench.evidence();
        assertThat(Books.codes(Verifying.confirm(
                                evidence,
                                bench.scatter(),
                                evidence.issues().get(0),
                                "M. Ash",
                                "trials seen",
                                Optional.of(Bench.takingOn(
                                        Issuing.doubts(evidence, bench.scatter(), Bench.FIRST), "M. Ash", "so be it")))
                        .problems()))
                .contains("issue.not-what-trials-give");
    }

    /** A factor that names no versions was decided at noon: what was kept by then is what it rests on. */
    @Test
    void whatWasKeptAfterAFactorWithoutVersionsIsNamedAsAddedOrChanged() {
        LocalDate tested = LocalDate.of(2026, 3, 2);
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", tested, "11.207"),
                Samples.issue("M-1", 1, "M-1/1", Bench.START));
        assertThat(whyUntrue()).isEmpty();
        bench.close();
        try (LabBook later = new porebench.store.SqliteShelf(
                        java.time.Clock.offset(Books.CLOCK, java.time.Duration.ofHours(1)))
                .open(folder.resolve("book.porebench"))) {
            Books.keep(
                    later,
                    Samples.trial("T-4", "M-1", "M-1/1", "5.4"),
                    SampleCalibrations.bowlCalibration("C-2", "B-1", tested, "11.217"));
            Books.correct(later, SampleCalibrations.bowlCalibration("C-1", "B-1", tested, "11.208"));
            Evidence evidence = Evidence.of(later, Bench.MIX).orElseThrow();
            assertThat(evidence.whyUntrue(evidence.newestIssue().orElseThrow(), Bench.START))
                    .extracting(
                            problem -> problem.code() + " " + problem.values().get(0))
                    .containsExactlyInAnyOrder(
                            "register.trial-added T-4",
                            "register.calibration-changed C-1",
                            "register.calibration-added C-2");
        }
    }
}
