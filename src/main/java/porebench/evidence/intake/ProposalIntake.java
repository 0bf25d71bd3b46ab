package porebench.evidence.intake;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.Training;

/**
 * Checks what a file says was proposed as a factor. Who drafted and checked it elsewhere nobody can prove here: what is still open
 * comes in as sent back, so that somebody here drafts it anew.
 */
final class ProposalIntake {
    private final BiFunction<RecordKind, String, Optional<Kept>> known;
    private final Touched touched;
    private final boolean isTraining;

    /**
     * Makes one.
     *
     * @param known returns a record as it will be once all is kept
     * @param touched the records that are there
     * @param isTraining whether the lab book is for training
     */
    ProposalIntake(BiFunction<RecordKind, String, Optional<Kept>> known, Touched touched, boolean isTraining) {
        this.known = known;
        this.touched = touched;
        this.isTraining = isTraining;
    }

    /**
     * Returns a proposal as it may come in; empty when it may not.
     *
     * @param problems takes why it may not, or comes in otherwise
     */
    Optional<Incoming> take(Incoming one, List<Problem> problems) {
        FactorProposal proposal = (FactorProposal) one.value();
        List<Problem> found = check(proposal);
        boolean isNew = touched.latest(proposal.kind(), proposal.recordId()).isEmpty();
        FactorProposal taken = isNew ? asItComesIn(proposal) : proposal;
        if (!taken.equals(proposal)) {
            found.add(Problem.warning("step", "import.proposal-open", proposal.recordId()));
        }
        found.forEach(problem -> problems.add(problem.at(one.place())));
        return Problem.anyError(found) ? Optional.empty() : Optional.of(new Incoming(one.place(), taken));
    }

    /** Returns what is wrong with a proposal: by itself, or for what it names. */
    private List<Problem> check(FactorProposal proposal) {
        List<Problem> problems = new ArrayList<>();
        if (known.apply(RecordKind.MIX, proposal.mixId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "id",
                    "import.unknown-mix",
                    proposal.kind().word(),
                    proposal.recordId(),
                    proposal.mixId().text()));
        }
        if (known.apply(RecordKind.DETERMINATION, proposal.determinationId().text())
                .isEmpty()) {
            problems.add(Problem.error(
                    "id",
                    "import.unknown-determination",
                    proposal.recordId(),
                    proposal.determinationId().text()));
        }
        problems.addAll(grounds(proposal));
        boolean isIssued = proposal.step() == FactorProposal.Step.ISSUED;
        Optional<String> issue = proposal.revision().map(number -> FactorIssue.idOf(proposal.mixId(), number));
        if (isIssued != issue.isPresent()) {
            problems.add(Problem.error("revision", "proposal.issued-as", proposal.recordId()));
        }
        issue.filter(id -> known.apply(RecordKind.FACTOR_ISSUE, id).isEmpty())
                .ifPresent(
                        id -> problems.add(Problem.error("revision", "import.unknown-issue", proposal.recordId(), id)));
        Training.mixing(proposal, isTraining).ifPresent(problems::add);
        return problems;
    }

    /** Returns what is wrong with what a proposal rests on beside its trials: a group, or a decision, that nobody here knows. */
    private List<Problem> grounds(FactorProposal proposal) {
        List<Problem> problems = new ArrayList<>();
        proposal.grounds()
                .group()
                .filter(ground -> known.apply(
                                        RecordKind.FACTOR_GROUP, ground.group().text())
                                .isEmpty()
                        || known.apply(RecordKind.MIX, ground.testedMix().text())
                                .isEmpty())
                .ifPresent(ground -> problems.add(Problem.error(
                        "group_id",
                        "proposal.unknown-group",
                        proposal.recordId(),
                        ground.group().text(),
                        ground.testedMix().text())));
        proposal.grounds()
                .keptBy()
                .filter(id -> known.apply(RecordKind.CHANGE_DECISION, id.text()).isEmpty())
                .ifPresent(id -> problems.add(
                        Problem.error("kept_by", "proposal.unknown-decision", proposal.recordId(), id.text())));
        return problems;
    }

    private static FactorProposal asItComesIn(FactorProposal proposal) {
        LocalDateTime at = proposal.at();
        return proposal.isOpen() && proposal.step() != FactorProposal.Step.SENT_BACK
                ? proposal.then(FactorProposal.Step.SENT_BACK, proposal.by(), at, proposal.remark())
                : proposal;
    }
}
