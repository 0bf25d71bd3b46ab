package porebench.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;

/**
 * What makes a revision untrue on a day, and what will later.
 *
 * @param evidence what is known of its mix
 * @param issue the revision, which issued a factor or withdrew one
 * @param day the day
 */
record Untrue(Evidence evidence, FactorIssue issue, LocalDate day) {
    /** Returns what will make it untrue after the day, before its recheck, and that the mix tested for its group was tested anew. */
    List<Problem> coming() {
        List<Problem> coming = new ArrayList<>();
        evidence.changesToCome(issue, day).forEach((from, source) -> {
            if (!from.isAfter(issue.recheckBy())) {
                coming.add(Problem.warning("sources", "register.source-changes", source.text(), from.toString()));
            }
        });
        Lent.of(evidence, issue).flatMap(one -> one.renewed(Moments.endOf(day))).ifPresent(coming::add);
        if (issue.isIssue()) {
            coming.addAll(evidence.recheck(issue).why(day, Recheck.Level.COMING));
        }
        return coming;
    }

    /** Returns everything that makes it untrue on the day. */
    List<Problem> why() {
        List<Problem> why = new ArrayList<>();
        if (issue.origin() == FactorOrigin.IMPORTED) {
            why.add(Problem.warning("factor", "register.not-verified", issue.revision()));
        }
        evidence.changesSince(issue, day)
                .forEach(change ->
                        why.add(change.asProblem(evidence.mix().value().id())));
        Lent.withdrawn(evidence, issue, Moments.endOf(day)).ifPresent(why::add);
        why.addAll(evidence.evidenceChangesSince(issue));
        return why;
    }
}
