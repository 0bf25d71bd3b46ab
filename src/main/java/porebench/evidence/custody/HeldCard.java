package porebench.evidence.custody;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.record.CardPlace;
import porebench.record.CardPrint;
import porebench.record.CardStep;

/**
 * One factor card at a moment.
 *
 * @param print the card
 * @param steps everything that is kept of what happened to it, the first step first
 * @param place where it is at that moment
 * @param standing how it stands with the factor on it
 * @param since since when it does not hold; empty where it does, and where nothing says when that began
 * @param title the title of its mix
 * @param factorPercent the factor on it, in % air; empty where its revision is not in the lab book
 */
public record HeldCard(
        CardPrint print,
        List<CardStep> steps,
        CardPlace place,
        CardStanding standing,
        Optional<LocalDateTime> since,
        String title,
        Optional<BigDecimal> factorPercent) {
    public HeldCard {
        steps = List.copyOf(steps);
    }

    /** Returns whether a crew may read it: one in a file only once somebody was handed a print of it. */
    public boolean isOut() {
        return place.where().isOut()
                && (place.where() != CardPlace.Where.PRINTED || print.way() == CardPrint.Way.HANDED_OUT);
    }

    /** Returns whether it is out with a factor that no longer holds: an alarm until it is back, destroyed, or lost with a note. */
    public boolean isToComeBack() {
        return isOut() && standing.isRecalled();
    }
}
