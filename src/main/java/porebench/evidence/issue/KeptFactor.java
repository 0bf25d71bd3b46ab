package porebench.evidence.issue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.book.Version;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;

/**
 * A factor found before a source changed that holds on: a person decided to keep it where the trials before and after show that it did
 * not move, and it is issued anew on those made after the change.
 */
public final class KeptFactor {
    private KeptFactor() {}

    /** Returns the decision by which the factor before the change may be kept on a determination made after it; empty where none may. */
    public static Optional<ChangeDecision> offered(Evidence evidence, DeterminationId determination) {
        return DecisionChanges.newest(evidence)
                .filter(decision ->
                        problems(evidence, determination, decision.id()).isEmpty());
    }

    /** Returns the factor that a decision keeps, in % air; empty where the mix has no such decision or it is about no factor. */
    public static Optional<BigDecimal> factor(Evidence evidence, ChangeDecisionId decision) {
        return find(evidence, decision)
                .flatMap(found -> revision(evidence, found))
                .map(FactorIssue::factorPercent);
    }

    private static Optional<ChangeDecision> find(Evidence evidence, ChangeDecisionId id) {
        return evidence.decisions().stream()
                .map(Version::value)
                .filter(decision -> decision.id().equals(id))
                .findFirst();
    }

    private static Optional<FactorIssue> revision(Evidence evidence, ChangeDecision decision) {
        return evidence.issues().stream()
                .map(Version::value)
                .filter(FactorIssue::isIssue)
                .filter(issue -> decision.change().revision().equals(Optional.of(issue.revision())))
                .findFirst();
    }

    /** Returns why a decision does not let a determination bear the factor from before; empty where it does. */
    static List<Problem> problems(Evidence evidence, DeterminationId determination, ChangeDecisionId id) {
        Optional<ChangeDecision> found = find(evidence, id);
        if (found.isEmpty()) {
            return List.of(problem("keep.unknown", id.text()));
        }
        ChangeDecision decision = found.get();
        List<Problem> problems = new ArrayList<>();
        if (!decision.keepsWhatHolds()) {
            problems.add(problem("keep.not-shown", id.text()));
        }
        if (!DecisionChanges.newest(evidence).equals(found)) {
            problems.add(problem("keep.decided-again", id.text()));
        }
        if (!decision.change().after().containsKey(determination)) {
            problems.add(problem("keep.other-determination", id.text(), determination.text()));
        }
        if (revision(evidence, decision).isEmpty()) {
            problems.add(problem("keep.no-factor", id.text()));
        }
        List<Problem> changes = DecisionChanges.since(evidence, decision);
        if (!changes.isEmpty()) {
            problems.add(problem("keep.evidence-changed", id.text()));
            changes.forEach(changed -> problems.add(changed.under("keptBy")));
        }
        return problems;
    }

    private static Problem problem(String code, String... values) {
        return Problem.error("keptBy", code, (Object[]) values);
    }
}
