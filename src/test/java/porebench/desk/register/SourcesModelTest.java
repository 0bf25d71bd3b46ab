package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.chart.source.StoneFigures;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.evidence.source.SourceTrial;
import porebench.exchange.DemoCards;
import porebench.exchange.DemoYear;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.column.SourceColumns;

/** The register of sources on the demo laboratory: the acts, and what they would do. */
class SourcesModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private DeskModel desk;

    @BeforeEach
    void fillBook() {
        MemoryLabBook book = new MemoryLabBook(DAY);
        new DemoYear().fill(book);
        desk = RegisterModelsTest.desk(book);
    }

    private SourcesModel sources() {
        return new SourcesModel(desk, RecordPage.texts(desk));
    }

    @Test
    void aCorrectionOfTheLedgeIsDoubtedAndTouchesNoFactor() {
        SourcesModel model = sources();
        model.show("S-02");
        assertThat(List.of(
                        model.isFixed(SourceColumns.STEP),
                        model.isFixed(SourceColumns.CHANGED_ON),
                        model.isFixed(SourceColumns.REASON)))
                .containsExactly(false, true, true);
        model.type(SourceColumns.LEDGE, "bench 2 a");
        model.type(SourceColumns.STEP, "corrected");
        assertThat(model.isFixed(SourceColumns.REASON)).isFalse();
        assertThat(model.isFixed(SourceColumns.CHANGED_ON)).isFalse();
        assertThat(model.problems())
                .extracting(Problem::code)
                .containsExactly("source.reason-wanting", "source.correction-of-words");
        model.type(SourceColumns.REASON, "mistyped");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("source.correction-of-words");
        assertThat(model.trySaving()).isTrue();
        assertThat(RegisterModelsTest.untrue(model)).isEmpty();
        assertThat(model.touchWords()).isEqualTo("A correction of a typing mistake changes no factor.");
    }

    /** S-09 is ledge 5 since 9 November 2026, by the demo; HG-106 uses it, with a factor from trials of May. */
    @Test
    void takingAChangeBackBringsTheOldFiguresAndTheFactorBack() {
        SourcesModel model = sources();
        model.show("S-09");
        model.type(SourceColumns.STEP, "withdrawn");
        assertThat(model.draft().text(SourceColumns.LEDGE)).isEqualTo("ledge 4");
        assertThat(model.draft().text(SourceColumns.RELATIVE_DENSITY)).isEqualTo("2.74");
        assertThat(model.isFixed(SourceColumns.CHANGED_ON)).isTrue();
        model.type(SourceColumns.REASON, "it was another quarry");
        assertThat(model.problems()).isEmpty();
        assertThat(model.touchWords()).isEqualTo("If you save this, 1 factors hold again.");
        assertThat(Refused.by(out -> model.save("it was another quarry", out))).isEmpty();
        assertThat(model.story().orElseThrow().periods()).hasSize(1);
        assertThat(model.changes(
                        model.versions().get(1).value(), model.versions().get(0).value()))
                .startsWith("The last change was a mistake", "Ledge or lot: ledge 5 → ledge 4");
        assertThat(model.draft().text(SourceColumns.STEP)).isEmpty();
    }

    @Test
    void aChangeToComeIsLookedAtOnItsDayAndTheNewDayOfAChangeMovesIt() {
        SourcesModel model = sources();
        model.show("S-09");
        model.type(SourceColumns.STEP, "corrected");
        model.type(SourceColumns.CHANGED_ON, "2026-12-01");
        assertThat(model.touch().orElseThrow().looked()).isEqualTo(LocalDate.of(2026, 12, 1));
        model.type(SourceColumns.CHANGED_ON, "2026-05-01");
        assertThat(model.touchWords()).isEqualTo("Another first day changes how 1 factors stand.");
        model.dropDraft();
        RegisterModelsTest.another(model, "ledge 6", "2026-12-01");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("source.change-to-come");
        assertThat(model.changes(
                        model.base().orElseThrow().value(),
                        model.read(model.draft()).value().orElseThrow()))
                .startsWith("Other material since 2026-12-01", "Ledge or lot: ledge 5 → ledge 6");
    }

    /** Granite S-02 is in HG-101, HG-104 and HG-107; six of the demo's cards of their factors in force are out. */
    @Test
    void beforeAChangeIsKeptThoseWhoHoldCardsAreNamed() {
        MemoryLabBook book = new MemoryLabBook(desk.tools().clock());
        new DemoCards().fill(book);
        DeskModel cards = RegisterModelsTest.desk(book);
        SourcesModel model = new SourcesModel(cards, RecordPage.texts(cards));
        model.show("S-02");
        model.type(SourceColumns.STEP, "changed");
        model.type(SourceColumns.CHANGED_ON, "2026-11-25");
        assertThat(model.touchWords())
                .contains("6 of their cards are out")
                .endsWith("They are with: truck 12 (HG-101/r2/1), truck 4 (HG-101/r2/2), plant Hollin "
                        + "(HG-101/r2/3), crew Spillway (HG-104/r1/1), truck 4 (HG-107/r1/1), T. Alder "
                        + "(HG-107/r1/2).");
        assertThat(model.effects().orElseThrow()).endsWith("T. Alder (HG-107/r1/2).");
    }

    @Test
    void aSourceNobodyUsesSaysSo() {
        SourcesModel model = sources();
        model.show("S-02");
        assertThat(model.choices(SourceColumns.STEP)).containsExactly("", "changed", "corrected", "withdrawn");
        assertThat(model.choices(SourceColumns.ROLE)).containsExactly("fine", "coarse");
        assertThat(model.note()).startsWith("Used by 3 mixes with ");
        model.begin();
        assertThat(model.isFixed(SourceColumns.STEP)).isTrue();
        assertThat(model.isFixed(SourceColumns.CHANGED_ON)).isFalse();
        assertThat(model.note()).isEmpty();
        assertThat(model.touchWords()).isEmpty();
        assertThat(Refused.by(out ->
                        desk.keep(List.of(Draft.of(Samples.source("S-77", Role.FINE, "lot 1"))), "new", out)))
                .isEmpty();
        model.show("S-77");
        assertThat(model.touchWords()).isEqualTo("No mix uses it: whatever it is, no factor changes.");
        assertThat(model.note()).isEqualTo("No mix uses it.");
    }

    /** The demo: four measurements of S-05, of which that of October is far off; of S-09 three of ledge 4 and two of ledge 5. */
    @Test
    void measurementsStandWithTheirStoneBesideTheFigureInUse() {
        SourcesModel model = sources();
        model.show("S-05");
        assertThat(model.measured()).hasSize(4);
        assertThat(model.measured().get(3).doubts())
                .extracting(Problem::code)
                .containsExactly("measurement.far-density", "measurement.far-absorption");
        model.show("S-09");
        assertThat(model.measured())
                .extracting(one -> one.stone().newest().value().ledge())
                .containsExactly("ledge 4", "ledge 4", "ledge 4", "ledge 5", "ledge 5");
        assertThat(model.measured()).allMatch(one -> one.doubts().isEmpty());
        StoneFigures density =
                model.figures(StoneFigures.Figure.RELATIVE_DENSITY).orElseThrow();
        assertThat(density.inUse())
                .containsExactly(
                        new StoneFigures.Step(LocalDate.of(2026, 3, 11), 2.74, "ledge 4"),
                        new StoneFigures.Step(LocalDate.of(2026, 11, 9), 2.71, "ledge 5"));
        assertThat(density.until()).isEqualTo(LocalDate.of(2026, 11, 25));
        assertThat(density.measured())
                .extracting(StoneFigures.Measured::value)
                .containsExactly(2.74, 2.75, 2.73, 2.71, 2.72);
        assertThat(model.figures(StoneFigures.Figure.ABSORPTION).orElseThrow().inUse())
                .extracting(StoneFigures.Step::value)
                .containsExactly(1.2, 1.6);
        StoneFigures retained = model.figures(StoneFigures.Figure.RETAINED).orElseThrow();
        assertThat(retained.inUse()).isEmpty();
        assertThat(retained.measured()).hasSize(5);
        model.show("S-02");
        assertThat(model.measured()).isEmpty();
        assertThat(model.figures(StoneFigures.Figure.ABSORPTION)).isEmpty();
    }

    /** The demo: the trials of HG-106 are of ledge 4 of S-09; T-036 leaked. A trial of the new ledge stands with it, newest first. */
    @Test
    void itsTrialsStandWithTheirStone() {
        SourcesModel model = sources();
        model.show("S-09");
        List<SourceTrial> trials = model.trials().orElseThrow();
        assertThat(trials).hasSize(8);
        assertThat(trials).allMatch(trial -> trial.mix().text().equals("HG-106"));
        assertThat(trials.get(0).on()).isEqualTo(LocalDate.of(2026, 5, 13));
        assertThat(trials)
                .allSatisfy(trial -> assertThat(trial.stones())
                        .singleElement()
                        .satisfies(stone ->
                                assertThat(stone.newest().value().ledge()).isEqualTo("ledge 4")));
        assertThat(trials.stream()
                        .filter(trial -> !trial.counts())
                        .map(trial -> trial.trial().text()))
                .containsExactly("T-036");
        model.begin();
        assertThat(model.trials()).isEmpty();
    }
}
