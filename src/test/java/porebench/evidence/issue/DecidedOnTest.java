package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Meter;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.store.Books;

/** That a factor is kept only on the evidence it was decided on: A reads, B changes something, A issues. */
class DecidedOnTest {
    @TempDir
    Path folder;

    private Bench bench;
    private LabBook other;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        other = Books.SHELF.open(folder.resolve("book.porebench"));
    }

    @AfterEach
    void end() {
        other.close();
        bench.close();
    }

    private FactorIssue decided() {
        return bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
    }

    private List<Problem> issued(FactorIssue issue) {
        long before = bench.book.changeNumber();
        List<Problem> problems = bench.book.keep(List.of(Draft.of(issue)), "R. Vale", "first factor");
        assertThat(bench.book.changeNumber()).isEqualTo(problems.isEmpty() ? before + 1 : before);
        return problems;
    }

    /** B corrects a trial in a window of their own, with another gauge reading. */
    private void corrected(String id, String gauge) {
        Trial trial = Samples.trial(id, "M-1", "M-1/1", gauge);
        Books.correct(other, trial);
    }

    /** Four trials read 5.4, 5.4, 5.5 and 5.5; corrected, their factors are 0.8 and the determination's is 0.8, not 0.4. */
    @Test
    void correctedReadingsRefuseTheFactorThatWasDecidedBefore() {
        Books.keep(bench.book, Samples.trial("T-4", "M-1", "M-1/1", "5.5"));
        FactorIssue issue = decided();
        Stream.of("T-1", "T-2", "T-3", "T-4").forEach(id -> corrected(id, "5.8"));
        List<Problem> problems = issued(issue);
        assertThat(problems.get(0))
                .isEqualTo(Problem.error("determination", "issue.evidence-changed-meanwhile", "M-1/1"));
        assertThat(problems.subList(1, 5)).extracting(Problem::code).containsOnly("issue.rests-on-other");
        assertThat(problems.get(1).values()).containsExactly(RecordKind.TRIAL.word(), "T-1", 1, 2);
        assertThat(problems).anySatisfy(problem -> assertThat(problem.code()).isEqualTo("issue.not-what-trials-give"));
        assertThat(bench.book.latest(FactorIssue.class)).isEmpty();
        assertThat(issued(decided())).isEmpty();
        assertThat(bench.evidence().newestIssue().orElseThrow().factorPercent()).isEqualTo(new BigDecimal("0.8"));
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aTrialAddedMovedAwayOrStruckMeanwhileRefusesIt() {
        FactorIssue issue = decided();
        Books.keep(other, Samples.trial("T-9", "M-1", "M-1/1", "5.4"), Samples.determination("M-1/2", "M-1"));
        Books.correct(other, Samples.trial("T-3", "M-1", "M-1/2", "5.5"));
        Books.correct(other, bench.newest(Trial.class, "T-2").struck("spilled"));
        assertThat(Books.codes(issued(issue)))
                .startsWith(
                        "issue.evidence-changed-meanwhile",
                        "issue.rests-on-other",
                        "issue.rests-on-more",
                        "issue.rests-on-less");
    }

    @Test
    void aCalibrationThatCameInMeanwhileRefusesIt() {
        FactorIssue issue = decided();
        LocalDate tested = LocalDate.of(2026, 3, 2);
        Books.keep(other, SampleCalibrations.bowlCalibration("C-1", "B-1", tested, "11.207"));
        List<Problem> problems = issued(issue);
        assertThat(problems).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("issue.rests-on-more");
            assertThat(problem.values()).containsExactly(RecordKind.METER_CALIBRATION.word(), "C-1");
        });
    }

    /** No trial changes, but there is one more doubt that nobody took on. */
    @Test
    void aMeterTakenOutOfServiceMeanwhileRefusesIt() {
        FactorIssue issue = decided();
        Meter meter = bench.newest(Meter.class, "B-1");
        Books.correct(
                other,
                new Meter(
                        meter.id(),
                        meter.type(),
                        meter.serial(),
                        meter.bowl(),
                        meter.divisionPercent(),
                        meter.scaleTopPercent(),
                        false,
                        "dropped"));
        assertThat(Books.codes(issued(issue)))
                .containsExactly(
                        "issue.evidence-changed-meanwhile",
                        "issue.doubt-of-trial",
                        "issue.doubt-of-trial",
                        "issue.doubt-of-trial");
    }

    @Test
    void whatDoesNotTouchItsEvidenceRefusesNothing() {
        FactorIssue issue = decided();
        Books.keep(
                other,
                Samples.mix("M-9", "S-1", "S-2"),
                Samples.determination("M-9/1", "M-9"),
                Samples.trial("T-90", "M-9", "M-9/1", "5.9"));
        assertThat(issued(issue)).isEmpty();
    }

    /** A factor and the trials it names may come in together; what is decided about a file is not decided here. */
    @Test
    void whatCameInIsNotHeldAgainstTheEvidenceOfThisBook() {
        FactorIssue issue = decided();
        corrected("T-1", "5.8");
        assertThat(bench.book.keep(List.of(new Draft(issue, 0, true)), "R. Vale", "from a file"))
                .isEmpty();
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.EVIDENCE_CHANGED);
    }

    @Test
    void aFactorIsConfirmedOnlyOnTheEvidenceItWasLookedAt() {
        FactorIssue issue = decided();
        FactorIssue imported = issue.on(issue.grounds().from(FactorOrigin.IMPORTED));
        assertThat(bench.book.keep(List.of(new Draft(imported, 0, true)), "R. Vale", "from a file"))
                .isEmpty();
        Evidence evidence = bench.evidence();
        FactorIssue confirmed = Verifying.confirm(
                        evidence,
                        bench.scatter(),
                        evidence.issues().get(0),
                        "M. Ash",
                        "looked at",
                        Optional.of(Bench.takingOn(
                                Issuing.doubts(evidence, bench.scatter(), Bench.FIRST), "M. Ash", "looked at")))
                .value()
                .orElseThrow();
        corrected("T-1", "5.8");
        assertThat(Books.codes(bench.book.keep(
                        List.of(Draft.correcting(evidence.issues().get(0), confirmed)), "M. Ash", "looked at")))
                .startsWith("issue.evidence-changed-meanwhile", "issue.rests-on-other");
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.NOT_VERIFIED);
    }

    @Test
    void itIsSaidInPlainWords() {
        FactorIssue issue = decided();
        corrected("T-1", "5.8");
        ProblemText words = ProblemText.in(Locale.ENGLISH);
        assertThat(issued(issue).stream().limit(2).map(words::say))
                .containsExactly(
                        "The evidence of determination M-1/1 changed while you decided, so no factor was issued. "
                                + "Read what changed below, check the determination, and decide again:",
                        "Since you decided, trial T-1 went from version 1 to version 2. Check it.");
    }
}
