package porebench.record;

import java.util.List;
import java.util.Optional;
import porebench.method.Problem;

/**
 * Where a factor card is, as far as it was said.
 *
 * @param where where it is
 * @param holder who holds it, or held it when it was lost; empty where nobody was named
 * @param last what was said last; empty where nothing was said since it was printed
 */
public record CardPlace(Where where, Optional<CardHolder> holder, Optional<CardStep> last) {
    /** A card of which nothing was said since it was printed. */
    public static final CardPlace PRINTED = new CardPlace(Where.PRINTED, Optional.empty(), Optional.empty());

    /** Where a card can be. */
    public enum Where {
        /** Printed; to whom it went was not said. */
        PRINTED("card-printed"),
        /** With a holder. */
        OUT("card-out"),
        /** With a holder who knows that it is to come back. */
        ACKNOWLEDGED("card-acknowledged"),
        /** In the laboratory. */
        RETURNED("card-returned"),
        /** Gone for good. */
        DESTROYED("card-destroyed"),
        /** Nobody knows. */
        LOST("card-lost");

        private final String word;

        Where(String word) {
            this.word = word;
        }

        /** Returns the place as a word inside a problem's message. */
        public Problem.Word word() {
            return new Problem.Word(word);
        }

        /** Returns the word by which the command line knows it. */
        public String symbol() {
            return word.substring("card-".length());
        }

        /** Returns whether a crew may read the card. */
        public boolean isOut() {
            return this == PRINTED || this == OUT || this == ACKNOWLEDGED;
        }
    }

    /** Returns where a card is after everything that happened to it, the first step first. */
    public static CardPlace after(List<CardStep> steps) {
        CardPlace place = PRINTED;
        for (CardStep step : steps) {
            place = place.then(step);
        }
        return place;
    }

    /** Returns where the card is once one more thing happened to it. */
    public CardPlace then(CardStep step) {
        return switch (step.act()) {
            case HANDED_OUT -> new CardPlace(Where.OUT, step.holder(), Optional.of(step));
            case ACKNOWLEDGED -> new CardPlace(Where.ACKNOWLEDGED, holder, Optional.of(step));
            case RETURNED -> new CardPlace(Where.RETURNED, Optional.empty(), Optional.of(step));
            case DESTROYED -> new CardPlace(Where.DESTROYED, Optional.empty(), Optional.of(step));
            case LOST -> new CardPlace(Where.LOST, holder, Optional.of(step));
            case FOUND ->
                new CardPlace(step.holder().isPresent() ? Where.OUT : Where.RETURNED, step.holder(), Optional.of(step));
        };
    }
}
