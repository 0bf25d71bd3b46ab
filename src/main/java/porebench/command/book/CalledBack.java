package porebench.command.book;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.custody.Holders;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;

/** Says which cards have to come back after something was kept, and with whom they are. */
final class CalledBack {
    private CalledBack() {}

    private static List<HeldCard> out(LabBook book, FactorIssue kept, LocalDateTime now) {
        return Evidence.of(book, kept.mixId()).stream()
                .flatMap(evidence -> Custody.of(book, List.of(RegisterRow.of(evidence, now)), now).out().stream())
                .filter(card -> card.print().revision() < kept.revision())
                .toList();
    }

    /** Keeps drafts and returns what is against it; once they are kept, also which cards the revisions among them call back. */
    static List<Problem> keep(LabBook book, List<Draft> drafts, String who, String why, LocalDateTime now) {
        List<Problem> problems = new ArrayList<>(book.keep(drafts, who, why));
        if (!Problem.anyError(problems)) {
            problems.addAll(by(
                    book,
                    drafts.stream()
                            .map(Draft::value)
                            .filter(FactorIssue.class::isInstance)
                            .map(FactorIssue.class::cast)
                            .toList(),
                    now));
        }
        return problems;
    }

    /** Returns a warning that names the cards of earlier revisions of several mixes, all in one. */
    private static List<Problem> by(LabBook book, List<FactorIssue> kept, LocalDateTime now) {
        List<HeldCard> out =
                kept.stream().flatMap(issue -> out(book, issue, now).stream()).toList();
        return named(out).stream().toList();
    }

    /** Returns a warning that names some cards that are out; empty where there is none. */
    static Optional<Problem> named(List<HeldCard> out) {
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.warning("cards", "custody.called-back", out.size(), Holders.named(out)));
    }
}
