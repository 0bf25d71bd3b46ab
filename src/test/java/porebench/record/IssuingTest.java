package porebench.record;

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
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.trial.Readings;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
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

    private static List<String> codes(Answer<?> answer) {
        return Books.codes(answer.problems());
    }

    private Answer<FactorIssue> issue(Optional<LocalDate> recheckBy, String who, String reason) {
        return Issuing.issue(
                bench.evidence(), new Issuing.Decision(Bench.FIRST, Bench.START, recheckBy, who, "", reason));
    }

    @Test
    void theFirstRevisionSaysAllThatItRestsOn() {
        Answer<FactorIssue> answer = issue(Optional.empty(), " R. Vale ", " first factor\n");
        assertThat(answer.problems()).isEmpty();
        assertThat(answer.value())
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
                        "astm-c231"));
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
            assertThat(codes(Issuing.issue(bench.evidence(), Bench.decision(new DeterminationId(id), Bench.START))))
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
        Evidence evidence = bench.evidence();
        assertThat(codes(Issuing.issue(evidence, Bench.decision(Bench.FIRST, Bench.START.minusDays(1)))))
                .containsExactly("issue.starts-before-last");
        assertThat(codes(Issuing.issue(evidence, Bench.decision(Bench.FIRST, Bench.START))))
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
                Optional.empty());
    }

    @Test
    void saysWhenTheTrialsWereMadeOnBothMeterTypes() {
        Books.keep(bench.book, onTypeA("T-4"));
        Answer<FactorIssue> both = issue(Optional.empty(), "R. Vale", "first");
        assertThat(codes(both)).containsExactly("issue.two-meter-types");
        assertThat(both.value()).map(FactorIssue::meterType).contains(MeterType.A);
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
                        "astm-c231"));
        assertThat(codes(Issuing.withdraw(bench.evidence(), Bench.START.plusDays(6), "R. Vale", "again")))
                .containsExactly("issue.nothing-to-withdraw");
    }
}
