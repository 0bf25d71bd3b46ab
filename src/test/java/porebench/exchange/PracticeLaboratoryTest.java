package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.EquipmentState;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.MeterStory;
import porebench.evidence.practice.PracticeBench;
import porebench.evidence.practice.PracticeRun;
import porebench.evidence.practice.SimulatedSheet;
import porebench.method.meter.MeterState;
import porebench.method.simulate.Bench;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.store.SqliteShelf;

/** A new training book, and the trials that the simulated bench makes in it on whatever day it is begun. */
class PracticeLaboratoryTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private LabBook begun(LocalDate day) {
        LabBook book = new SqliteShelf(CLOCK).create(folder.resolve("training-" + day + ".porebench"));
        new PracticeLaboratory().fill(book, day);
        return book;
    }

    @Test
    void itIsATrainingBookWithMixesAndMetersAndNothingMeasured() {
        try (LabBook book = begun(LocalDate.of(2026, 11, 25))) {
            assertThat(book.isTraining()).isTrue();
            assertThat(book.latest(MixDesign.class)).hasSize(8);
            assertThat(MeterStory.ofAll(book))
                    .extracting(story -> story.meter().value().id().text())
                    .containsExactly("A-1", "B-1");
            assertThat(book.latest(Trial.class)).isEmpty();
            assertThat(book.latest(Determination.class)).isEmpty();
            assertThat(book.latest(FactorIssue.class)).isEmpty();
        }
    }

    /** 29 February has no twin in other years, and the demo's day is far off either way. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-11-25", "2028-02-29", "2019-01-01", "2041-07-31"})
    void noTrialIsDoubtfulWhateverDayItIsBegunOn(String written) {
        LocalDate day = LocalDate.parse(written);
        try (LabBook book = begun(day)) {
            for (MeterStory story : MeterStory.ofAll(book)) {
                assertThat(story.stateOn(day)).isIn(MeterState.OK, MeterState.DUE);
                for (Version<MixDesign> mix : book.latest(MixDesign.class)) {
                    notDoubtful(mix.value(), story, day);
                }
            }
        }
    }

    /** On the demo's day the balance is due in nine days; so it is on the day the practice begins. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-11-25", "2028-02-29", "2019-01-01"})
    void theEquipmentStandsAsThatOfTheDemoDoes(String written) {
        LocalDate day = LocalDate.parse(written);
        try (LabBook book = begun(day)) {
            assertThat(LaboratoryEquipment.of(book).pieces())
                    .extracting(piece -> piece.stateOn(day, 14))
                    .containsExactly(
                            EquipmentState.DUE,
                            EquipmentState.CALIBRATED,
                            EquipmentState.OVERDUE,
                            EquipmentState.OUT_OF_USE,
                            EquipmentState.CALIBRATED);
            assertThat(book.latest(Equipment.class, "BAL-1"))
                    .flatMap(version -> version.value().calibration())
                    .map(Equipment.Calibration::dueOn)
                    .contains(day.plusDays(9));
        }
    }

    private static void notDoubtful(MixDesign mix, MeterStory story, LocalDate day) {
        PracticeRun run = new PracticeRun(7, 6, Optional.empty(), 0);
        Bench bench = PracticeBench.of(mix, story, day, PracticeRun.trueFactorPercent(mix.id()))
                .value()
                .orElseThrow();
        SimulatedSheet sheet = new SimulatedSheet(
                mix.id(),
                new DeterminationId("D"),
                story.meter().value().id(),
                day.atTime(8, 0),
                6,
                run.seed(),
                "SIMULATED",
                "");
        run.madeAt(bench).stream()
                .map(sheet::trial)
                .map(trial -> new Version<>(trial, 1, new Stamp("Ada", CLOCK.instant(), "practice")))
                .map(trial -> JudgedTrial.of(trial, Optional.of(mix), story))
                .forEach(judged -> assertThat(judged.figures().problems()).isEmpty());
    }
}
