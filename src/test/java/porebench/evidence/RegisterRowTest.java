package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.FactorTerms;
import porebench.record.Samples;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

class RegisterRowTest {
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

    /** What the register says of every factor of the bench: its trials state no masses, and its meter was never calibrated. */
    private static final Problem TAKEN_ON =
            Problem.warning("override", "register.doubts-taken-on", "M. Ash", 7, "looked at");

    private List<Problem> missingBeside(RegisterRow row) {
        assertThat(row.missing()).contains(TAKEN_ON);
        return row.missing().stream().filter(each -> !each.equals(TAKEN_ON)).toList();
    }

    private RegisterRow row(LocalDate day) {
        return RegisterRow.of(bench.evidence(), day);
    }

    @Test
    void aMixInOrderMissesNothing() {
        bench.issue(Bench.START);
        assertThat(row(Bench.START))
                .isEqualTo(new RegisterRow(
                        Bench.MIX,
                        "Mix M-1",
                        "",
                        FactorState.IN_FORCE,
                        Samples.some("0.4"),
                        Optional.of(1),
                        Optional.of(Bench.START),
                        Optional.of(Bench.START.plusMonths(12)),
                        new TrialsBehind(
                                3,
                                List.of(new MeterId("B-1")),
                                Optional.of(LocalDate.of(2026, 3, 2)),
                                Optional.of(LocalDate.of(2026, 3, 2))),
                        Optional.empty(),
                        List.of(TAKEN_ON),
                        FactorTerms.NONE,
                        Optional.empty(),
                        new ShownUncertainty(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(Problem.warning("uncertainty", "register.uncertainty-not-stated", 1))),
                        List.of()));
    }

    @Test
    void aMixWithoutFactorSaysHowManyTrialsItHas() {
        RegisterRow row = row(Bench.START);
        assertThat(row.state()).isEqualTo(FactorState.NO_FACTOR);
        assertThat(row.factorPercent()).isEmpty();
        assertThat(row.revision()).isEmpty();
        assertThat(row.countedTrials()).isEqualTo(3);
        assertThat(row.missing()).containsExactly(Problem.warning("factor", "register.no-factor-in-force", "M-1"));
    }

    @Test
    void aWithdrawnMixHasNoFactorInForce() {
        bench.issue(Bench.START);
        bench.withdraw(Bench.START);
        RegisterRow row = row(Bench.START);
        assertThat(row.state()).isEqualTo(FactorState.WITHDRAWN);
        assertThat(row.countedTrials()).isZero();
        assertThat(Books.codes(row.missing())).containsExactly("register.no-factor-in-force");
    }

    @Test
    void saysWhenNobodyApproved() {
        bench.keep(bench.issuing(
                new Issuing.Decision(Bench.FIRST, Bench.START, Optional.empty(), "R. Vale", " ", "first")));
        assertThat(missingBeside(row(Bench.START)))
                .containsExactly(Problem.warning("approvedBy", "register.not-approved", 1));
    }

    @Test
    void saysWhenTheRecheckIsOverdueAndNotADayEarlier() {
        bench.issue(Bench.START);
        LocalDate last = LocalDate.of(2027, 3, 9);
        assertThat(missingBeside(row(last))).isEmpty();
        RegisterRow late = row(last.plusDays(1));
        assertThat(late.state()).isEqualTo(FactorState.LAPSED);
        assertThat(late.factorPercent()).contains(Samples.number("0.4"));
        assertThat(missingBeside(late))
                .containsExactly(Problem.warning("recheckBy", "register.recheck-overdue", "2027-03-09"));
    }

    @Test
    void saysWhatChangedSinceTheIssue() {
        bench.issue(Bench.START);
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        Books.correct(bench.book, Samples.mix("M-1", Samples.constituent("Stone", Role.COARSE, "S-2", "1750")));
        assertThat(missingBeside(row(Bench.START)))
                .containsExactly(
                        Problem.warning("mix", "register.mix-changed", "M-1"),
                        Problem.warning("sources", "register.source-changed", "S-2"));
    }

    @Test
    void saysWhichSourcesAreNotInTheRegisterAndTheDoubtsOfTheTrials() {
        Books.keep(
                bench.book,
                Samples.mix("M-2", "S-9", "S-8"),
                Samples.determination("M-2/1", "M-2"),
                Samples.trial("T-9", "M-2", "M-2/1", "5.3"));
        RegisterRow row = LaboratoryStanding.of(bench.book).rows(Bench.START).get(1);
        assertThat(row.mixId()).isEqualTo(new MixId("M-2"));
        assertThat(row.countedTrials()).isEqualTo(1);
        assertThat(Books.codes(row.missing()))
                .containsExactly(
                        "register.no-factor-in-force",
                        "determination.few-trials",
                        "register.source-unknown",
                        "register.source-unknown");
        assertThat(row.missing().get(2).values()).containsExactly("S-8");
    }

    @Test
    void ofTwoSourcesOnlyTheUnknownOneIsNamed() {
        Books.keep(bench.book, Samples.mix("M-2", "S-1", "S-9"));
        assertThat(LaboratoryStanding.of(bench.book).rows(Bench.START).get(1).missing())
                .contains(Problem.warning("sources", "register.source-unknown", "S-9"))
                .doesNotContain(Problem.warning("sources", "register.source-unknown", "S-1"));
    }

    @Test
    void saysWhenTheEvidenceIsNotInTheBook() {
        Books.keep(bench.book, Samples.issue("M-1", 1, "elsewhere", Bench.START));
        assertThat(Books.codes(row(Bench.START).missing()))
                .containsExactly("register.not-approved", "register.no-trials");
    }
}
