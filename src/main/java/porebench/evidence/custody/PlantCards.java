package porebench.evidence.custody;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.PlantMark;

/**
 * Cards of several mixes on one paper: what happens to one of them happens to all that stand on it.
 *
 * <p>The pages of a plant's card go out together; after that each is a paper of its own, which may come back or be lost alone.
 */
final class PlantCards {
    private PlantCards() {}

    /** Returns the cards to which an act happens where it is said of some: those said, each followed by what stands on its paper. */
    static Set<String> with(Custody custody, List<String> names, CardStep.Act act) {
        Map<String, HeldCard> cards = custody.byName();
        Set<String> all = new LinkedHashSet<>();
        for (String name : names) {
            all.add(name);
            Optional.ofNullable(cards.get(name))
                    .flatMap(card -> PlantMark.of(card.print()))
                    .ifPresent(mark -> custody.cards().stream()
                            .map(HeldCard::print)
                            .filter(print -> isTogether(mark, print, act))
                            .forEach(print -> all.add(print.recordId())));
        }
        return all;
    }

    private static boolean isTogether(PlantMark mark, CardPrint print, CardStep.Act act) {
        return PlantMark.of(print)
                .filter(other -> act == CardStep.Act.HANDED_OUT ? other.isWith(mark) : other.equals(mark))
                .isPresent();
    }

    /** Returns a step with the paper it happened to in its remark, where that is a plant's card. */
    static CardStep noted(CardStep step, CardPrint print) {
        return PlantMark.of(print)
                .map(PlantMark::said)
                .map(said -> new CardStep(
                        step.mixId(),
                        step.revision(),
                        step.print(),
                        step.number(),
                        step.act(),
                        step.holder(),
                        step.at(),
                        step.by(),
                        step.remark().isEmpty() ? said : step.remark() + " (" + said + ")"))
                .orElse(step);
    }
}
