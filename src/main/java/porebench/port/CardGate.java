package porebench.port;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.evidence.Moments;
import porebench.evidence.paper.CardSeal;
import porebench.evidence.paper.FactorCard;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** Which card of a mix may leave a lab book as it stands now: the same for one card and for many. */
final class CardGate {
    private final LabBook book;
    private final Optional<Laboratory> laboratory;
    private final Head head;

    CardGate(LabBook book) {
        this.book = book;
        this.laboratory = book.latest(Laboratory.class, Laboratory.ID).map(Version::value);
        this.head = book.head();
    }

    /**
     * A card that may leave, as it is or marked.
     *
     * @param card the card
     * @param profile the rules of its mix
     */
    record Allowed(FactorCard card, Profile profile) {}

    /** Returns that the lab book has no such mix. */
    static Problem notThere(MixId mix) {
        return Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mix.text());
    }

    /**
     * Returns the card of a mix, or why it may not leave.
     *
     * @param revision the revision; empty for the one in force, or the newest when a marked copy is wanted and none is
     * @param marked whether a copy with its state across it is wanted where the card may not leave otherwise
     */
    Answer<Allowed> card(Evidence evidence, Optional<Integer> revision, boolean marked, LocalDateTime moment) {
        Optional<FactorIssue> inForce = evidence.inForceAt(moment);
        Optional<FactorIssue> issue = revision.isEmpty() && inForce.isPresent()
                ? inForce
                : evidence.issues().stream()
                        .map(Version::value)
                        .filter(FactorIssue::isIssue)
                        .filter(one ->
                                revision.map(number -> one.revision() == number).orElse(marked))
                        .reduce((earlier, later) -> later);
        return issue.map(one -> card(evidence, one, marked, moment)).orElseGet(() -> none(evidence, moment));
    }

    private static Answer<Allowed> none(Evidence evidence, LocalDateTime moment) {
        return Answer.refused(List.of(Problem.error(
                "factor",
                "issue.none-in-force",
                evidence.mix().value().id().text(),
                Moments.said(evidence.issues(), moment))));
    }

    private Answer<Allowed> card(Evidence evidence, FactorIssue issue, boolean marked, LocalDateTime moment) {
        Optional<Problem> refusal = CardState.refusal(evidence, issue, moment);
        if (refusal.isPresent() && !marked) {
            return Answer.refused(List.of(refusal.get()));
        }
        return Answer.of(
                new Allowed(
                        FactorCard.of(evidence, issue, laboratory, head, moment).sealedBy(CardSeal.of(book, issue)),
                        evidence.profile()),
                refusal.stream().map(Problem::asWarning).toList());
    }
}
