package porebench.evidence.source;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
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
 * @param cardsOut how many cards of that revision were handed out on paper
 * @param cardFiles how many were saved as files
 * @param trials how many trials of the mix count
 */
public record TouchedMix(
        MixId mixId,
        String title,
        FactorState state,
        Optional<FactorIssue> inForce,
        FactorState without,
        FactorState then,
        int cardsOut,
        int cardFiles,
        int trials) {
    /** Looks at a mix as it is and as it would be. */
    static TouchedMix of(
            Evidence evidence, Evidence then, LocalDateTime now, LocalDateTime looked, List<CardPrint> prints) {
        Optional<FactorIssue> inForce = evidence.inForceAt(looked);
        return new TouchedMix(
                evidence.mix().value().id(),
                evidence.mix().value().title(),
                evidence.stateAt(now),
                inForce,
                evidence.stateAt(looked),
                then.stateAt(looked),
                count(prints, inForce, CardPrint.Way.HANDED_OUT),
                count(prints, inForce, CardPrint.Way.SAVED),
                evidence.determinations().stream()
                        .mapToInt(judged -> judged.counted())
                        .sum());
    }

    private static int count(List<CardPrint> prints, Optional<FactorIssue> inForce, CardPrint.Way way) {
        return (int) prints.stream()
                .filter(print -> inForce.filter(issue -> issue.revision() == print.revision())
                        .isPresent())
                .filter(print -> print.way() == way)
                .count();
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
