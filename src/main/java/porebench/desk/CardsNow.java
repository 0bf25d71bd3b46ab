package porebench.desk;

import porebench.evidence.custody.CardAlarms;
import porebench.evidence.custody.Custody;

/** Asks where all factor cards are, and which of them are out on a factor that no longer holds: one read for all who show it. */
public record CardsNow() implements Question<CardsNow.Found> {
    /**
     * Where the cards are.
     *
     * @param custody the cards
     * @param alarms those that are to come back
     */
    public record Found(Custody custody, CardAlarms alarms) {}

    @Override
    public Found answer(Reading seen) {
        Custody custody = Custody.ofLaboratory(seen.book(), seen.rows(), seen.moment());
        return new Found(custody, CardAlarms.of(custody));
    }
}
