package porebench.command.book;

import porebench.command.reply.Reply;
import porebench.command.reply.ReportLayout;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.Proposing;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.id.GroupId;

/** What {@code issue --group} answers. */
final class GroupReports {
    private GroupReports() {}

    /** Lays out a member that got nothing. */
    static ReportLayout<GroupIssuing.LeftOut> left(ReportLayout<GroupIssuing.LeftOut> layout, ProblemText problems) {
        return layout.text("mixId", one -> one.mixId().text())
                .field((json, one) -> Reply.problems(json, "why", one.why(), problems));
    }

    /** Lays out the revisions of a group. */
    static ReportLayout<GroupIssuing.Issued> issued(
            ReportLayout<GroupIssuing.Issued> layout,
            GroupId id,
            ReportLayout<FactorIssue> each,
            ReportLayout<GroupIssuing.LeftOut> left,
            Texts words) {
        return layout.text("groupId", any -> id.text())
                .field((json, issued) -> json.list("issues", issued.issues(), each::json))
                .field((json, issued) -> json.list("leftOut", issued.leftOut(), left::json))
                .alone((page, issued) -> issued.issues().forEach(issue -> {
                    page.line(words.get("issue.of-mix", issue.mixId().text()));
                    each.rows(page, issue);
                }));
    }

    /** Lays out a step taken for the drafts of a group. */
    static ReportLayout<GroupSteps.Taken> steps(
            ReportLayout<GroupSteps.Taken> layout,
            GroupId id,
            ReportLayout<FactorProposal> each,
            ReportLayout<GroupIssuing.LeftOut> left,
            Texts words) {
        return layout.text("groupId", any -> id.text())
                .field((json, taken) -> json.list(
                        "drafts",
                        taken.each().stream().map(Proposing.Taken::proposal).toList(),
                        each::json))
                .field((json, taken) -> json.list("leftOut", taken.leftOut(), left::json))
                .alone((page, taken) -> taken.each().stream()
                        .map(Proposing.Taken::proposal)
                        .forEach(draft -> {
                            page.line(words.get("issue.of-mix", draft.mixId().text()));
                            each.rows(page, draft);
                        }));
    }
}
