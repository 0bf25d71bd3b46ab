package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardSteps;
import porebench.record.Kept;
import porebench.record.RecordKind;

/** Holds what an import says of factor cards against what was said of them before, in the files and in the lab book. */
final class CustodyIntake {
    private CustodyIntake() {}

    /** Returns the number by which the steps of a card follow one another; 0 of other records. */
    static int number(Incoming one) {
        return one.value() instanceof CardStep step ? step.number() : 0;
    }

    /** Returns what is wrong with a step of a card. One that is there already under its name is not held against itself. */
    static List<Problem> check(CardStep step, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDate today) {
        Optional<Kept> print = known.apply(RecordKind.CARD_PRINT, step.cardId());
        if (print.isEmpty()) {
            return List.of(Problem.error("id", "custody.unknown-card", step.recordId(), step.cardId()));
        }
        List<CardStep> before = new ArrayList<>();
        for (int number = 1; ; number++) {
            Optional<Kept> there = known.apply(RecordKind.CARD_STEP, step.cardId() + "/s" + number);
            if (there.isEmpty()) {
                break;
            }
            if (number == step.number()) {
                return List.of();
            }
            before.add((CardStep) there.get());
        }
        return CardSteps.check((CardPrint) print.get(), before, step, today.atTime(LocalTime.MAX));
    }
}
