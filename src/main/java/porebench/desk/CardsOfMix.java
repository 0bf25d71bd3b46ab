package porebench.desk;

import java.util.List;
import java.util.Set;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.record.id.MixId;

/**
 * Asks which cards of one mix, or of some, are out and who holds them; nothing of another mix is read.
 *
 * @param mixes the mixes
 */
public record CardsOfMix(Set<MixId> mixes) implements Question<List<HeldCard>> {
    public CardsOfMix {
        mixes = Set.copyOf(mixes);
    }

    /** Asks of one mix. */
    public CardsOfMix(MixId mix) {
        this(Set.of(mix));
    }

    @Override
    public List<HeldCard> answer(Reading seen) {
        return Custody.of(
                        seen.book(),
                        seen.rows().stream()
                                .filter(row -> mixes.contains(row.mixId()))
                                .toList(),
                        seen.moment())
                .out();
    }
}
