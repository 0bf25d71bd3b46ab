package porebench.evidence.custody;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.method.Problem;
import porebench.record.CardHolder;
import porebench.record.CardPlace.Where;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardStep.Act;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.SampleCards;
import porebench.record.Samples;
import porebench.record.id.MixId;

class CustodyTest {
    private static final LocalDate DAY = SampleCards.PRINTED.toLocalDate();
    private static final LocalDateTime NOW = DAY.plusDays(10).atTime(12, 0);
    private static final FactorIssue FIRST = Samples.issue("M-1", 1, "M-1/1", DAY);

    private static RegisterRow row(FactorState state, Optional<LocalDate> uncovered) {
        return new RegisterRow(
                new MixId("M-1"),
                "Bridge deck",
                "North",
                state,
                Optional.of(new BigDecimal("0.4")),
                Optional.of(1),
                Optional.of(DAY),
                Optional.of(DAY.plusMonths(3)),
                TrialsBehind.NONE,
                uncovered,
                List.of());
    }

    private static Custody custody(FactorState state, List<CardStep> steps, LocalDateTime at, FactorIssue... issues) {
        return Custody.of(
                List.of(row(state, Optional.of(DAY.plusDays(5)))),
                List.of(SampleCards.printed("M-1", 1)),
                steps,
                List.of(issues),
                at);
    }

    private static HeldCard only(Custody custody) {
        assertThat(custody.cards()).hasSize(1);
        return custody.cards().get(0);
    }

    /** State, standing of a card of the revision in force, and whether it has to come back. */
    @ParameterizedTest
    @CsvSource({
        "IN_FORCE, HOLDS, false",
        "RECHECK_DUE, RECHECK_DUE, false",
        "LAPSED, LAPSED, true",
        "SOURCE_CHANGED, SOURCE_CHANGED, true",
        "EVIDENCE_CHANGED, EVIDENCE_CHANGED, true",
        "NOT_VERIFIED, NOT_VERIFIED, true",
        "NO_FACTOR, WITHDRAWN, true",
        "WITHDRAWN, WITHDRAWN, true"
    })
    void aCardOfTheRevisionInForceStandsAsItsMixDoes(FactorState state, CardStanding standing, boolean back) {
        HeldCard card = only(custody(state, List.of(SampleCards.handedOut("M-1", 1, "12")), NOW, FIRST));
        assertThat(card.standing()).isEqualTo(standing);
        assertThat(card.isToComeBack()).isEqualTo(back);
        assertThat(card.since()).isEqualTo(back ? Optional.of(DAY.plusDays(5).atStartOfDay()) : Optional.empty());
        assertThat(card.factorPercent()).contains(FIRST.factorPercent());
        assertThat(card.title()).isEqualTo("Bridge deck");
    }

    @Test
    void aNewerRevisionCallsACardBackFromItsHourOn() {
        FactorIssue second = Samples.issue("M-1", 2, "M-1/1", DAY.plusDays(10))
                .under(new FactorTerms(Optional.of(LocalTime.of(14, 30)), "", ""));
        List<CardStep> out = List.of(SampleCards.handedOut("M-1", 1, "12"));
        LocalDateTime hour = DAY.plusDays(10).atTime(14, 30);
        HeldCard before = only(custody(FactorState.IN_FORCE, out, hour.minusMinutes(1), FIRST, second));
        assertThat(before.standing()).isEqualTo(CardStanding.HOLDS);
        assertThat(before.isToComeBack()).isFalse();
        HeldCard then = only(custody(FactorState.IN_FORCE, out, hour, FIRST, second));
        assertThat(then.standing()).isEqualTo(CardStanding.SUPERSEDED);
        assertThat(then.since()).contains(hour);
        assertThat(then.isToComeBack()).isTrue();
    }

    /** Revision 2 replaced it on the third day, revision 3 on the sixth: it has not held since the third. */
    @Test
    void aCardHasNotHeldSinceTheFirstRevisionAfterIt() {
        HeldCard card = only(custody(
                FactorState.IN_FORCE,
                List.of(),
                NOW,
                FIRST,
                Samples.issue("M-1", 3, "M-1/1", DAY.plusDays(6)),
                Samples.issue("M-1", 2, "M-1/1", DAY.plusDays(3))));
        assertThat(card.standing()).isEqualTo(CardStanding.SUPERSEDED);
        assertThat(card.since()).contains(DAY.plusDays(3).atStartOfDay());
    }

    @Test
    void aCardOfARevisionToComeIsNotCalledBack() {
        assertThat(only(custody(
                                FactorState.NO_FACTOR,
                                List.of(),
                                SampleCards.PRINTED,
                                Samples.issue("M-1", 1, "M-1/1", DAY.plusDays(1))))
                        .standing())
                .isEqualTo(CardStanding.NOT_YET);
    }

    @Test
    void aCardIsSettledByReturnDestructionOrLossAndOutAgainWhenFound() {
        List<CardStep> steps = new ArrayList<>(List.of(SampleCards.handedOut("M-1", 1, "12")));
        assertThat(custody(FactorState.LAPSED, List.of(), NOW, FIRST).toComeBack())
                .as("nobody said to whom it went")
                .hasSize(1);
        for (Act act : List.of(Act.RETURNED, Act.DESTROYED, Act.LOST)) {
            CardStep end = SampleCards.step("M-1", 1, 2, act, "", 2, "as told");
            assertThat(custody(FactorState.LAPSED, List.of(end, steps.get(0)), NOW, FIRST)
                            .toComeBack())
                    .as(act.name())
                    .isEmpty();
        }
        steps.add(SampleCards.step("M-1", 1, 2, Act.LOST, "", 2, "blown off"));
        steps.add(SampleCards.step("M-1", 1, 3, Act.FOUND, "7", 3, ""));
        Custody found = custody(FactorState.LAPSED, steps, NOW, FIRST);
        assertThat(found.toComeBack()).hasSize(1);
        assertThat(found.heldBy(new CardHolder(CardHolder.Kind.TRUCK, "7"))).hasSize(1);
        assertThat(found.heldBy(new CardHolder(CardHolder.Kind.TRUCK, "12"))).isEmpty();
        // An hour before it was found it was lost; the clock's five minutes are allowed.
        assertThat(only(custody(FactorState.LAPSED, steps, SampleCards.PRINTED.plusHours(2), FIRST))
                        .place()
                        .where())
                .isEqualTo(Where.LOST);
    }

    @Test
    void aFileIsOutOnlyOnceHandedOutAndCopiesAndLaterPrintsAreNone() {
        CardPrint saved = new CardPrint(new MixId("M-1"), 1, 2, "a6", "/cards/M-1.pdf");
        CardPrint old = new CardPrint(new MixId("M-1"), 7, 1, "a6", "/cards/M-1.pdf");
        CardPrint marked = new CardPrint(new MixId("M-1"), 1, 3, "a6", CardPrint.toPrinter(true));
        List<RegisterRow> rows = List.of(row(FactorState.LAPSED, Optional.empty()));
        List<CardPrint> prints = List.of(saved, marked, SampleCards.printed("M-1", 1));
        Custody custody = Custody.of(rows, prints, List.of(), List.of(), NOW);
        assertThat(custody.cards()).extracting(card -> card.print().number()).containsExactly(1, 2);
        assertThat(custody.out()).extracting(card -> card.print().number()).containsExactly(1);
        assertThat(custody.cards().get(0).factorPercent())
                .as("the register's line has the revision in force")
                .contains(new BigDecimal("0.4"));
        assertThat(only(Custody.of(rows, List.of(old), List.of(), List.of(), NOW))
                        .factorPercent())
                .as("of a revision that is not in the lab book")
                .isEmpty();
        CardStep step = SampleCards.handedOut("M-1", 2, "12");
        assertThat(Custody.of(rows, prints, List.of(step), List.of(), NOW).out())
                .hasSize(2);
        assertThat(Custody.of(rows, prints, List.of(), List.of(), SampleCards.PRINTED.minusMinutes(1))
                        .cards())
                .extracting(card -> card.print().number())
                .containsExactly(2);
    }

    private static List<String> codes(Custody custody, Act act, String holder, LocalDateTime at, String remark) {
        return new CardActs(act, CardHolder.parse(holder), at, "R. Vale", remark)
                .steps(custody, List.of("M-1/r1/1", "M-1/r1/1")).problems().stream()
                        .map(Problem::code)
                        .toList();
    }

    @Test
    void aCardWhoseFactorNoLongerHoldsIsHandedOutOnlyWithAReason() {
        Custody lapsed = custody(FactorState.LAPSED, List.of(), NOW, FIRST);
        assertThat(codes(lapsed, Act.HANDED_OUT, "truck 12", NOW, ""))
                .containsExactly("custody.factor-gone-without-remark");
        assertThat(codes(lapsed, Act.HANDED_OUT, "truck 12", NOW, "taken unasked"))
                .containsExactly("custody.factor-gone");
        // Said afterwards: on the day before it lapsed it held.
        assertThat(codes(lapsed, Act.HANDED_OUT, "truck 12", DAY.plusDays(4).atTime(9, 0), ""))
                .isEmpty();
        assertThat(codes(lapsed, Act.HANDED_OUT, "truck 12", DAY.plusDays(5).atStartOfDay(), ""))
                .as("the moment at which it lapsed")
                .containsExactly("custody.factor-gone-without-remark");
        assertThat(codes(lapsed, Act.DESTROYED, "", NOW, "")).isEmpty();
    }

    @Test
    void allCardsOrNoneAreActedOn() {
        Custody custody = custody(FactorState.IN_FORCE, List.of(), NOW, FIRST);
        CardActs acts = new CardActs(Act.HANDED_OUT, CardHolder.parse("crew North"), NOW, "R. Vale", "");
        assertThat(acts.steps(custody, List.of("M-1/r1/1")).value().orElseThrow())
                .singleElement()
                .satisfies(step -> assertThat(step.recordId()).isEqualTo("M-1/r1/1/s1"));
        assertThat(acts.steps(custody, List.of("M-1/r1/1", "M-1/r1/9")).value()).isEmpty();
        assertThat(acts.steps(custody, List.of("M-1/r1/9")).problems())
                .extracting(Problem::code)
                .containsExactly("custody.no-such-card");
    }
}
