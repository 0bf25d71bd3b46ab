package porebench.evidence.custody;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.evidence.RegisterRow;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/**
 * Which mixes get a card when many are made at once: some by name, those of a plant, those whose cards have to come back, or
 * together; where none of this is said, all whose factor may be used.
 *
 * <p>Whether each may have a card is not asked here.
 *
 * @param named mixes by name, each taken once
 * @param plant the plant whose mixes are taken, capital and small letters not told apart; empty for none
 * @param recalled whether those are taken of which a card is out with a factor that no longer holds
 */
public record CardChoice(List<MixId> named, Optional<String> plant, boolean recalled) {
    /** All mixes whose factor may be used. */
    public static final CardChoice IN_FORCE = new CardChoice(List.of(), Optional.empty(), false);

    public CardChoice {
        named = List.copyOf(named);
        plant = plant.map(String::strip);
    }

    /** Returns some mixes by name. */
    public static CardChoice of(List<MixId> named) {
        return new CardChoice(named, Optional.empty(), false);
    }

    /** Returns whether it is the mixes of one plant and no others, as stand on a plant's card. */
    public boolean isOfPlant() {
        return named.isEmpty() && plant.isPresent() && !recalled;
    }

    /** Returns whether the register has to be asked which mixes these are. */
    public boolean asksTheRegister() {
        return named.isEmpty() || plant.isPresent() || recalled;
    }

    /**
     * Returns the mixes: those named in their order, then those of the plant, then those of the recall.
     *
     * @param rows how all mixes stand at the moment; may be empty where the register is not asked
     * @return refused where the plant has no mix, no card has to come back, or no factor may be used
     */
    public Answer<List<MixId>> among(Records book, List<RegisterRow> rows, LocalDateTime at) {
        Set<MixId> chosen = new LinkedHashSet<>(named);
        List<Problem> problems = new ArrayList<>();
        plant.ifPresent(wanted -> {
            List<MixId> ofPlant = rows.stream()
                    .filter(row -> row.plant().strip().equalsIgnoreCase(wanted))
                    .map(RegisterRow::mixId)
                    .toList();
            chosen.addAll(ofPlant);
            if (ofPlant.isEmpty()) {
                problems.add(Problem.error("plant", "cards.no-plant", wanted));
            }
        });
        if (recalled) {
            List<HeldCard> back = Custody.of(book, rows, at).toComeBack();
            back.forEach(card -> chosen.add(card.print().mixId()));
            if (back.isEmpty()) {
                problems.add(Problem.error("recall", "cards.none-recalled"));
            }
        }
        if (equals(IN_FORCE)) {
            rows.stream().filter(row -> row.state().isUsable()).forEach(row -> chosen.add(row.mixId()));
            if (chosen.isEmpty()) {
                problems.add(Problem.error("factor", "cards.none-in-force"));
            }
        }
        return problems.isEmpty() ? Answer.of(List.copyOf(chosen), List.of()) : Answer.refused(problems);
    }
}
