package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.record.CardPrint;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.SampleDecisions;
import porebench.record.Samples;
import porebench.record.StatedUncertainty;
import porebench.record.id.ChangeDecisionId;
import porebench.store.Books;

/** Decisions from files, and factors that say how uncertain they are and which decision keeps them. */
class DecisionIntakeTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
        Books.keep(bench.book, Samples.determination("M-1/2", "M-1"));
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private Intake.Result check(Kept... records) {
        List<Incoming> incoming = new ArrayList<>();
        for (Kept record : records) {
            incoming.add(new Incoming(Place.of("f.csv", incoming.size() + 2), record));
        }
        return Intake.check(bench.book, incoming, SampleCalibrations.TODAY);
    }

    private void keep(Intake.Result result) {
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "import")).isEmpty();
    }

    /** Whoever exports and imports again changes nothing. */
    @Test
    void oneFromAFileIsMarkedAndOneThatIsThereStaysAsItIs() {
        ChangeDecision fromFile = SampleDecisions.keep("M-1/c1", "M-1");
        Intake.Result first = check(fromFile);
        assertThat(Books.codes(first.problems())).containsExactly("decision.not-seen-here");
        assertThat(first.drafts().get(0).value()).isEqualTo(fromFile.from(FactorOrigin.IMPORTED));
        keep(first);
        assertThat(check(fromFile).alreadyThere()).isEqualTo(1);
        assertThat(check(fromFile.from(FactorOrigin.IMPORTED)).problems()).isEmpty();
        ChangeDecision here = SampleDecisions.testMore("M-1/c2", "M-1", 3, "too few");
        Books.keep(bench.book, here);
        Intake.Result again = check(here);
        assertThat(again.alreadyThere()).isEqualTo(1);
        assertThat(Books.codes(again.problems())).containsExactly("decision.against-verdict");
        assertThat(Books.codes(check(SampleDecisions.testMore("M-1/c2", "M-1", 4, "too few"))
                        .problems()))
                .containsExactly("decision.against-verdict", "import.differs");
    }

    @Test
    void whatTheWindowRefusesAFileMayNotBringIn() {
        assertThat(Books.codes(
                        check(SampleDecisions.testMore("M-1/c1", "M-1", 3, " ")).problems()))
                .containsExactly("decision.against-verdict", "decision.reason-wanting");
        assertThat(check(SampleDecisions.testMore("M-1/c1", "M-1", 3, " ")).drafts())
                .isEmpty();
        assertThat(Books.codes(check(SampleDecisions.keep("M-9/c1", "M-9")).problems()))
                .containsExactly(
                        "import.unknown-mix", "decision.unknown-determination", "decision.unknown-determination");
        ChangeDecision good = SampleDecisions.keep("M-1/c1", "M-1");
        ChangeDecision late = new ChangeDecision(
                good.id(),
                good.mixId(),
                good.change(),
                good.figures(),
                good.choice(),
                Optional.of(1),
                SampleCalibrations.TODAY.plusDays(1),
                good.decidedBy(),
                "",
                FactorOrigin.HERE);
        assertThat(Books.codes(check(late).problems())).containsExactly("decision.to-come", "decision.more-unasked");
    }

    /** Nobody here worked the figure out; a file without the column leaves what is there. */
    @Test
    void anUncertaintyFromAFileSaysThatItIsOne() {
        FactorIssue issue =
                bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
        StatedUncertainty stated =
                new StatedUncertainty(new BigDecimal("0.13"), Optional.of(new BigDecimal("2.4")), FactorOrigin.HERE);
        FactorIssue said = issue.on(issue.grounds().stating(Optional.of(stated)));
        Intake.Result first = check(said);
        FactorIssue taken = (FactorIssue) first.drafts().get(0).value();
        assertThat(taken.grounds().uncertainty()).contains(stated.from(FactorOrigin.IMPORTED));
        assertThat(taken.origin()).isEqualTo(FactorOrigin.HERE);
        Books.keep(bench.book, said);
        assertThat(check(said).alreadyThere()).isEqualTo(1);
        assertThat(check(issue).alreadyThere()).isEqualTo(1);
        FactorIssue other = issue.on(issue.grounds()
                .stating(Optional.of(
                        new StatedUncertainty(new BigDecimal("0.01"), Optional.empty(), FactorOrigin.HERE))));
        assertThat(Books.codes(check(other).problems())).containsExactly("import.differs");
    }

    /** The trials give 0.4; a factor that only a decision from a file would keep is not verified here. */
    @Test
    void aFactorKeptByADecisionFromAFileIsNotVerifiedHere() {
        FactorIssue issue =
                bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
        FactorIssue kept = issue.on(issue.grounds().keptBy(new ChangeDecisionId("M-1/c1")));
        Intake.Result result = check(SampleDecisions.keep("M-1/c1", "M-1"), kept);
        FactorIssue taken = (FactorIssue) result.drafts().stream()
                .map(draft -> draft.value())
                .filter(FactorIssue.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(taken.origin()).isEqualTo(FactorOrigin.IMPORTED);
        assertThat(Books.codes(result.problems())).contains("import.not-verified", "keep.not-shown");
    }

    @Test
    void aCardOfAnUnknownRevisionIsRefused() {
        assertThat(Books.codes(
                        check(new CardPrint(Bench.MIX, 7, 1, "A6", "printer")).problems()))
                .containsExactly("import.unknown-issue");
    }
}
