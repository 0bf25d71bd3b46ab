package porebench.evidence.custody;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardSteps;

/**
 * What is said of one or many cards at once: all of it can be kept, or none.
 *
 * @param act what happened
 * @param holder to whom, or by whom; empty where nobody is named
 * @param at when, by the laboratory's clock
 * @param by who says so
 * @param remark anything else, may be empty
 */
public record CardActs(CardStep.Act act, Optional<CardHolder> holder, LocalDateTime at, String by, String remark) {
    /**
     * Returns the next step of each card, or everything that is against it; of one that is a row of a plant's card also that of the
     * others on it.
     *
     * @param custody where the cards are now, those of all mixes of a plant where one of them is on a plant's card
     * @param names the cards, by the names of their records
     */
    public Answer<List<CardStep>> steps(Custody custody, List<String> names) {
        List<CardStep> steps = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Map<String, HeldCard> cards = custody.byName();
        for (String name : PlantCards.with(custody, names, act)) {
            Optional<HeldCard> card = Optional.ofNullable(cards.get(name));
            if (card.isEmpty()) {
                problems.add(Problem.error("card", "custody.no-such-card", name));
            } else {
                CardStep step = next(card.get());
                problems.addAll(CardSteps.check(card.get().print(), card.get().steps(), step, custody.at()));
                gone(card.get(), step).ifPresent(problems::add);
                // Said after the rules were asked: that it is a plant's card is no reason for anything.
                steps.add(PlantCards.noted(step, card.get().print()));
            }
        }
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(steps, problems);
    }

    private CardStep next(HeldCard card) {
        CardPrint print = card.print();
        return new CardStep(
                print.mixId(), print.revision(), print.number(), card.steps().size() + 1, act, holder, at, by, remark);
    }

    /**
     * Returns what is wrong with handing a card out: one whose factor no longer holds goes to nobody; that it went all the same is
     * kept with the reason.
     *
     * @param card where it is now
     * @param step what is said of it
     */
    public static Optional<Problem> gone(HeldCard card, CardStep step) {
        boolean heldThen = card.since().filter(step.at()::isBefore).isPresent();
        if (step.act() != CardStep.Act.HANDED_OUT || !card.standing().isRecalled() || heldThen) {
            return Optional.empty();
        }
        String name = card.print().recordId();
        return Optional.of(
                step.remark().isBlank()
                        ? Problem.error("remark", "custody.factor-gone-without-remark", name)
                        : Problem.warning("card", "custody.factor-gone", name));
    }
}
