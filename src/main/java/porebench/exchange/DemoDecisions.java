package porebench.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.change.ChangeDeciding;
import porebench.evidence.change.SourceChange;
import porebench.evidence.issue.IssueUncertainty;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Training;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.statistics.comparison.ComparisonVerdict;

/**
 * What the demo's laboratory decided when its dolomite changed. It is decided here as a person would in the window, not read from a file:
 * a decision from a file is marked as one whose comparison nobody here saw.
 */
final class DemoDecisions {
    /** The margin: a whole step in which the factor is reported. */
    private static final double MARGIN_PERCENT = 0.1;

    private static final String WHO = "H. Ostrander";
    private static final MixId SHOULDER = new MixId("HG-109");
    private static final MixId FUEL_PAD = new MixId("HG-110");
    private static final MixId CHANNEL = new MixId("HG-111");

    private DemoDecisions() {}

    /** Decides on the three mixes that were tested with the new ledge, and issues the factor that is kept. */
    static void decide(LabBook book) {
        LaboratoryScatter scatter = LaboratoryStanding.of(book).scatter();
        decide(book, scatter, FUEL_PAD, ComparisonVerdict.REPLACE, LocalDate.of(2026, 11, 13), "");
        ChangeDecision keep = decide(
                book,
                scatter,
                SHOULDER,
                ComparisonVerdict.KEEP,
                LocalDate.of(2026, 11, 17),
                "A tenth of its stone is dolomite");
        decide(book, scatter, CHANNEL, ComparisonVerdict.TEST_MORE, LocalDate.of(2026, 11, 19), "");
        Evidence evidence = Evidence.of(book, SHOULDER).orElseThrow();
        Issuing.Decision decision = new Issuing.Decision(
                        new DeterminationId("HG-109/2"),
                        LocalDate.of(2026, 11, 18),
                        Optional.empty(),
                        "M. Quist",
                        WHO,
                        "Ledge 5 did not move it: kept on the trials of the new ledge")
                .asDecided(Optional.of(keep.id()));
        FactorIssue kept = done(Issuing.issue(evidence, scatter, decision));
        keep(book, IssueUncertainty.stated(evidence, scatter, kept));
    }

    private static ChangeDecision decide(
            LabBook book, LaboratoryScatter scatter, MixId mix, ComparisonVerdict choice, LocalDate on, String reason) {
        Evidence evidence = Evidence.of(book, mix).orElseThrow();
        SourceChange change = done(SourceChange.of(evidence, scatter, MARGIN_PERCENT));
        Optional<Integer> more =
                choice == ComparisonVerdict.TEST_MORE ? ChangeDeciding.proposed(change.comparison()) : Optional.empty();
        ChangeDecision decision =
                done(ChangeDeciding.decide(evidence, change, new ChangeDeciding.Wish(choice, more, on, WHO, reason)));
        keep(book, decision);
        return decision;
    }

    private static <T> T done(Answer<T> answer) {
        return answer.value()
                .orElseThrow(() ->
                        new IllegalStateException("the demo must be decided, but is refused: " + answer.problems()));
    }

    private static void keep(LabBook book, Kept record) {
        var problems = book.keep(List.of(Draft.of(record)), Training.DEMO_KEEPER, "Decided on the new ledge");
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the demo must be kept, but is refused: " + problems);
        }
    }
}
