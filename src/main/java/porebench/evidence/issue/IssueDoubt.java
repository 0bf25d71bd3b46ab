package porebench.evidence.issue;

import java.util.Optional;
import porebench.evidence.JudgedTrial;
import porebench.method.Problem;
import porebench.record.TakenDoubt;
import porebench.record.id.TrialId;

/**
 * Something doubtful about the evidence of a factor, to be taken on by a named person or settled before it is issued.
 *
 * @param trial the trial it is about; empty when it is about the determination as a whole
 * @param problem what is doubtful
 */
public record IssueDoubt(Optional<TrialId> trial, Problem problem) {
    /**
     * What a doubt is known by while a person decides.
     *
     * @param trial the trial; empty when it is about the determination
     * @param field what it is about
     * @param code its code
     */
    public record Key(Optional<TrialId> trial, String field, String code) {}

    static IssueDoubt of(JudgedTrial judged, Problem problem) {
        return new IssueDoubt(Optional.of(judged.trial().value().id()), problem);
    }

    static IssueDoubt ofAll(Problem problem) {
        return new IssueDoubt(Optional.empty(), problem);
    }

    /** Returns what it is known by. */
    public Key key() {
        return new Key(trial, problem.field(), problem.code());
    }

    /** Returns it as a problem that names its trial. */
    public Problem asSaid() {
        return trial.map(id -> Problem.warning(problem.field(), "issue.doubt-of-trial", id.text(), problem))
                .orElse(problem);
    }

    /** Returns whether a doubt that was taken on is this one. */
    boolean isTakenOnBy(TakenDoubt taken) {
        return taken.trial().equals(trial) && taken.code().equals(problem.code());
    }
}
