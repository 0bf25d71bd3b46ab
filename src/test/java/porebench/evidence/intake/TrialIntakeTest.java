package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.method.Said;
import porebench.method.trial.Readings;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.store.Books;

/** Which determination a trial from a file joins, and beside which trials it may not stand. */
class TrialIntakeTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private static Place line(int number) {
        return Place.of("file.csv", number);
    }

    private Intake.Result check(Kept... values) {
        return Intake.check(
                bench.book,
                IntStream.range(0, values.length)
                        .mapToObj(index -> new Incoming(line(index + 2), values[index]))
                        .toList(),
                SampleCalibrations.TODAY);
    }

    private static List<Kept> values(Intake.Result result) {
        return result.drafts().stream().map(Draft::value).toList();
    }

    private static Trial unassigned(String id, String mix, String gauge) {
        return Samples.trial(id, mix, mix, gauge).keptFor(Optional.of("masses not noted"));
    }

    /** Trials of 2 March are there; one of 16 March is 14 days later and joins them, one of 31 March 15 days later still. */
    @Test
    void aTrialMadeLongAfterTheOthersBeginsAnotherDeterminationAndItIsSaid() {
        Trial near = at(unassigned("T-8", "M-1", "5.4"), 14);
        Trial far = at(unassigned("T-9", "M-1", "5.4"), 29);
        Intake.Result result = check(far, near);
        assertThat(result.drafts())
                .extracting(draft -> draft.value().recordId())
                .containsExactly("M-1/2", "T-9", "T-8");
        assertThat(result.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.isError()).isFalse();
            assertThat(Said.text(problem.at(line(2))))
                    .contains("lies 15 days from the nearest trial of determination M-1/1, more than 14: it begins"
                            + " determination M-1/2.");
        });
        assertThat(values(result).stream()
                        .filter(Trial.class::isInstance)
                        .map(value -> ((Trial) value).determinationId().text()))
                .containsExactly("M-1/2", "M-1/1");
    }

    @Test
    void trialsOnBothTypesOfMeterAreNeverOneDetermination() {
        Trial typeA = onTypeA(unassigned("T-8", "M-1", "5.4"));
        Intake.Result result = check(typeA);
        assertThat(result.drafts()).isEmpty();
        assertThat(Said.text(Said.one(result.problems(), "determination.mixed-meter-types")))
                .startsWith("Determination M-1/1 has trial T-8 on B-1, a Type A meter, and trial T-1 on B-1, a Type B");
        assertThat(check(typeA.struck("wrong meter")).problems()).isEmpty();
        assertThat(check(typeA.in(new DeterminationId("M-1/A"))).problems()).isEmpty();
        Books.keep(bench.book, typeA.in(new DeterminationId("M-1/1")));
        // What a lab book of before holds already is passed over.
        assertThat(check(typeA).problems()).isEmpty();
    }

    private static Trial onTypeA(Trial trial) {
        Readings read = trial.readings();
        return with(
                trial,
                new Readings(
                        MeterType.A,
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        Optional.empty(),
                        Optional.empty(),
                        Samples.some("0.8"),
                        Samples.some("0.4"),
                        false),
                trial.testedAt());
    }

    private static Trial at(Trial trial, int daysLater) {
        return with(trial, trial.readings(), trial.testedAt().plusDays(daysLater));
    }

    private static Trial with(Trial trial, Readings readings, LocalDateTime testedAt) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                testedAt,
                trial.operator(),
                trial.meterId(),
                readings,
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }
}
