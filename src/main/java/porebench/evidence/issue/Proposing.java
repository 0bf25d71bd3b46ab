package porebench.evidence.issue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.OpenProposal;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.book.Draft;
import porebench.record.book.Version;

/**
 * The steps by which a factor is drafted, checked and put in force, whichever door a person comes through. Who may take which step
 * hangs on {@link FactorSteps}.
 *
 * <p>A draft rests on the versions of trials and calibrations that whoever drafted it saw. Where any of them is another by now, or
 * something about them is doubtful that was not, it can be checked and put in force no more: it is drafted anew. So it is where the mix
 * drifted out of the group whose factor it is, or the decision that keeps the factor no longer does.
 */
public final class Proposing {
    private Proposing() {}

    /**
     * A step taken.
     *
     * @param proposal the proposal after it
     * @param before the proposal before it; empty where it was drafted first
     * @param issue the revision, where it was put in force
     */
    public record Taken(
            FactorProposal proposal, Optional<Version<FactorProposal>> before, Optional<FactorIssue> issue) {
        /** Returns what is to be kept, together. */
        public List<Draft> drafts() {
            List<Draft> drafts = new ArrayList<>();
            issue.map(Draft::of).ifPresent(drafts::add);
            drafts.add(
                    before.map(version -> Draft.correcting(version, proposal)).orElseGet(() -> Draft.of(proposal)));
            return drafts;
        }
    }

    /**
     * Drafts the next revision of a mix's factor, or drafts anew what is drafted or was sent back.
     *
     * @param decision what is decided; who issues it is who drafts it, and nobody approves it yet
     * @param now the day and time, by the laboratory's clock
     */
    public static Answer<Taken> draft(
            Evidence evidence, LaboratoryScatter scatter, Issuing.Decision decision, LocalDateTime now) {
        List<Problem> problems = new ArrayList<>();
        Optional<Version<FactorProposal>> open = OpenProposal.of(evidence);
        if (!FactorSteps.of(evidence).areDrafted()) {
            problems.add(Problem.error(
                    "step", "proposal.not-needed", evidence.profile().title()));
        }
        open.filter(version -> version.value().step() == FactorProposal.Step.CHECKED)
                .ifPresent(version -> problems.add(Problem.error(
                        "step",
                        "proposal.is-checked",
                        version.value().recordId(),
                        version.value().by())));
        Answer<FactorIssue> made = Issuing.decided(evidence, scatter, decision);
        problems.addAll(made.problems());
        if (made.value().isEmpty() || Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        int number = open.map(version -> version.value().number())
                .orElseGet(() -> evidence.proposals().stream()
                                .mapToInt(version -> version.value().number())
                                .max()
                                .orElse(0)
                        + 1);
        return Answer.of(new Taken(drafted(made.value().get(), number, now), open, Optional.empty()), problems);
    }

    private static FactorProposal drafted(FactorIssue issue, int number, LocalDateTime now) {
        return new FactorProposal(
                issue.mixId(),
                number,
                FactorProposal.Step.DRAFTED,
                issue.factorPercent(),
                issue.determinationId(),
                issue.inForceFrom(),
                issue.recheckBy(),
                issue.reason(),
                issue.terms().checked(""),
                issue.mixVersion(),
                issue.sourceVersions(),
                issue.grounds(),
                issue.issuedBy(),
                issue.issuedBy(),
                now.withNano(0),
                "",
                Optional.empty());
    }

    /** Says that a person checked what is drafted and found it right. */
    public static Answer<Taken> check(Evidence evidence, String who, String remark, LocalDateTime now) {
        return step(evidence, who, (open, problems) -> {
            if (open.step() != FactorProposal.Step.DRAFTED) {
                problems.add(notNow("proposal.not-to-check", open));
            }
            FactorSteps.of(evidence).checking(open.draftedBy(), who).ifPresent(problems::add);
            changed(problems, evidence, open, who);
            return open.then(FactorProposal.Step.CHECKED, who.strip(), now.withNano(0), remark.strip());
        });
    }

    /** Sends back what is drafted or checked, to be drafted anew. */
    public static Answer<Taken> sendBack(Evidence evidence, String who, String why, LocalDateTime now) {
        return step(evidence, who, (open, problems) -> {
            if (open.step() == FactorProposal.Step.SENT_BACK) {
                problems.add(notNow("proposal.is-sent-back", open));
            }
            Issuing.requireText(problems, "reason", why);
            return open.then(FactorProposal.Step.SENT_BACK, who.strip(), now.withNano(0), why.strip());
        });
    }

    /** Gives up what is proposed. */
    public static Answer<Taken> drop(Evidence evidence, String who, String why, LocalDateTime now) {
        return step(evidence, who, (open, problems) -> {
            Issuing.requireText(problems, "reason", why);
            return open.then(FactorProposal.Step.DROPPED, who.strip(), now.withNano(0), why.strip());
        });
    }

    /**
     * Puts in force what was checked. The revision names who drafted it as who issued it, and who puts it in force as who approved
     * it.
     */
    public static Answer<Taken> putInForce(Evidence evidence, String who, String remark, LocalDateTime now) {
        Answer<Taken> step = step(evidence, who, (open, problems) -> {
            FactorSteps steps = FactorSteps.of(evidence);
            boolean isReady = open.step() == FactorProposal.Step.CHECKED
                    || open.step() == FactorProposal.Step.DRAFTED && !steps.areDrafted();
            if (!isReady) {
                problems.add(notNow("proposal.not-checked", open));
            }
            steps.puttingInForce(open.draftedBy(), open.terms().checkedBy(), who)
                    .ifPresent(problems::add);
            Issuing.secondPerson(evidence, open.draftedBy(), who).ifPresent(problems::add);
            Issuing.checkDates(problems, evidence, decision(open));
            changed(problems, evidence, open, who);
            return open.then(FactorProposal.Step.ISSUED, who.strip(), now.withNano(0), remark.strip());
        });
        return step.value()
                .flatMap(taken -> issue(evidence, taken.proposal(), who)
                        .map(issue ->
                                new Taken(taken.proposal().as(issue.revision()), taken.before(), Optional.of(issue))))
                .map(taken -> Answer.of(taken, step.problems()))
                .orElse(step);
    }

    /** What a step makes of an open proposal, noting why it cannot be taken. */
    private interface Next {
        FactorProposal of(FactorProposal open, List<Problem> problems);
    }

    private static Answer<Taken> step(Evidence evidence, String who, Next next) {
        List<Problem> problems = new ArrayList<>();
        Issuing.requireText(problems, "by", who);
        Optional<Version<FactorProposal>> open = OpenProposal.of(evidence);
        if (open.isEmpty()) {
            problems.add(Problem.error(
                    "step", "proposal.none-open", evidence.mix().value().id().text()));
        }
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        FactorProposal after = next.of(open.get().value(), problems);
        return Problem.anyError(problems)
                ? Answer.refused(problems)
                : Answer.of(new Taken(after, open, Optional.empty()), problems);
    }

    private static Problem notNow(String code, FactorProposal open) {
        return Problem.error("step", code, open.recordId(), word(open.step()));
    }

    /** Returns a step as a word inside a problem's message. */
    private static Problem.Word word(FactorProposal.Step step) {
        return new Problem.Word(
                switch (step) {
                    case DRAFTED -> "step-drafted";
                    case CHECKED -> "step-checked";
                    case SENT_BACK -> "step-sent-back";
                    case DROPPED -> "step-dropped";
                    case ISSUED -> "step-issued";
                });
    }

    private static Issuing.Decision decision(FactorProposal open) {
        return new Issuing.Decision(
                        open.determinationId(),
                        open.inForceFrom(),
                        Optional.of(open.recheckBy()),
                        open.draftedBy(),
                        "",
                        open.reason())
                .under(open.terms());
    }

    private static void changed(List<Problem> problems, Evidence evidence, FactorProposal open, String who) {
        List<Problem> changes = changes(evidence, open, who);
        if (!changes.isEmpty()) {
            problems.add(Problem.error(
                    "determination",
                    "proposal.evidence-changed",
                    open.determinationId().text()));
            problems.addAll(changes);
        }
    }

    /** Returns what is not as it was when a proposal was drafted, or no longer bears it. */
    static List<Problem> changes(Evidence evidence, FactorProposal open, String approvedBy) {
        Optional<FactorIssue> issue = issue(evidence, open, approvedBy);
        if (issue.isEmpty()) {
            return List.of(Problem.warning(
                    "determination",
                    "issue.no-trial-counts",
                    open.determinationId().text()));
        }
        List<Problem> changes = new ArrayList<>(DecidedOn.changes(evidence, issue.get()));
        basis(evidence, open)
                .ifPresent(judged -> changes.addAll(new IssueDoubts(evidence, judged).beforeStone(open.inForceFrom())));
        return changes;
    }

    private static Optional<JudgedDetermination> basis(Evidence evidence, FactorProposal open) {
        return evidence.determination(open.determinationId())
                .filter(judged -> judged.summary().isPresent());
    }

    /** Returns the revision that a proposal would be; empty where its determination gives no factor any more. */
    private static Optional<FactorIssue> issue(Evidence evidence, FactorProposal open, String approvedBy) {
        String approver = Issuing.sameName(open.draftedBy(), approvedBy) ? "" : approvedBy.strip();
        return basis(evidence, open)
                .map(judged -> new FactorIssue(
                        open.mixId(),
                        Issuing.nextRevision(evidence),
                        FactorIssue.Action.ISSUED,
                        open.factorPercent(),
                        open.determinationId(),
                        judged.meterType(),
                        open.inForceFrom(),
                        open.recheckBy(),
                        open.draftedBy(),
                        approver,
                        open.reason(),
                        open.mixVersion(),
                        open.sourceVersions(),
                        evidence.profile().id(),
                        "",
                        "",
                        open.grounds(),
                        open.terms()));
    }
}
