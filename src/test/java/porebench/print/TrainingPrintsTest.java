package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.Printed;
import porebench.evidence.paper.SampleLabels;
import porebench.method.MeterType;
import porebench.port.Paper;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;

/** Whatever is printed from a training book says on every page, in the reader's language, that nothing was measured. */
class TrainingPrintsTest {
    private static final Locale SPANISH = Locale.forLanguageTag("es-ES");

    private static Stream<Printed> ofTraining() {
        return Stream.of(
                Cards.training("0.3", false),
                Cards.in(CardState.WITHDRAWN, Cards.training("-0.35", true)),
                onSimulatedTrials(Cards.usual()),
                Plants.training(),
                Plants.of(List.of(Plants.row(2), PlantCard.Row.of(onSimulatedTrials(Cards.usual())))),
                Sheets.training(3),
                Sheets.training(30),
                new SampleLabels(Sheets.training(30), LocalDate.of(2026, 11, 29)),
                Calibrations.training(),
                Calibrations.formForAnyMeter(MeterType.A, Calibrations.Laboratories.TRAINING),
                Calibrations.formForAnyMeter(MeterType.B, Calibrations.Laboratories.TRAINING),
                Registers.training(),
                Plans.training(),
                FieldLists.training(),
                Recalls.training(),
                new FieldSheet(Cards.training("0.3", false)),
                new FieldSheet(Cards.training("-0.35", true)));
    }

    /** Returns a card in a book that is not marked, of a factor that is. */
    private static FactorCard onSimulatedTrials(FactorCard card) {
        Grounds simulated = new Grounds(
                card.issue().grounds().trialVersions(),
                card.issue().grounds().calibrationVersions(),
                List.of(),
                FactorOrigin.HERE,
                true);
        return Cards.of(card, card.issue().on(simulated));
    }

    private static Paper paper(Printed what) {
        return what instanceof FactorCard || what instanceof PlantCard ? Paper.A6 : Paper.A4;
    }

    @ParameterizedTest
    @MethodSource("ofTraining")
    void saysSoOnEveryPage(Printed what) {
        assertMarked(Presses.pdf(what, paper(what), Locale.ENGLISH), "SIMULATED");
        assertMarked(Presses.pdf(what, paper(what), SPANISH), "SIMULADO");
    }

    private static void assertMarked(byte[] pdf, String word) {
        List<PageText.Run> runs = PageText.runs(pdf);
        int pages = runs.stream().mapToInt(PageText.Run::page).max().orElseThrow();
        Set<Integer> marked = runs.stream()
                .filter(run -> run.text().equals(word))
                .map(PageText.Run::page)
                .collect(Collectors.toSet());
        assertThat(marked)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, pages).boxed().toList());
    }

    @Test
    void everyKindOfPrintIsAmongThem() {
        Set<Class<?>> seen = new HashSet<>();
        ofTraining().forEach(what -> seen.add(what.getClass()));
        assertThat(seen).containsExactlyInAnyOrder(Printed.class.getPermittedSubclasses());
    }

    @Test
    void aRealOneDoesNotSaySo() {
        for (Printed real :
                List.of(Cards.usual(), Sheets.usual(3), Calibrations.typeB(), Calibrations.form(MeterType.B))) {
            assertThat(Presses.text(real, paper(real), Locale.ENGLISH)).doesNotContain("SIMULATED");
        }
    }
}
