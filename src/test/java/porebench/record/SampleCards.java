package porebench.record;

import java.time.LocalDateTime;
import java.util.Optional;
import porebench.record.id.MixId;

/** Factor cards, and what happens to them, for tests. */
public final class SampleCards {
    /** When the cards were printed. */
    public static final LocalDateTime PRINTED = LocalDateTime.of(2026, 3, 9, 8, 0);

    private SampleCards() {}

    /** A card of revision 1 on paper. */
    public static CardPrint printed(String mix, int number) {
        return new CardPrint(new MixId(mix), 1, number, "a6", CardPrint.PRINTER, Optional.of(PRINTED));
    }

    /** Its first step: handed to a truck. */
    public static CardStep handedOut(String mix, int card, String truck) {
        return step(mix, card, 1, CardStep.Act.HANDED_OUT, truck, 1, "");
    }

    /** A step of a card of revision 1, some hours after printing; no holder where the truck is blank. */
    public static CardStep step(
            String mix, int card, int number, CardStep.Act act, String truck, int hours, String remark) {
        return new CardStep(
                new MixId(mix),
                1,
                card,
                number,
                act,
                truck.isBlank() ? Optional.empty() : Optional.of(new CardHolder(CardHolder.Kind.TRUCK, truck)),
                PRINTED.plusHours(hours),
                "R. Vale",
                remark);
    }
}
