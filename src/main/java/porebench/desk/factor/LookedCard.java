package porebench.desk.factor;

import java.util.List;
import java.util.Optional;
import porebench.desk.CardsOfMix;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.issue.Issuing;
import porebench.evidence.paper.CardSeal;
import porebench.evidence.paper.FactorCard;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.book.Belonging;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** The card that is looked at, of a revision or of the one being prepared, with the copies that left the laboratory. */
final class LookedCard {
    private final DeskModel desk;
    private Optional<FactorCard> card = Optional.empty();
    private List<Version<CardPrint>> prints = List.of();

    LookedCard(DeskModel desk) {
        this.desk = desk;
    }

    /** Reads what the card of a revision needs of the lab book; a withdrawal has none. */
    void read(Optional<FactorIssue> issue) {
        card = issue.filter(FactorIssue::isIssue).flatMap(this::of);
        prints = issue.stream()
                .flatMap(one -> desk.answer(new PrintsOf(one.mixId())).orElse(List.of()).stream()
                        .filter(print -> print.value().revision() == one.revision()))
                .toList();
    }

    /** Makes the card as it will be once the revision being prepared is issued; none where that is not known yet. */
    void prepare(Optional<Issuing.Decision> decision) {
        card = desk.evidence()
                .flatMap(known -> decision.flatMap(one -> Issuing.asItWouldBe(known, one)))
                .flatMap(this::of);
        prints = List.of();
    }

    private Optional<FactorCard> of(FactorIssue issue) {
        return desk.answer(new Question.HeadOfBook())
                .map(head -> FactorCard.of(
                        desk.evidence().orElseThrow(),
                        issue,
                        desk.laboratory(),
                        head,
                        desk.tools().now()))
                .map(known -> known.sealedBy(desk.answer(new SealOf(issue)).flatMap(seal -> seal)));
    }

    Optional<FactorCard> card() {
        return card;
    }

    /** Returns the copies that left the laboratory. */
    List<Version<CardPrint>> prints() {
        return prints;
    }

    /** Returns the wish to let the card leave; {@code marked} where a copy with its state across it would do. */
    CardHandout.Wish wish(Paper paper, boolean marked, String why) {
        FactorIssue issue = card.orElseThrow().issue();
        return new CardHandout.Wish(
                issue.mixId(),
                Optional.of(issue.revision()),
                paper,
                marked,
                desk.tools().now(),
                desk.person(),
                why);
    }

    /** Asks for what seals the cards of a revision; one that is only being prepared has no seal yet. */
    private record SealOf(FactorIssue issue) implements Question<Optional<CardSeal>> {
        @Override
        public Optional<CardSeal> answer(Reading seen) {
            return CardSeal.of(seen.book(), issue);
        }
    }

    /** Returns the cards of the selected mix that are out, of whichever revision; empty where none is, or while they are looked up. */
    static Optional<List<HeldCard>> out(DeskModel desk) {
        return desk.selected().flatMap(mix -> desk.answer(new CardsOfMix(mix))).filter(cards -> !cards.isEmpty());
    }

    /** Asks for the cards of a mix that left the laboratory. */
    private record PrintsOf(MixId mix) implements Question<List<Version<CardPrint>>> {
        @Override
        public List<Version<CardPrint>> answer(Reading seen) {
            return seen.book().latestOf(Belonging.PRINTS_OF_MIX, mix.text());
        }
    }
}
