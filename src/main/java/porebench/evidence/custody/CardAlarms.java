package porebench.evidence.custody;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import porebench.evidence.RegisterRow;
import porebench.method.Problem;
import porebench.record.id.MixId;

/**
 * The cards that are out on a factor that no longer holds, by mix: an alarm in the register until each is returned, destroyed, or lost
 * with a remark.
 *
 * @param byMix the cards of each mix that has any
 */
public record CardAlarms(Map<MixId, List<HeldCard>> byMix) {
    /** Of no mix. */
    public static final CardAlarms NONE = new CardAlarms(Map.of());

    public CardAlarms {
        byMix = Map.copyOf(byMix);
    }

    /** Returns the alarms of where the cards are. */
    public static CardAlarms of(Custody custody) {
        Map<MixId, List<HeldCard>> byMix = new TreeMap<>();
        custody.toComeBack()
                .forEach(card -> byMix.computeIfAbsent(card.print().mixId(), mix -> new ArrayList<>())
                        .add(card));
        return new CardAlarms(byMix);
    }

    /** Returns the cards of a mix that are to come back. */
    public List<HeldCard> of(MixId mix) {
        return byMix.getOrDefault(mix, List.of());
    }

    /** Returns whether cards of a mix are to come back. */
    public boolean has(MixId mix) {
        return byMix.containsKey(mix);
    }

    /** Returns how many mixes have cards that are to come back. */
    public int mixes() {
        return byMix.size();
    }

    /** Returns how many cards are to come back. */
    public int cards() {
        return byMix.values().stream().mapToInt(List::size).sum();
    }

    /** Returns what the register says of a mix: which cards are still out, and with whom; empty where none is. */
    public Optional<Problem> problem(MixId mix) {
        List<HeldCard> cards = of(mix);
        return cards.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        cards.size() == 1
                                ? Problem.warning("cards", "register.card-still-out", Holders.named(cards))
                                : Problem.warning(
                                        "cards", "register.cards-still-out", cards.size(), Holders.named(cards)));
    }

    /** Returns a line of the register that says first which of its cards are still out. */
    public RegisterRow marked(RegisterRow row) {
        return problem(row.mixId())
                .map(alarm -> row.lacking(
                        Stream.concat(Stream.of(alarm), row.missing().stream()).toList()))
                .orElse(row);
    }

    /** Returns lines of the register, each as {@link #marked(RegisterRow)}. */
    public List<RegisterRow> marked(Collection<RegisterRow> rows) {
        return rows.stream().map(this::marked).toList();
    }
}
