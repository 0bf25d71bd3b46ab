package porebench.evidence.source;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.custody.HeldCard;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.id.MixId;

/**
 * A mix that uses a source, with what rests on it.
 *
 * @param mixId the mix
 * @param title its title
 * @param state how it stands with its factor now
 * @param inForce the revision in force at the moment that is looked at: now, or the end of a day to come
 * @param without how it stands at that moment as the lab book is
 * @param then how it stands at that moment if the version is kept that is asked about
 * @param out the cards of that revision that are out, with who holds them
 * @param cardFiles how many were saved as files and handed to nobody yet
 * @param trials how many trials of the mix count
 */
public record TouchedMix(
        MixId mixId,
        String title,
        FactorState state,
        Optional<FactorIssue> inForce,
        FactorState without,
        FactorState then,
        List<HeldCard> out,
        int cardFiles,
        int trials) {
    public TouchedMix {
        out = List.copyOf(out);
    }

    /** Looks at a mix as it is and as it would be, its cards apart. */
    static TouchedMix of(Evidence evidence, Evidence then, LocalDateTime now, LocalDateTime looked) {
        return new TouchedMix(
                evidence.mix().value().id(),
                evidence.mix().value().title(),
                evidence.stateAt(now),
                evidence.inForceAt(looked),
                evidence.stateAt(looked),
                then.stateAt(looked),
                List.of(),
                0,
                evidence.determinations().stream()
                        .mapToInt(judged -> judged.counted())
                        .sum());
    }

    /** Returns the same mix with those of some cards of it that are of the revision in force. */
    TouchedMix with(List<HeldCard> cards) {
        List<HeldCard> own = cards.stream()
                .filter(card -> inForce.filter(
                                issue -> issue.revision() == card.print().revision())
                        .isPresent())
                .toList();
        return new TouchedMix(
                mixId,
                title,
                state,
                inForce,
                without,
                then,
                own.stream().filter(HeldCard::isOut).toList(),
                (int) own.stream()
                        .filter(card -> card.print().way() == CardPrint.Way.SAVED)
                        .filter(card -> card.steps().isEmpty())
                        .count(),
                trials);
    }

    /** Returns how many of its cards are out. */
    public int cardsOut() {
        return out.size();
    }

    /** Returns whether its factor no longer holds if the version is kept. */
    public boolean becomesUntrue() {
        return without != FactorState.SOURCE_CHANGED && then == FactorState.SOURCE_CHANGED;
    }

    /** Returns whether its factor holds again if the version is kept. */
    public boolean becomesTrue() {
        return without == FactorState.SOURCE_CHANGED && then != FactorState.SOURCE_CHANGED;
    }
}
