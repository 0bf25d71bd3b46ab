package porebench.desk.factor;

import java.util.List;
import java.util.function.Function;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.issue.IssueUncertainty;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.book.Draft;

/** Keeps a revision with its uncertainty, which is worked out away from the window. */
final class Stating {
    private Stating() {}

    static void keep(
            DeskModel desk,
            Texts texts,
            FactorIssue issue,
            Function<FactorIssue, Draft> draft,
            String why,
            Outcome outcome) {
        Evidence evidence = desk.evidence().orElseThrow();
        LaboratoryScatter scatter = desk.scatter();
        desk.tools()
                .tasks()
                .await(
                        texts.get("stating"),
                        progress -> IssueUncertainty.stated(evidence, scatter, issue),
                        stated -> desk.keep(List.of(draft.apply(stated)), why, outcome),
                        outcome::fail);
    }
}
