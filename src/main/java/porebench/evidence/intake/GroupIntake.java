package porebench.evidence.intake;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.group.GroupGate;

/** Checks groups of mixes from files, and that a factor rests on trials of its mix or of the one tested for its group. */
final class GroupIntake {
    private static final Stamp SOON = new Stamp("import", Instant.EPOCH, "import");

    private GroupIntake() {}

    /** Returns what is wrong or doubtful about a group, beside what comes in with it; nothing where it is there as it is. */
    static List<Problem> check(Records book, List<Draft> drafts, Touched touched, FactorGroup group) {
        Optional<FactorGroup> there = touched.value(FactorGroup.class, RecordKind.FACTOR_GROUP, group.recordId());
        return there.filter(group::equals).isPresent()
                ? List.of()
                : GroupGate.check(new DraftedRecords(book, drafts, SOON), group, there);
    }

    /** Returns that a factor rests on a determination of a mix that is neither its own nor the one tested for its group. */
    static List<Problem> otherMix(FactorIssue issue, Determination made) {
        return made.mixId().equals(issue.testedMix())
                ? List.of()
                : List.of(Problem.error(
                        "id",
                        "import.issue-of-another-mix",
                        issue.recordId(),
                        made.id().text(),
                        made.mixId().text()));
    }

    /** Returns a factor that states no version of its mix as one not verified here, on the versions of its determination. */
    static FactorIssue resting(FactorIssue issue, Determination made) {
        return issue.restingOn(made.mixVersion(), made.sourceVersions())
                .on(issue.isIssue() ? issue.grounds().from(FactorOrigin.IMPORTED) : issue.grounds());
    }
}
