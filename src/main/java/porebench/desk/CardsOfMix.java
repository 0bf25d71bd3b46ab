package porebench.desk;

import java.util.List;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.record.id.MixId;

/**
 * Asks which cards of one mix are out and who holds them; nothing of another mix is read.
 *
 * @param mix the mix
 */
public record CardsOfMix(MixId mix) implements Question<List<HeldCard>> {
    @Override
    public List<HeldCard> answer(Reading seen) {
        return Custody.of(
                        seen.book(),
                        seen.rows().stream()
                                .filter(row -> row.mixId().equals(mix))
                                .toList(),
                        seen.moment())
                .out();
    }
}
