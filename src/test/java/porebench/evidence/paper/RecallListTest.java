package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.custody.CardStanding;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.record.CardHolder;
import porebench.record.CardPlace;
import porebench.record.CardStep;
import porebench.record.SampleCards;
import porebench.record.chain.Head;

class RecallListTest {
    private static final Head HEAD = Head.of("3f2a91c077de0b1c", 1);

    private static HeldCard card(int number, Optional<CardHolder> holder, CardStanding standing) {
        List<CardStep> steps = holder.isEmpty()
                ? List.of()
                : List.of(new CardStep(
                        SampleCards.printed("M-1", number).mixId(),
                        1,
                        number,
                        1,
                        CardStep.Act.HANDED_OUT,
                        holder,
                        SampleCards.PRINTED,
                        "R. Vale",
                        ""));
        return new HeldCard(
                SampleCards.printed("M-1", number),
                steps,
                CardPlace.after(steps),
                standing,
                Optional.empty(),
                "Deck",
                Optional.empty());
    }

    private static RecallList list(RecallList.Which which, Optional<CardHolder> only) {
        return RecallList.of(
                Optional.empty(),
                new Custody(
                        SampleCards.PRINTED,
                        List.of(
                                card(1, Optional.empty(), CardStanding.LAPSED),
                                card(2, CardHolder.parse("truck 12"), CardStanding.SUPERSEDED),
                                card(3, CardHolder.parse("crew North"), CardStanding.LAPSED),
                                card(4, CardHolder.parse("truck 7"), CardStanding.WITHDRAWN),
                                card(5, CardHolder.parse("truck blue"), CardStanding.LAPSED),
                                card(6, CardHolder.parse("truck 12"), CardStanding.HOLDS))),
                which,
                only,
                HEAD);
    }

    private static List<String> holders(RecallList list) {
        return list.holders().stream()
                .map(held -> held.holder().map(CardHolder::text).orElse("?") + " "
                        + held.cards().stream().map(one -> one.print().number()).toList())
                .toList();
    }

    @Test
    void namesThoseThatHaveToComeBackTrucksByTheirNumbersFirst() {
        RecallList back = list(RecallList.Which.TO_COME_BACK, Optional.empty());
        assertThat(holders(back))
                .containsExactly("truck 7 [4]", "truck 12 [2]", "truck blue [5]", "crew North [3]", "? [1]");
        assertThat(back.cards()).isEqualTo(5);
        assertThat(back.isTraining()).isFalse();
    }

    @Test
    void namesEverythingOneTruckCarries() {
        RecallList truck = list(RecallList.Which.OUT, CardHolder.parse("truck 12"));
        assertThat(holders(truck)).containsExactly("truck 12 [2, 6]");
        assertThat(truck.cards()).isEqualTo(2);
        assertThat(truck.toComeBack()).isEqualTo(1);
        assertThat(holders(list(RecallList.Which.OUT, CardHolder.parse("truck 3"))))
                .isEmpty();
        assertThat(holders(list(RecallList.Which.OUT, Optional.empty())))
                .containsExactly("truck 7 [4]", "truck 12 [2, 6]", "truck blue [5]", "crew North [3]", "? [1]");
    }
}
