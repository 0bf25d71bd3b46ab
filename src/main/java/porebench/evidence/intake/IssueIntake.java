package porebench.evidence.intake;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceReader;
import porebench.evidence.issue.FactorSteps;
import porebench.evidence.issue.Verifying;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.StatedUncertainty;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.LabBook;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.id.MixId;

/**
 * Holds the factors of an import against the trials that come with them or are there, once all records are known.
 *
 * <p>A factor that its evidence bears is kept as it is. One that it does not bear is kept as not verified here, with every
 * reason. One that can never be right is refused.
 */
final class IssueIntake {
    private static final Stamp SOON = new Stamp("import", Instant.EPOCH, "import");

    private final Records after;
    private final Map<MixId, Optional<Evidence>> known = new HashMap<>();
    private Optional<EvidenceReader> reader = Optional.empty();

    IssueIntake(LabBook book, List<Draft> drafts) {
        this.after = new DraftedRecords(book, drafts, SOON);
    }

    /** Returns what is wrong with a card that left: nobody knows the revision it shows. */
    static List<Problem> check(CardPrint print, BiFunction<RecordKind, String, Optional<Kept>> known) {
        String issue = FactorIssue.idOf(print.mixId(), print.revision());
        return known.apply(RecordKind.FACTOR_ISSUE, issue).isPresent()
                ? List.of()
                : List.of(Problem.error("id", "import.unknown-issue", print.recordId(), issue));
    }

    /**
     * Returns what can be kept once every new revision of a factor was held against the evidence as it will be.
     *
     * @param drafts what else can be kept, and the revisions
     * @param issues the revisions with their places
     * @param problems takes why one is refused or not verified
     */
    static List<Draft> looked(LabBook book, List<Draft> drafts, Map<String, Incoming> issues, List<Problem> problems) {
        if (issues.isEmpty()) {
            return drafts;
        }
        IssueIntake intake = new IssueIntake(book, drafts);
        List<Draft> looked = new ArrayList<>();
        for (Draft draft : drafts) {
            if (!(draft.value() instanceof FactorIssue issue)) {
                looked.add(draft);
                continue;
            }
            Looked seen = intake.look(issue);
            Incoming one = Objects.requireNonNull(issues.get(issue.recordId()));
            seen.problems().forEach(problem -> problems.add(problem.at(one.place())));
            seen.issue().ifPresent(kept -> looked.add(new Draft(kept, draft.basedOn(), true)));
        }
        return looked;
    }

    /**
     * A revision that was looked at.
     *
     * @param issue the revision as it can be kept; empty when it is refused
     * @param problems why it is refused or not verified
     */
    record Looked(Optional<FactorIssue> issue, List<Problem> problems) {}

    /** Looks at a new revision. */
    Looked look(FactorIssue stated) {
        // Nobody here worked out the uncertainty that a file states.
        FactorIssue issue = stated.on(
                stated.grounds().stating(stated.grounds().uncertainty().map(one -> one.from(FactorOrigin.IMPORTED))));
        if (!issue.isIssue()) {
            return new Looked(Optional.of(issue), List.of());
        }
        Optional<Evidence> evidence = known.computeIfAbsent(issue.mixId(), this::read);
        List<Problem> problems = new ArrayList<>(
                evidence.map(of -> Verifying.unverified(of, issue)).orElse(List.of()));
        if (Problem.anyError(problems)) {
            return new Looked(Optional.empty(), problems);
        }
        evidence.filter(of -> FactorSteps.of(of).areDrafted())
                .ifPresent(of -> problems.add(Problem.warning(
                        "checked_by", "import.steps-elsewhere", of.profile().title())));
        if (problems.isEmpty() && issue.origin() != FactorOrigin.IMPORTED) {
            return new Looked(Optional.of(issue), problems);
        }
        problems.add(0, Problem.warning("origin", "import.not-verified", issue.recordId()));
        return new Looked(Optional.of(issue.on(issue.grounds().from(FactorOrigin.IMPORTED))), problems);
    }

    private Optional<Evidence> read(MixId mixId) {
        EvidenceReader once = reader.orElseGet(() -> EvidenceReader.asking(after));
        reader = Optional.of(once);
        return after.latest(MixDesign.class, mixId.text()).map(once::read);
    }

    /** Returns a revision with what its row leaves open filled from the one that is there. */
    static FactorIssue filled(FactorIssue issue, FactorIssue there) {
        FactorIssue resting =
                issue.mixVersion() > 0 ? issue : issue.restingOn(there.mixVersion(), there.sourceVersions());
        Grounds own = resting.grounds();
        if (!own.namesTrials()) {
            return resting.on(there.grounds());
        }
        Optional<StatedUncertainty> known = there.grounds().uncertainty();
        Optional<StatedUncertainty> stated = own.uncertainty()
                .map(one -> one.from(known.map(StatedUncertainty::origin).orElse(FactorOrigin.IMPORTED)));
        Grounds filled = own.from(there.origin()).stating(stated.or(() -> known));
        return resting.on(
                own.keptBy().isPresent()
                        ? filled
                        : there.grounds().keptBy().map(filled::keptBy).orElse(filled));
    }
}
