package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.Issuing;
import porebench.method.Answer;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.SampleGroups;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.store.Books;

/**
 * A {@link Bench} with a group that is tested on its mix: M-1 with 40 % of sand, M-2 with 41 % and M-3 with 42 %, tolerance 3; M-9 is
 * as M-1 and in no group.
 */
public final class GroupBench implements AutoCloseable {
    public final Bench bench;
    public final LabBook book;

    public GroupBench(Path folder) {
        bench = new Bench(folder);
        book = bench.book;
        Books.keep(
                book,
                SampleGroups.mix("M-2", "717.5", "1032.5"),
                SampleGroups.mix("M-3", "735", "1015"),
                SampleGroups.mix("M-9", "700", "1050"),
                SampleGroups.group("G-1", "M-2", "M-3"));
    }

    public Version<FactorGroup> group() {
        return book.latest(FactorGroup.class, "G-1").orElseThrow();
    }

    public GroupIssuing issuing(DeterminationId basis) {
        return new GroupIssuing(EvidenceReader.asking(book)::readEach, bench.scatter(), group(), basis);
    }

    public Answer<GroupIssuing.Issued> decided(DeterminationId basis, LocalDate from) {
        Issuing.Decision decision = Bench.decision(basis, from);
        GroupIssuing issuing = issuing(basis);
        return issuing.issue(new Issuing.Decision(
                basis,
                from,
                Optional.empty(),
                decision.issuedBy(),
                decision.approvedBy(),
                decision.reason(),
                issuing.doubts().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Bench.takingOn(issuing.doubts(), "M. Ash", "looked at"))));
    }

    public List<FactorIssue> issue(DeterminationId basis, LocalDate from) {
        List<FactorIssue> issues = decided(basis, from).value().orElseThrow().issues();
        assertThat(book.keep(issues.stream().map(Draft::of).toList(), "R. Vale", "first factor"))
                .isEmpty();
        return issues;
    }

    public List<FactorIssue> issue() {
        return issue(Bench.FIRST, Bench.START);
    }

    public Evidence of(MixId mix) {
        return Evidence.of(book, mix).orElseThrow();
    }

    @Override
    public void close() {
        bench.close();
    }
}
