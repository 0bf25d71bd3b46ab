package porebench.command.book;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import porebench.evidence.EvidenceReader;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.Moments;
import porebench.evidence.group.GroupLook;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;

/** The factor of a group as the command line issues it. */
final class GroupIssuance {
    private GroupIssuance() {}

    /** What is decided, once the determination is known. */
    interface Deciding {
        /** Returns the decision on a determination. */
        Issuing.Decision on(DeterminationId basis, Optional<TakingOn> takingOn);
    }

    /**
     * Decides about a group.
     *
     * @param asked the determination asked for; empty means the open one of the tested mix, else that of its factor
     * @param taking who takes on some doubts
     */
    static Answer<GroupIssuing.Issued> issue(
            LabBook book,
            LaboratoryScatter scatter,
            GroupId id,
            Optional<DeterminationId> asked,
            LocalDate today,
            Function<List<IssueDoubt>, Optional<TakingOn>> taking,
            Deciding deciding) {
        return decide(book, scatter, id, asked, today, taking, deciding, GroupIssuing::issue);
    }

    /** Drafts the factor of a group, as {@link #issue} issues it. */
    static Answer<Stepped> draft(
            LabBook book,
            LaboratoryScatter scatter,
            GroupId id,
            Optional<DeterminationId> asked,
            LocalDateTime now,
            Function<List<IssueDoubt>, Optional<TakingOn>> taking,
            Deciding deciding) {
        Answer<GroupSteps.Taken> made = decide(
                book,
                scatter,
                id,
                asked,
                now.toLocalDate(),
                taking,
                deciding,
                (issuing, decision) -> issuing.draft(decision, now));
        return new Answer<>(made.value().map(taken -> new Stepped(taken, taken.drafts())), made.problems());
    }

    /** A step taken for the open drafts of a group, and what is to be kept of it. */
    record Stepped(GroupSteps.Taken taken, List<Draft> drafts) {}

    /** Takes a step of the open drafts of a group. */
    static Answer<Stepped> step(
            LabBook book, LaboratoryScatter scatter, GroupId id, Function<GroupSteps, Answer<GroupSteps.Taken>> step) {
        Optional<Version<FactorGroup>> group = book.latest(FactorGroup.class, id.text());
        if (group.isEmpty()) {
            return Answer.refused(List.of(gone(id)));
        }
        GroupSteps steps = new GroupSteps(EvidenceReader.asking(book)::readEach, group.get());
        Answer<GroupSteps.Taken> taken = step.apply(steps);
        return new Answer<>(taken.value().map(one -> new Stepped(one, steps.stated(one, scatter))), taken.problems());
    }

    private static Problem gone(GroupId id) {
        return Problem.error("groupId", "book.not-there", RecordKind.FACTOR_GROUP.word(), id.text());
    }

    private static <T> Answer<T> decide(
            LabBook book,
            LaboratoryScatter scatter,
            GroupId id,
            Optional<DeterminationId> asked,
            LocalDate today,
            Function<List<IssueDoubt>, Optional<TakingOn>> taking,
            Deciding deciding,
            BiFunction<GroupIssuing, Issuing.Decision, Answer<T>> act) {
        Optional<Version<FactorGroup>> group = book.latest(FactorGroup.class, id.text());
        if (group.isEmpty()) {
            return Answer.refused(List.of(gone(id)));
        }
        EvidenceReader reader = EvidenceReader.asking(book);
        Optional<DeterminationId> basis =
                asked.or(() -> GroupLook.of(reader::readEach, group.get(), Moments.endOf(today))
                        .open());
        if (basis.isEmpty()) {
            return Answer.refused(List.of(Problem.error(
                    "determination",
                    "issue.no-trial-counts",
                    group.get().value().testedMix().text())));
        }
        GroupIssuing issuing = new GroupIssuing(reader::readEach, scatter, group.get(), basis.get());
        return act.apply(issuing, deciding.on(basis.get(), taking.apply(issuing.doubts())));
    }
}
