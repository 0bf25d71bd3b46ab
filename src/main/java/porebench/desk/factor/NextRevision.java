package porebench.desk.factor;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.OpenProposal;
import porebench.evidence.Recheck;
import porebench.evidence.issue.KeptFactor;
import porebench.method.FigureName;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorProposal;
import porebench.record.book.Version;
import porebench.record.column.FactorIssueColumns;
import porebench.record.id.DeterminationId;

/** What is proposed for the next revision of a mix's factor, before a person decides. */
record NextRevision(Evidence evidence, Optional<JudgedDetermination> proposed) {
    static NextRevision of(Evidence evidence) {
        return new NextRevision(evidence, proposed(evidence));
    }

    /** Returns the determination proposed: that of a revision still to be confirmed, or the newest in which trials count. */
    private static Optional<JudgedDetermination> proposed(Evidence evidence) {
        List<JudgedDetermination> all = evidence.determinations();
        Optional<JudgedDetermination> imported = evidence.newestIssue()
                .filter(newest -> newest.isIssue() && newest.origin() == FactorOrigin.IMPORTED)
                .flatMap(newest -> evidence.determination(newest.determinationId()));
        if (imported.isPresent()) {
            return imported;
        }
        return all.stream()
                .filter(judged -> judged.summary().isPresent())
                .reduce((one, two) -> two)
                .or(() -> all.stream().reduce((one, two) -> two));
    }

    /** Returns the draft with which the form begins. */
    TypedDraft draft(LocalDate today) {
        // One that was found on another mix is drafted there, for the group.
        Optional<FactorProposal> open =
                OpenProposal.of(evidence).map(Version::value).filter(draft -> !draft.isLent());
        return open.map(NextRevision::of).orElseGet(() -> first(today));
    }

    /** Returns a draft that is open as the form shows it, to be drafted anew. */
    private static TypedDraft of(FactorProposal open) {
        return TypedDraft.BLANK
                .with(FactorModel.DETERMINATION, open.determinationId().text())
                .with(KeptChoice.COLUMN, open.grounds().keptBy().isPresent())
                .with(FactorIssueColumns.IN_FORCE_FROM, Days.show(open.inForceFrom()))
                .with(FactorIssueColumns.IN_FORCE_AT, open.terms().atText())
                .with(FactorIssueColumns.RECHECK_BY, Days.show(open.recheckBy()))
                .with(FactorIssueColumns.CONDITIONS, open.terms().conditions())
                .with(FactorIssueColumns.REASON, open.reason());
    }

    private TypedDraft first(LocalDate today) {
        LocalDate newest = evidence.newestIssue().map(FactorIssue::inForceFrom).orElse(today);
        LocalDate from = newest.isAfter(today) ? newest : today;
        LocalDate recheck = Recheck.usualDay(evidence.profile(), from);
        String hour = evidence.newestIssue()
                .filter(issue -> issue.inForceFrom().equals(from))
                .map(issue -> issue.terms().atText())
                .orElse("");
        return TypedDraft.BLANK
                .with(
                        FactorModel.DETERMINATION,
                        proposed.map(judged -> id(judged).text()).orElse(""))
                .with(
                        KeptChoice.COLUMN,
                        proposed.flatMap(judged -> KeptFactor.offered(evidence, id(judged)))
                                .isPresent())
                .with(FactorIssueColumns.IN_FORCE_FROM, Days.show(from))
                .with(FactorIssueColumns.IN_FORCE_AT, hour)
                .with(FactorIssueColumns.RECHECK_BY, Days.show(recheck));
    }

    /**
     * Returns whether the card to come is what is wanted: as many trials count as the laboratory asks for, or any before the
     * first revision, and none rests on them yet.
     */
    boolean isAwaited() {
        int least = evidence.issues().isEmpty() ? 1 : evidence.profile().count(FigureName.LEAST_TRIALS);
        return proposed.filter(judged -> judged.counted() >= least)
                .filter(judged -> evidence.issues().stream()
                        .noneMatch(issue -> issue.value().determinationId().equals(id(judged))))
                .isPresent();
    }

    private static DeterminationId id(JudgedDetermination judged) {
        return judged.determination().value().id();
    }
}
