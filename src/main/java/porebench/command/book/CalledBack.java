package porebench.command.book;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.custody.Holders;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;

/** Says which cards have to come back after something was kept, and with whom they are. */
final class CalledBack {
    private CalledBack() {}

    /** Returns a warning that names the cards of earlier revisions that are out once a revision was kept; none where none is. */
    static List<Problem> by(LabBook book, FactorIssue kept, LocalDateTime now) {
        return Evidence.of(book, kept.mixId())
                .map(evidence -> Custody.of(book, List.of(RegisterRow.of(evidence, now)), now).out().stream()
                        .filter(card -> card.print().revision() < kept.revision())
                        .toList())
                .flatMap(CalledBack::named)
                .stream()
                .toList();
    }

    /** Returns a warning that names some cards that are out; empty where there is none. */
    static Optional<Problem> named(List<HeldCard> out) {
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.warning("cards", "custody.called-back", out.size(), Holders.named(out)));
    }
}
