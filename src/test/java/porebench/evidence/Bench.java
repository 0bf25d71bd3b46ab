package porebench.evidence;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** A real lab book with one mix of two known sources, one meter, and a determination of three trials: G 0.4, 0.4, 0.5. */
public final class Bench implements AutoCloseable {
    public static final MixId MIX = new MixId("M-1");
    public static final DeterminationId FIRST = new DeterminationId("M-1/1");
    /** The first day of revision 1. */
    public static final LocalDate START = LocalDate.of(2026, 3, 9);

    public final LabBook book;

    public Bench(Path folder) {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "Ledge 1"),
                Samples.source("S-2", Role.COARSE, "Ledge 1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.trial("T-2", "M-1", "M-1/1", "5.4"),
                Samples.trial("T-3", "M-1", "M-1/1", "5.5"));
    }

    public Evidence evidence() {
        return Evidence.of(book, MIX).orElseThrow();
    }

    public static Issuing.Decision decision(DeterminationId determination, LocalDate from) {
        return new Issuing.Decision(determination, from, Optional.empty(), "R. Vale", "M. Ash", "first factor");
    }

    /** Issues a factor from the first determination, which must succeed. */
    public FactorIssue issue(LocalDate from) {
        return keep(issuing(decision(FIRST, from)));
    }

    /** Decides, R. Vale taking on whatever doubts there are. */
    public Answer<FactorIssue> issuing(Issuing.Decision decision) {
        return Issuing.issue(evidence(), scatter(), takingAll(evidence(), decision));
    }

    /** Returns how trials scatter in this laboratory. */
    public LaboratoryScatter scatter() {
        return LaboratoryScatter.ofCounted(Evidence.ofAll(book).stream()
                .flatMap(each -> each.counted().stream())
                .toList());
    }

    /** Returns a decision in which M. Ash takes on every doubt. */
    public Issuing.Decision takingAll(Evidence evidence, Issuing.Decision decision) {
        List<IssueDoubt> doubts = Issuing.doubts(evidence, scatter(), decision.determinationId());
        return new Issuing.Decision(
                decision.determinationId(),
                decision.inForceFrom(),
                decision.recheckBy(),
                decision.issuedBy(),
                decision.approvedBy(),
                decision.reason(),
                doubts.isEmpty() ? Optional.empty() : Optional.of(takingOn(doubts, "M. Ash", "looked at")));
    }

    public static TakingOn takingOn(List<IssueDoubt> doubts, String who, String reason) {
        return TakingOn.all(who, reason, doubts, Problem::code);
    }

    public FactorIssue withdraw(LocalDate from) {
        return keep(Issuing.withdraw(evidence(), from, "R. Vale", "pit closed"));
    }

    public FactorIssue keep(Answer<FactorIssue> answer) {
        FactorIssue issue = answer.value().orElseThrow();
        Books.keep(book, issue);
        return issue;
    }

    public <T extends Kept> T newest(Class<T> kind, String id) {
        return book.latest(kind, id).orElseThrow().value();
    }

    public MixDesign mix() {
        return newest(MixDesign.class, "M-1");
    }

    /** Strikes trials of the first determination. */
    public void strike(List<String> trials) {
        trials.forEach(id -> Books.correct(book, newest(Trial.class, id).struck("spilled")));
    }

    @Override
    public void close() {
        book.close();
    }
}
