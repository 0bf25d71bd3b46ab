package porebench.evidence.issue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.Lent;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.TakenDoubt;
import porebench.record.book.Version;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;

/** Holds a factor that came in from a file against the trials of this lab book, and lets a person confirm it. */
public final class Verifying {
    private Verifying() {}

    /**
     * Confirms a factor that came in from a file: from now on this laboratory stands for it, on the trials in its own book.
     *
     * @param version the revision, the newest of its mix
     * @param who who confirms it
     * @param reason why
     * @param takingOn who takes on which doubts, and why; empty when nobody takes on any
     * @return the corrected revision, with every doubt, taken on; or why it cannot be confirmed
     */
    public static Answer<FactorIssue> confirm(
            Evidence evidence,
            LaboratoryScatter scatter,
            Version<FactorIssue> version,
            String who,
            String reason,
            Optional<TakingOn> takingOn) {
        FactorIssue issue = version.value();
        List<Problem> problems = new ArrayList<>();
        Issuing.requireText(problems, "issuedBy", who);
        Issuing.requireText(problems, "reason", reason);
        if (!issue.isIssue() || issue.origin() != FactorOrigin.IMPORTED) {
            problems.add(Problem.error("factor", "issue.nothing-to-confirm", issue.revision()));
            return Answer.refused(problems);
        }
        problems.addAll(FactorSteps.inOneStep(evidence.profile()));
        Issuing.secondPerson(evidence, issue.issuedBy(), issue.approvedBy()).ifPresent(problems::add);
        Optional<JudgedDetermination> basis = Issuing.basis(problems, evidence, issue.determinationId());
        List<TakenDoubt> taken = new ArrayList<>();
        basis.ifPresent(judged -> {
            IssueDoubts doubts = new IssueDoubts(evidence, judged);
            problems.addAll(doubts.impossible());
            doubts.beforeEvidence(issue.begins()).ifPresent(problems::add);
            doubts.drifted().forEach(drift -> problems.add(Problem.error("determination", "issue.drifted", drift)));
            problems.addAll(checkFactor(evidence, issue, judged));
            taken.addAll(TakingOn.takeOn(problems, doubts.all(Issuing.stop(evidence, scatter, judged)), takingOn));
        });
        if (basis.isEmpty() || Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        Determination made = basis.get().determination().value();
        return Answer.of(
                issue.restingOn(made.mixVersion(), made.sourceVersions())
                        .on(Issuing.grounds(evidence, basis.get(), taken, FactorOrigin.CONFIRMED)
                                .of(issue.grounds().group())),
                problems);
    }

    /** Returns why a factor is neither the one its trials give nor one that a decision keeps on them; empty where it is. */
    private static List<Problem> checkFactor(Evidence evidence, FactorIssue issue, JudgedDetermination basis) {
        DeterminationId determination = basis.determination().value().id();
        Optional<ChangeDecisionId> keptBy = issue.grounds().keptBy();
        List<Problem> problems = new ArrayList<>(keptBy.map(id -> KeptFactor.problems(evidence, determination, id))
                .orElse(List.of()));
        BigDecimal borne = keptBy.flatMap(id -> KeptFactor.factor(evidence, id))
                .orElseGet(() -> basis.summary().orElseThrow().reportedPercent());
        if (borne.compareTo(issue.factorPercent()) != 0) {
            problems.add(Problem.error(
                    "factor", "issue.not-what-trials-give", issue.factorPercent(), determination.text(), borne));
        }
        return problems;
    }

    /**
     * Returns why a revision from a file is not borne by the evidence in the lab book: then it is kept as not verified here.
     * What can never be right is an error, and the revision is not kept at all. Whether the trials were enough is left to
     * those who issued it.
     */
    public static List<Problem> unverified(Evidence evidence, FactorIssue issue) {
        List<Problem> problems = new ArrayList<>();
        if (!issue.grounds().namesTrials() || issue.mixVersion() == 0) {
            problems.add(Problem.warning("trial_versions", "import.without-versions"));
        }
        if (issue.isLent() && Lent.of(evidence, issue).isEmpty()) {
            problems.add(Problem.warning(
                    "group_id",
                    "import.unknown-group",
                    issue.grounds().group().orElseThrow().group().text(),
                    issue.testedMix().text()));
            return problems;
        }
        Optional<JudgedDetermination> basis = evidence.determination(issue.determinationId())
                .filter(judged -> judged.summary().isPresent());
        if (basis.isEmpty()) {
            problems.add(Problem.warning(
                    "determination_id",
                    "issue.no-trial-counts",
                    issue.determinationId().text()));
            return problems;
        }
        IssueDoubts doubts = new IssueDoubts(evidence, basis.get());
        problems.addAll(doubts.impossible());
        doubts.beforeEvidence(issue.begins()).ifPresent(problems::add);
        checkFactor(evidence, issue, basis.get()).stream()
                .map(Problem::asWarning)
                .forEach(problems::add);
        Issuing.secondPerson(evidence, issue.issuedBy(), issue.approvedBy())
                .map(Problem::asWarning)
                .ifPresent(problems::add);
        problems.addAll(doubts.drifted());
        doubts.all(Optional.empty()).stream()
                .filter(doubt -> issue.takenOn().stream().noneMatch(doubt::isTakenOnBy))
                .map(IssueDoubt::asSaid)
                .forEach(problems::add);
        return problems;
    }
}
