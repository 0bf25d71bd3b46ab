package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.CardStep;
import porebench.record.CardStep.Act;
import porebench.record.Kept;
import porebench.record.SampleCards;
import porebench.record.Samples;

class CustodyIntakeTest {
    private static final LocalDate TODAY = SampleCards.PRINTED.toLocalDate();
    private final Map<String, Kept> known = new HashMap<>();

    private List<String> codes(CardStep step) {
        return CustodyIntake.check(step, (kind, id) -> Optional.ofNullable(known.get(kind + id)), TODAY).stream()
                .map(Problem::code)
                .toList();
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
