package porebench.command.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.evidence.EvidenceReader;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.Moments;
import porebench.evidence.group.GroupLook;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.RecordKind;
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
        Optional<Version<FactorGroup>> group = book.latest(FactorGroup.class, id.text());
        if (group.isEmpty()) {
            return Answer.refused(
                    List.of(Problem.error("groupId", "book.not-there", RecordKind.FACTOR_GROUP.word(), id.text())));
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
        return issuing.issue(deciding.on(basis.get(), taking.apply(issuing.doubts())));
    }
}
