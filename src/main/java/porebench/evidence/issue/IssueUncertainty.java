package porebench.evidence.issue;

import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.budget.QuotedBudget;
import porebench.method.budget.BudgetResult;
import porebench.record.DecidedFigures;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.StatedUncertainty;
import porebench.record.book.Draft;

/** How uncertain a factor is when it is issued, stated with it for good: the one uncertainty that is quoted of its determination. */
public final class IssueUncertainty {
    private IssueUncertainty() {}

    /**
     * Returns a revision with the uncertainty that is quoted that day; one that hands out no factor, and one that a decision keeps though
     * its own trials give another, without: theirs would be that of the other. It takes some tenths of a second.
     *
     * @param evidence what the revision was decided on
     * @param laboratory how trials scatter in the laboratory
     */
    public static FactorIssue stated(Evidence evidence, LaboratoryScatter laboratory, FactorIssue issue) {
        if (!issue.isIssue()) {
            return issue;
        }
        Optional<StatedUncertainty> stated = evidence.determination(issue.determinationId())
                .filter(judged -> judged.summary()
                        .filter(summary -> summary.reportedPercent().compareTo(issue.factorPercent()) == 0)
                        .isPresent())
                .flatMap(judged -> QuotedBudget.of(evidence, judged, laboratory))
                .map(IssueUncertainty::of);
        return issue.on(issue.grounds().stating(stated));
    }

    /** Returns drafts in which every revision that is decided here says its uncertainty, as {@link #stated(Evidence, LaboratoryScatter, FactorIssue)}. */
    public static List<Draft> stated(Evidence evidence, LaboratoryScatter laboratory, List<Draft> drafts) {
        return drafts.stream()
                .map(draft -> draft.value() instanceof FactorIssue issue && !draft.cameIn()
                        ? new Draft(stated(evidence, laboratory, issue), draft.basedOn())
                        : draft)
                .toList();
    }

    private static StatedUncertainty of(BudgetResult result) {
        double coverage = result.uncertaintyPercent() / result.budget().combinedPercent();
        return new StatedUncertainty(
                DecidedFigures.figure(result.uncertaintyPercent()),
                result.isDrawn() ? Optional.empty() : Optional.of(DecidedFigures.figure(coverage)),
                FactorOrigin.HERE);
    }
}
