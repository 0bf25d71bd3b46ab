package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static porebench.record.SampleCards.PRINTED;
import static porebench.record.SampleCards.step;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.record.CardPlace.Where;
import porebench.record.CardStep.Act;
import porebench.record.id.MixId;

class CardStepsTest {
    private static final LocalDateTime NOW = PRINTED.plusDays(10);
    private static final CardPrint CARD = SampleCards.printed("M-1", 1);

    private static CardStep next(List<CardStep> before, Act act, String truck, String remark) {
        return step("M-1", 1, before.size() + 1, act, truck, before.size() + 1, remark);
    }

    private static List<String> codes(CardPrint print, List<CardStep> before, CardStep next) {
        return CardSteps.check(print, before, next, NOW).stream()
                .map(Problem::code)
                .toList();
    }

    /** Brings a card to a place by the shortest way. */
    private static List<CardStep> to(Where where) {
        List<CardStep> steps = new ArrayList<>();
        if (where != Where.PRINTED) {
            steps.add(next(steps, Act.HANDED_OUT, "12", ""));
        }
        switch (where) {
            case PRINTED, OUT -> {}
            case ACKNOWLEDGED -> steps.add(next(steps, Act.ACKNOWLEDGED, "", ""));
            case RETURNED -> steps.add(next(steps, Act.RETURNED, "12", ""));
            case DESTROYED -> steps.add(next(steps, Act.DESTROYED, "", ""));
            case LOST -> steps.add(next(steps, Act.LOST, "", "blown off the truck"));
        }
        assertThat(CardPlace.after(steps).where()).isEqualTo(where);
        return steps;
    }

    /** Every act after every place: y follows, n does not. Columns: handed out, acknowledged, returned, destroyed, lost, found. */
    @ParameterizedTest
    @CsvSource({
        "PRINTED, ynyyyn",
        "OUT, yyyyyn",
        "ACKNOWLEDGED, yyyyyn",
        "RETURNED, ynnyyn",
        "DESTROYED, nnnnnn",
        "LOST, nnnnny"
    })
    void everyActFollowsEveryPlaceOrDoesNot(Where where, String follows) {
        List<CardStep> before = to(where);
        for (Act act : Act.values()) {
            String truck = act == Act.HANDED_OUT ? "7" : "";
            List<String> codes = codes(CARD, before, next(before, act, truck, "as told"));
            assertThat(codes.contains("custody.cannot-follow"))
                    .as("%s after %s", act, where)
                    .isEqualTo(follows.charAt(act.ordinal()) == 'n');
        }
    }

    @Test
    void aCardThatGoesOnWithoutReturnIsADoubtThatNeedsAReason() {
        List<CardStep> out = to(Where.OUT);
        assertThat(codes(CARD, out, next(out, Act.HANDED_OUT, "7", "")))
                .containsExactly("custody.handed-on-without-remark");
        assertThat(CardSteps.check(CARD, out, next(out, Act.HANDED_OUT, "7", "trucks swapped"), NOW))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo("custody.handed-on");
                    assertThat(problem.isError()).isFalse();
                });
        assertThat(codes(CARD, out, next(out, Act.HANDED_OUT, "12", "again")))
                .containsExactly("custody.holds-it-already");
        assertThat(codes(CARD, out, next(out, Act.HANDED_OUT, "", "to whom?"))).containsExactly("custody.no-holder");
    }

    @Test
    void aLostCardNeedsANoteAndAnotherHolderCannotReturnIt() {
        List<CardStep> out = to(Where.OUT);
        assertThat(codes(CARD, out, next(out, Act.LOST, "", " "))).containsExactly("custody.lost-without-remark");
        assertThat(codes(CARD, out, next(out, Act.RETURNED, "7", ""))).containsExactly("custody.other-holder");
        assertThat(codes(CARD, out, next(out, Act.RETURNED, "12", ""))).isEmpty();
        List<CardStep> back = to(Where.RETURNED);
        assertThat(codes(CARD, back, next(back, Act.DESTROYED, "7", ""))).isEmpty();
    }

    @Test
    void aFoundCardIsWithWhoeverFoundItOrInTheLaboratory() {
        List<CardStep> lost = to(Where.LOST);
        CardPlace with = CardPlace.after(lost).then(next(lost, Act.FOUND, "7", ""));
        assertThat(with.where()).isEqualTo(Where.OUT);
        assertThat(with.holder().orElseThrow().text()).isEqualTo("truck 7");
        CardPlace here = CardPlace.after(lost).then(next(lost, Act.FOUND, "", ""));
        assertThat(here.where()).isEqualTo(Where.RETURNED);
        assertThat(here.holder()).isEmpty();
        assertThat(CardPlace.after(lost).holder().orElseThrow().text()).isEqualTo("truck 12");
    }

    @Test
    void timesGoForwardFromPrintingToNowAndAClockMayBeFiveMinutesAhead() {
        CardStep early = at(1, PRINTED.minusMinutes(1));
        assertThat(codes(CARD, List.of(), early)).containsExactly("custody.before-printing");
        assertThat(codes(CARD, List.of(), at(1, PRINTED))).isEmpty();
        CardPrint undated = new CardPrint(new MixId("M-1"), 1, 1, "a6", CardPrint.PRINTER);
        assertThat(codes(undated, List.of(), early)).isEmpty();
        assertThat(codes(CARD, List.of(), at(1, NOW.plusMinutes(5)))).isEmpty();
        assertThat(codes(CARD, List.of(), at(1, NOW.plusMinutes(6)))).containsExactly("custody.to-come");
        List<CardStep> back = to(Where.RETURNED);
        assertThat(codes(CARD, back, at(3, back.get(1).at()))).isEmpty();
        assertThat(codes(CARD, back, at(3, back.get(1).at().minusMinutes(1))))
                .containsExactly("custody.before-the-last");
    }

    private static CardStep at(int number, LocalDateTime moment) {
        return new CardStep(
                new MixId("M-1"), 1, 1, number, Act.HANDED_OUT, CardHolder.parse("crew North"), moment, "R. Vale", "");
    }

    @Test
    void stepsHaveNoGapsAndMarkedOrUnreleasedCardsGoToNobody() {
        assertThat(codes(CARD, List.of(), step("M-1", 1, 2, Act.HANDED_OUT, "12", 1, "")))
                .containsExactly("custody.not-next");
        CardStep first = SampleCards.handedOut("M-1", 1, "12");
        CardPrint marked = new CardPrint(new MixId("M-1"), 1, 1, "a6", CardPrint.toPrinter(true));
        assertThat(codes(marked, List.of(), first)).containsExactly("custody.not-for-crews");
        assertThat(codes(CARD.notReleased(), List.of(), first)).containsExactly("custody.not-for-crews");
        assertThat(CARD.notReleased().printedAt()).contains(PRINTED);
        CardPrint saved = new CardPrint(new MixId("M-1"), 1, 1, "a6", "/cards/M-1.pdf");
        assertThat(codes(saved, List.of(), first)).isEmpty();
    }

    @Test
    void holdersAreReadAsTheyAreWritten() {
        for (CardHolder.Kind kind : CardHolder.Kind.values()) {
            CardHolder holder = new CardHolder(kind, " North  yard ");
            assertThat(holder.name()).isEqualTo("North  yard");
            assertThat(CardHolder.parse(holder.text())).contains(holder);
        }
        assertThat(CardHolder.parse("Truck   12")).contains(new CardHolder(CardHolder.Kind.TRUCK, "12"));
        assertThat(CardHolder.parse("truck")).isEqualTo(Optional.empty());
        assertThat(CardHolder.parse("lorry 12")).isEmpty();
        assertThatThrownBy(() -> new CardHolder(CardHolder.Kind.CREW, " "))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void wordsOfPlacesAreThoseOfTheCommandLine() {
        assertThat(Where.RETURNED.symbol()).isEqualTo("returned");
        assertThat(List.of(Where.values()).stream().filter(Where::isOut))
                .containsExactly(Where.PRINTED, Where.OUT, Where.ACKNOWLEDGED);
        assertThat(SampleCards.handedOut("M-1", 1, "12").recordId()).isEqualTo("M-1/r1/1/s1");
    }
}
