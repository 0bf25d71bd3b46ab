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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.Stamp;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** What a declared change, a correction and a withdrawal do to factors. The trials are of 2 March 2026, the factor holds from 9 March. */
class SourceChangesTest {
    private static final SourceId STONE = new SourceId("S-2");
    private static final LocalDate MAY = LocalDate.of(2026, 5, 4);

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

    private static Source ledge(String ledge) {
        return Samples.source("S-2", Role.COARSE, ledge);
    }

    private void change(LocalDate day) {
        Books.correct(bench.book, SampleSources.changed(ledge("Ledge 2"), day));
    }

    private FactorState on(LocalDate day) {
        return bench.evidence().stateOn(day);
    }

    /** The window's register reads the same, from what is kept beside the entries. */
    private FactorState registerOn(LocalDate day) {
        return LaboratoryStanding.of(bench.book).rows(day).get(0).state();
    }

    @Test
    void aChangeMakesTheFactorUntrueFromItsDayOn() {
        bench.issue(Bench.START);
        change(MAY);
        assertThat(on(MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(registerOn(MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(registerOn(MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
    }

    @Test
    void aChangeToComeIsSaidBefore() {
        FactorIssue issue = bench.issue(Bench.START);
        change(MAY);
        Evidence evidence = bench.evidence();
        assertThat(evidence.seenComing(issue, MAY.minusDays(1)))
                .containsExactly(Problem.warning("sources", "register.source-changes", "S-2", "2026-05-04"));
        assertThat(evidence.seenComing(issue, MAY)).isEmpty();
        assertThat(evidence.changesSince(issue, MAY.minusDays(1))).isEmpty();
        assertThat(Books.codes(RegisterRow.of(evidence, MAY.minusDays(1)).missing()))
                .contains("register.source-changes");
        assertThat(Books.codes(RegisterRow.of(evidence, MAY).missing()))
                .contains("register.source-changed")
                .doesNotContain("register.source-changes");
    }

    @Test
    void whatComesAfterTheRecheckIsNotSaidOfThisFactor() {
        FactorIssue issue = bench.issue(Bench.START);
        change(issue.recheckBy());
        assertThat(bench.evidence().seenComing(issue, MAY)).hasSize(1);
        Books.correct(
                bench.book,
                ledge("Ledge 2")
                        .as(
                                Optional.of(SourceStep.CORRECTED),
                                Optional.of(issue.recheckBy().plusDays(1)),
                                Optional.of("a day later")));
        assertThat(bench.evidence().seenComing(issue, MAY)).isEmpty();
    }

    /** The trials are of 2 March: a change of that day or before is one they were made after. */
    @ParameterizedTest
    @CsvSource({"2026-03-01, false", "2026-03-02, false", "2026-03-03, true"})
    void aChangeWrittenDownLateLeavesTrueWhatWasTestedSince(LocalDate day, boolean isUntrue) {
        FactorIssue issue = bench.issue(Bench.START);
        change(day);
        assertThat(bench.evidence().changesSince(issue, Bench.START))
                .isEqualTo(isUntrue ? List.of(new Evidence.AggregateChange(Optional.of(STONE))) : List.of());
        assertThat(on(Bench.START)).isEqualTo(isUntrue ? FactorState.SOURCE_CHANGED : FactorState.IN_FORCE);
    }

    /** A struck trial is no evidence, so its day is none. */
    @Test
    void trialsOnBothSidesOfAChangeMakeNoTrueFactor() {
        Books.keep(bench.book, Samples.trial("T-9", "M-1", "M-1/1", "5.4"));
        Books.correct(bench.book, SourceChangesTest.madeOn(bench, "T-9", LocalDate.of(2026, 3, 5)));
        bench.issue(Bench.START);
        change(LocalDate.of(2026, 3, 4));
        assertThat(on(LocalDate.of(2026, 3, 3))).isEqualTo(FactorState.NO_FACTOR);
        assertThat(on(Bench.START)).isEqualTo(FactorState.SOURCE_CHANGED);
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Evidence evidence = bench.evidence();
        assertThat(evidence.changesSince(evidence.newestIssue().orElseThrow(), Bench.START))
                .isEmpty();
    }

    private static Trial madeOn(Bench bench, String id, LocalDate day) {
        Trial trial = bench.newest(Trial.class, id);
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                day.atTime(9, 30),
                trial.operator(),
                trial.meterId(),
                trial.readings(),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                trial.elevationMetres(),
                trial.simulated());
    }

    @Test
    void aCorrectionChangesNoFactorHoweverFarItGoes() {
        FactorIssue issue = bench.issue(Bench.START);
        Books.correct(bench.book, SampleSources.corrected(Samples.bareSource("S-2", Role.COARSE)));
        assertThat(bench.evidence().changesSince(issue, Bench.START)).isEmpty();
        assertThat(on(Bench.START)).isEqualTo(FactorState.IN_FORCE);
        assertThat(bench.evidence().openDetermination()).isEmpty();
    }

    @Test
    void trialsBeforeAndAfterACorrectionAreOfOneKind() {
        List<CountedTrials> before = bench.evidence().counted();
        Books.correct(bench.book, SampleSources.corrected(ledge("Ledge 1 a")));
        DeterminationId second = bench.evidence().nextDeterminationId();
        Books.keep(
                bench.book,
                new Determination(second, Bench.MIX, 1, bench.evidence().sourceVersions(), Bench.START, ""),
                Samples.trial("T-4", "M-1", second.text(), "5.4"));
        List<CountedTrials> after = bench.evidence().counted();
        assertThat(after.get(0)).isEqualTo(before.get(0));
        assertThat(after.get(1).path().get(0)).isEqualTo(before.get(0).path().get(0));
    }

    @Test
    void aWithdrawnChangeLeavesTheFactorAsItWas() {
        bench.issue(Bench.START);
        change(LocalDate.of(2026, 3, 20));
        assertThat(on(MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(registerOn(MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        Books.correct(bench.book, SampleSources.withdrawn(ledge("Ledge 1")));
        assertThat(on(MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(registerOn(MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(bench.book.history(Source.class, "S-2")).hasSize(3);
    }

    @Test
    void trialsOfTheStoneToComeAreAnotherDeterminationAndTheirFactorHoldsFromItsDay() {
        bench.issue(Bench.START);
        change(MAY);
        assertThat(bench.evidence().openDetermination()).isEmpty();
        DeterminationId second = bench.evidence().nextDeterminationId();
        Books.keep(
                bench.book,
                new Determination(second, Bench.MIX, 1, bench.evidence().sourceVersions(), Bench.START, "new ledge"),
                Samples.trial("T-4", "M-1", second.text(), "5.4"));
        assertThat(bench.evidence().openDetermination()).isPresent();
        assertThat(bench.issuing(Bench.decision(second, MAY.minusDays(1))).problems())
                .contains(Problem.error("inForceFrom", "issue.before-stone", "2026-05-03", "S-2", "2026-05-04"));
        bench.keep(bench.issuing(Bench.decision(second, MAY)));
        assertThat(on(MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(bench.evidence().inForceOn(MAY).map(FactorIssue::revision)).contains(2);
        assertThat(bench.evidence().seenComing(bench.evidence().issues().get(1).value(), MAY))
                .isEmpty();
    }

    @Test
    void aFactorFromTrialsOfTheOldStoneIsDoubtedWithTheDay() {
        change(MAY);
        assertThat(Issuing.doubts(bench.evidence(), bench.scatter(), Bench.FIRST))
                .extracting(IssueDoubt::asSaid)
                .contains(Problem.warning("determination", "issue.source-changes-after-trials", "S-2", "2026-05-04"));
    }

    @Test
    void evidenceIsSeenAsIfADraftWereKept() {
        FactorIssue issue = bench.issue(Bench.START);
        Evidence evidence = bench.evidence();
        Draft draft = new Draft(SampleSources.changed(ledge("Ledge 2"), MAY), 1);
        Stamp stamp = new Stamp("M. Ash", Books.CLOCK.instant(), "not kept");
        Evidence then = evidence.with(evidence.story(STONE).orElseThrow().with(draft, stamp));
        assertThat(then.stateOn(MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(then.changesToCome(issue, Bench.START)).isEqualTo(Map.of(MAY, STONE));
        assertThat(evidence.stateOn(MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(evidence.story(new SourceId("S-9"))).isEmpty();
    }

    @Test
    void theFactorsOfASourceAreThoseOfItsLastStone() {
        assertThat(SourceFactors.of(List.of(bench.evidence()), STONE)).isPresent();
        Books.correct(bench.book, SampleSources.corrected(ledge("Ledge 1 a")));
        assertThat(SourceFactors.of(List.of(bench.evidence()), STONE)).isPresent();
        change(MAY);
        assertThat(SourceFactors.of(List.of(bench.evidence()), STONE)).isEmpty();
    }

    @Test
    void theHistoryTellsAChangeAndNoCorrection() {
        Books.correct(bench.book, SampleSources.corrected(ledge("Ledge 1 a")));
        keepSecond("T-4", "M-1/2", LocalDate.of(2026, 3, 6));
        assertThat(changes()).isEmpty();
        change(LocalDate.of(2026, 3, 6));
        assertThat(changes())
                .containsExactly(new FactorHistory.HistoryChange(FactorHistory.HistoryChange.Of.SOURCE, "S-2"));
    }

    private List<FactorHistory.HistoryChange> changes() {
        return FactorHistory.of(List.of(bench.evidence())).changes().stream()
                .flatMap(List::stream)
                .toList();
    }

    private void keepSecond(String trial, String determination, LocalDate day) {
        Books.keep(
                bench.book,
                new Determination(
                        new DeterminationId(determination),
                        Bench.MIX,
                        1,
                        bench.evidence().sourceVersions(),
                        day,
                        ""),
                Samples.trial(trial, "M-1", determination, "5.4"));
        Books.correct(bench.book, madeOn(bench, trial, day));
    }
}
