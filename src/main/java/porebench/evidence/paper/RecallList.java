package porebench.evidence.paper;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.record.CardHolder;
import porebench.record.Laboratory;
import porebench.record.chain.Head;

/**
 * Factor cards by who holds them, on paper: those that have to come back, or which number each holder carries.
 *
 * @param laboratory whose it is; empty when the lab book does not say
 * @param moment when it stands so, by the laboratory's clock
 * @param which which cards it names
 * @param only the one holder it is about; empty for all
 * @param holders the cards by holder, those to whom nobody was named last
 * @param head how far the lab book reached
 */
public record RecallList(
        Optional<Laboratory> laboratory,
        LocalDateTime moment,
        Which which,
        Optional<CardHolder> only,
        List<Held> holders,
        Head head)
        implements Printed {
    public RecallList {
        holders = List.copyOf(holders);
    }

    /** Which cards are named. */
    public enum Which {
        /** Those that are out with a factor that no longer holds. */
        TO_COME_BACK,
        /** All that are out. */
        OUT
    }

    /**
     * The cards of one holder.
     *
     * @param holder who holds them; empty where nobody was named
     * @param cards the cards, in the order of mix, revision and number
     */
    public record Held(Optional<CardHolder> holder, List<HeldCard> cards) {
        public Held {
            cards = List.copyOf(cards);
        }
    }

    /** Trucks before crews, plants and people; each by number where its name is one, else by name. */
    private static final Comparator<Held> IN_ORDER = Comparator.comparing(
                    (Held held) -> held.holder().isEmpty())
            .thenComparing(held -> held.holder().map(CardHolder::kind).orElse(CardHolder.Kind.PERSON))
            .thenComparingInt(held -> number(held.holder()))
            .thenComparing(held -> held.holder().map(CardHolder::name).orElse(""));

    private static int number(Optional<CardHolder> holder) {
        return holder.map(CardHolder::name)
                .filter(name -> name.matches("\\d{1,9}"))
                .map(Integer::valueOf)
                .orElse(Integer.MAX_VALUE);
    }

    /**
     * Returns the list of some cards.
     *
     * @param only the one holder it is about; empty for all
     */
    public static RecallList of(
            Optional<Laboratory> laboratory, Custody custody, Which which, Optional<CardHolder> only, Head head) {
        Map<Optional<CardHolder>, List<HeldCard>> byHolder = new LinkedHashMap<>();
        (which == Which.TO_COME_BACK ? custody.toComeBack() : custody.out())
                .stream()
                        .filter(card -> only.isEmpty() || card.place().holder().equals(only))
                        .forEach(card -> byHolder.computeIfAbsent(card.place().holder(), any -> new ArrayList<>())
                                .add(card));
        return new RecallList(
                laboratory,
                custody.at(),
                which,
                only,
                byHolder.entrySet().stream()
                        .map(entry -> new Held(entry.getKey(), entry.getValue()))
                        .sorted(IN_ORDER)
                        .toList(),
                head);
    }

    /** Returns how many cards it names. */
    public int cards() {
        return holders.stream().mapToInt(held -> held.cards().size()).sum();
    }

    /** Returns how many of its cards have to come back. */
    public int toComeBack() {
        return (int) holders.stream()
                .flatMap(held -> held.cards().stream())
                .filter(HeldCard::isToComeBack)
                .count();
    }
}
