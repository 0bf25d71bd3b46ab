package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardStep.Act;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.SampleCards;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

class CustodyIntakeTest {
    private static final LocalDate TODAY = SampleCards.PRINTED.toLocalDate();
    private final Map<String, Kept> known = new HashMap<>();
    private final LabBook book = new MemoryLabBook(Books.CLOCK);

    private List<String> codes(CardStep step) {
        return codes(step, TODAY);
    }

    private List<String> codes(CardStep step, LocalDate today) {
        return new CustodyIntake(book, (kind, id) -> Optional.ofNullable(known.get(kind + id)), today)
                .check(step).stream().map(Problem::code).toList();
    }

    private void know(Kept record) {
        known.put(record.kind() + record.recordId(), record);
    }

    @Test
    void aStepOfACardThatIsNotThereIsRefused() {
        assertThat(codes(SampleCards.handedOut("M-1", 1, "12"))).containsExactly("custody.unknown-card");
    }

    @Test
    void aStepIsHeldAgainstTheStepsBeforeIt() {
        know(SampleCards.printed("M-1", 1));
        CardStep first = SampleCards.handedOut("M-1", 1, "12");
        assertThat(codes(first)).isEmpty();
        know(first);
        assertThat(codes(first)).as("already there").isEmpty();
        assertThat(codes(SampleCards.step("M-1", 1, 2, Act.RETURNED, "", 2, "")))
                .isEmpty();
        assertThat(codes(SampleCards.step("M-1", 1, 2, Act.FOUND, "", 2, ""))).containsExactly("custody.cannot-follow");
        assertThat(codes(SampleCards.step("M-1", 1, 3, Act.RETURNED, "", 2, "")))
                .containsExactly("custody.not-next");
    }

    @Test
    void aStepMayBeOfTodayButNotOfTomorrow() {
        know(SampleCards.printed("M-1", 1));
        // Printed at 8:00; 15 hours on is 23:00 of the same day, 24 hours on is tomorrow.
        assertThat(codes(SampleCards.step("M-1", 1, 1, Act.HANDED_OUT, "12", 15, "")))
                .isEmpty();
        assertThat(codes(SampleCards.step("M-1", 1, 1, Act.HANDED_OUT, "12", 24, "")))
                .containsExactly("custody.to-come");
    }

    /** A hand-out of the day of printing and one of the next day, at 9:00. */
    private static CardStep handedOut(int daysLater, String remark) {
        return SampleCards.step("M-1", 1, 1, Act.HANDED_OUT, "12", 24 * daysLater + 1, remark);
    }

    @Test
    void aHandOutOfAFactorThatLapsedByItsDaysNeedsAReasonUnlessItHeldThen() {
        know(SampleCards.printed("M-1", 1));
        FactorIssue issue = Samples.issue("M-1", 1, "M-1/1", TODAY);
        know(issue);
        LocalDate last = issue.recheckBy();
        int days = (int) TODAY.until(last, ChronoUnit.DAYS);
        assertThat(codes(handedOut(days, ""), last)).isEmpty();
        assertThat(codes(handedOut(days, ""), last.plusDays(5)))
                .as("it held then")
                .isEmpty();
        assertThat(codes(handedOut(days + 1, ""), last.plusDays(5)))
                .containsExactly("custody.factor-gone-without-remark");
        assertThat(codes(handedOut(days + 1, "taken unasked"), last.plusDays(5)))
                .containsExactly("custody.factor-gone");
        assertThat(codes(SampleCards.step("M-1", 1, 1, Act.DESTROYED, "", 24 * days + 30, ""), last.plusDays(5)))
                .isEmpty();
    }

    @Test
    void aHandOutAfterANewerRevisionOfTheSameFilesNeedsAReason() {
        know(SampleCards.printed("M-1", 1));
        know(Samples.issue("M-1", 1, "M-1/1", TODAY));
        know(Samples.issue("M-1", 2, "M-1/1", TODAY.plusDays(3)));
        assertThat(codes(handedOut(2, ""), TODAY.plusDays(4))).isEmpty();
        assertThat(codes(handedOut(3, ""), TODAY.plusDays(4))).containsExactly("custody.factor-gone-without-remark");
    }

    /** Of the revision in the lab book no trial is there, so that its evidence is not what it was; by its days it would hold. */
    @Test
    void aHandOutIsHeldAgainstTheEvidenceOfTheLabBook() {
        FactorIssue issue = Samples.issue("M-1", 1, "M-1/1", TODAY);
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"));
        Books.keep(book, issue);
        FactorState state = Evidence.of(book, issue.mixId()).orElseThrow().stateOn(TODAY);
        assertThat(state.isUsable()).isFalse();
        know(issue);
        know(SampleCards.printed("M-1", 1));
        assertThat(codes(handedOut(0, ""))).containsExactly("custody.factor-gone-without-remark");
    }

    @Test
    void aCopyThatIsForNobodyIsRefusedForThatAlone() {
        know(new CardPrint(new MixId("M-1"), 1, 1, "a6", CardPrint.toPrinter(true)));
        know(Samples.issue("M-1", 1, "M-1/1", TODAY));
        assertThat(codes(handedOut(0, ""))).containsExactly("custody.not-for-crews");
    }

    @Test
    void stepsAreTakenInTheOrderOfTheirNumbers() {
        Place place = Place.of("cards.csv", 2);
        Incoming tenth = new Incoming(place, SampleCards.step("M-1", 1, 10, Act.RETURNED, "", 2, ""));
        Incoming second = new Incoming(place, SampleCards.step("M-1", 1, 2, Act.RETURNED, "", 2, ""));
        Incoming laboratory = new Incoming(place, Samples.meter("B-1", porebench.method.MeterType.B));
        assertThat(List.of(tenth, second, laboratory).stream().sorted(Incoming.IN_ORDER))
                .containsExactly(laboratory, second, tenth);
        assertThat(second.mayChange()).isFalse();
    }
}
