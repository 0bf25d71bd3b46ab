package porebench.desk.factor;

import java.util.List;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.issue.IssueUncertainty;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.book.Draft;

/** Keeps revisions with their uncertainty, which is worked out away from the window. */
final class Stating {
    private Stating() {}

    static void keep(DeskModel desk, Texts texts, List<Draft> drafts, String why, Outcome outcome) {
        if (drafts.stream().noneMatch(draft -> draft.value() instanceof FactorIssue)) {
            desk.keep(drafts, why, outcome);
            return;
        }
        Evidence evidence = desk.evidence().orElseThrow();
        LaboratoryScatter scatter = desk.scatter();
        desk.tools()
                .tasks()
                .await(
                        texts.get("stating"),
                        progress -> IssueUncertainty.stated(evidence, scatter, drafts),
                        stated -> desk.keep(stated, why, outcome),
                        outcome::fail);
    }
}
