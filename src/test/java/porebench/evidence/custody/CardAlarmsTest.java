package porebench.evidence.custody;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.FactorIssue;
import porebench.record.SampleCards;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

class CardAlarmsTest {
    private static final LocalDate DAY = SampleCards.PRINTED.toLocalDate();
    private static final LocalDateTime NOW = DAY.plusDays(10).atTime(12, 0);
    private static final ProblemText ENGLISH = ProblemText.in(Locale.ENGLISH);
    private static final ProblemText SPANISH = ProblemText.in(Locale.forLanguageTag("es"));

    private static RegisterRow row(String mix, FactorState state, List<Problem> missing) {
        return new RegisterRow(
                new MixId(mix),
                "Bridge deck",
                "North",
                state,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                missing);
    }

    private static CardStep to(int card, CardHolder.Kind kind, String name) {
        return new CardStep(
                new MixId("M-1"),
                1,
                card,
                1,
                CardStep.Act.HANDED_OUT,
                Optional.of(new CardHolder(kind, name)),
                SampleCards.PRINTED.plusHours(1),
                "R. Vale",
                "");
    }

    /** Mix M-1 lapsed with some cards, mix M-2 in force with one. */
    private static CardAlarms alarms(int cards, CardStep... steps) {
        List<CardPrint> prints = new ArrayList<>(IntStream.rangeClosed(1, cards)
                .mapToObj(number -> SampleCards.printed("M-1", number))
                .toList());
        prints.add(SampleCards.printed("M-2", 1));
        List<FactorIssue> issues =
                List.of(Samples.issue("M-1", 1, "M-1/1", DAY), Samples.issue("M-2", 1, "M-2/1", DAY));
        return CardAlarms.of(Custody.of(
                List.of(row("M-1", FactorState.LAPSED, List.of()), row("M-2", FactorState.IN_FORCE, List.of())),
                prints,
                List.of(steps),
                issues,
                NOW));
    }

    private static String said(CardAlarms alarms, ProblemText words) {
        return words.say(alarms.problem(new MixId("M-1")).orElseThrow());
    }

    @Test
    void namesTheOneCardThatIsStillOutAndWhoHasIt() {
        CardAlarms one = alarms(1, SampleCards.handedOut("M-1", 1, "12"));
        assertThat(said(one, ENGLISH))
                .isEqualTo("A card whose factor no longer holds is still out: truck 12 (M-1/r1/1)."
                        + " Call it back, or note that it is destroyed or lost.");
        assertThat(said(one, SPANISH)).contains("camión 12 (M-1/r1/1)");
        assertThat(one.cards()).isEqualTo(1);
        assertThat(one.mixes()).isEqualTo(1);
        assertThat(one.has(new MixId("M-2"))).isFalse();
        assertThat(one.problem(new MixId("M-2"))).isEmpty();
    }

    @Test
    void namesEveryKindOfHolderAndThatNobodyWasNamed() {
        CardAlarms all = alarms(
                5,
                to(1, CardHolder.Kind.TRUCK, "12"),
                to(2, CardHolder.Kind.CREW, "North"),
                to(3, CardHolder.Kind.PLANT, "Velmar"),
                to(4, CardHolder.Kind.PERSON, "A. Ruiz"));
        assertThat(said(all, ENGLISH))
                .startsWith("5 cards whose factor no longer holds are still out: truck 12 (M-1/r1/1), crew North"
                        + " (M-1/r1/2), plant Velmar (M-1/r1/3), A. Ruiz (M-1/r1/4), nobody named (M-1/r1/5).");
        assertThat(said(all, SPANISH)).contains("cuadrilla North", "planta Velmar", "sin nombre (M-1/r1/5)");
    }

    @Test
    void saysOfManyHowManyMoreThereAre() {
        assertThat(said(alarms(Holders.MOST_NAMED), ENGLISH))
                .contains("(M-1/r1/6).")
                .doesNotContain("more");
        assertThat(said(alarms(Holders.MOST_NAMED + 3), ENGLISH)).contains("(M-1/r1/6), 3 more.");
        assertThatIllegalArgumentException().isThrownBy(() -> Holders.named(List.of()));
    }

    @Test
    void marksTheLineOfTheRegisterBeforeAllElseThatIsMissing() {
        Problem other = Problem.warning("factor", "register.no-factor-in-force", "M-1");
        RegisterRow lapsed = row("M-1", FactorState.LAPSED, List.of(other));
        RegisterRow holds = row("M-2", FactorState.IN_FORCE, List.of(other));
        CardAlarms alarms = alarms(2);
        assertThat(alarms.marked(List.of(lapsed, holds)))
                .satisfiesExactly(
                        marked -> assertThat(marked.missing())
                                .extracting(Problem::code)
                                .containsExactly("register.cards-still-out", "register.no-factor-in-force"),
                        unmarked -> assertThat(unmarked).isEqualTo(holds));
        assertThat(CardAlarms.NONE.marked(lapsed)).isEqualTo(lapsed);
    }

    @Test
    void aCardThatIsBackIsNoAlarm() {
        CardStep out = SampleCards.handedOut("M-1", 1, "12");
        CardStep back = SampleCards.step("M-1", 1, 2, CardStep.Act.RETURNED, "", 2, "");
        assertThat(alarms(1, out, back)).isEqualTo(CardAlarms.NONE);
    }

    /** Revision 2 replaced the first on the fifth day: its own card holds, that of the first one is an alarm, as read from a lab book. */
    @Test
    void theLabBookIsAskedForRevisionsOnlyWhereACardIsOfAnother() {
        LabBook book = new MemoryLabBook(Books.CLOCK);
        CardPrint second = new CardPrint(
                new MixId("M-1"),
                2,
                1,
                "a6",
                CardPrint.PRINTER,
                Optional.of(DAY.plusDays(6).atTime(8, 0)));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"));
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", DAY));
        Books.keep(book, Samples.issue("M-1", 2, "M-1/1", DAY.plusDays(5)));
        Books.keep(book, SampleCards.printed("M-1", 1), second);
        RegisterRow inForce = new RegisterRow(
                new MixId("M-1"),
                "Bridge deck",
                "North",
                FactorState.IN_FORCE,
                Optional.of(new BigDecimal("0.5")),
                Optional.of(2),
                Optional.of(DAY.plusDays(5)),
                Optional.of(DAY.plusYears(1)),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of());
        Custody custody = Custody.of(book, List.of(inForce), NOW);
        assertThat(custody.toComeBack()).singleElement().satisfies(card -> {
            assertThat(card.print().recordId()).isEqualTo("M-1/r1/1");
            assertThat(card.standing()).isEqualTo(CardStanding.SUPERSEDED);
            assertThat(card.since()).contains(DAY.plusDays(5).atStartOfDay());
        });
        assertThat(custody.byName().get("M-1/r2/1").standing()).isEqualTo(CardStanding.HOLDS);
    }
}
