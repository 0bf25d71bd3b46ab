package porebench.evidence.custody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.CardHolder;

/** Says who holds cards, as a part of a message. */
public final class Holders {
    /** So many cards are named in one message; of more it says how many. */
    public static final int MOST_NAMED = 6;

    private Holders() {}

    /** Returns cards with those who hold them, such as "truck 12 (HG-101/r1/2), crew North (HG-101/r1/3), 4 more". */
    public static Problem named(List<HeldCard> cards) {
        if (cards.isEmpty()) {
            throw new IllegalArgumentException("cards must be at least one, but are none");
        }
        List<Problem> parts = new ArrayList<>(cards.stream()
                .limit(MOST_NAMED)
                .map(card -> Problem.warning(
                        "cards",
                        "custody.card-with",
                        holder(card.place().holder()),
                        card.print().recordId()))
                .toList());
        if (cards.size() > MOST_NAMED) {
            parts.add(Problem.warning("cards", "custody.more", cards.size() - MOST_NAMED));
        }
        return parts.stream()
                .reduce((before, next) -> Problem.warning("cards", "custody.both", before, next))
                .orElseThrow();
    }

    /** Returns a holder, such as "truck 12", or that nobody was named. */
    public static Problem holder(Optional<CardHolder> holder) {
        return holder.map(known -> switch (known.kind()) {
                    case TRUCK -> Problem.warning("holder", "custody.with-truck", known.name());
                    case CREW -> Problem.warning("holder", "custody.with-crew", known.name());
                    case PLANT -> Problem.warning("holder", "custody.with-plant", known.name());
                    case PERSON -> Problem.warning("holder", "custody.with-person", known.name());
                })
                .orElseGet(() -> Problem.warning("holder", "custody.with-nobody"));
    }
}
