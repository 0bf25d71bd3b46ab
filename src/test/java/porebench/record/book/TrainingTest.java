package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.exchange.DemoYear;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.store.Books;

/** Simulated and real trials never stand in one lab book. */
class TrainingTest {
    private static final Laboratory TRAINING = new Laboratory("Tarn Beck training", "", true);
    private static final Trial REAL = Samples.trial("T-1", "M-1", "M-1/1", "5.4");
    private static final Trial SIMULATED =
            Samples.trial("T-2", "M-1", "M-1/1", "5.5").asSimulated();

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.meter("B-1", MeterType.B),
                Samples.source("S-1", porebench.method.Role.FINE, "1"),
                Samples.source("S-2", porebench.method.Role.COARSE, "1"),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private List<Problem> keep(Kept... values) {
        return book.keep(java.util.Arrays.stream(values).map(Draft::of).toList(), "R. Vale", "entered");
    }

    @Test
    void aBookOfRealTrialsRefusesSimulatedOnesAndKeepsNothing() {
        assertThat(book.isTraining()).isFalse();
        assertThat(keep(REAL, SIMULATED)).containsExactly(Problem.error("simulated", "book.simulated-trial", "T-2"));
        assertThat(book.latest(Trial.class)).isEmpty();
        assertThat(keep(REAL)).isEmpty();
    }

    @Test
    void aTrainingBookRefusesRealOnes() {
        assertThat(keep(TRAINING)).isEmpty();
        assertThat(book.isTraining()).isTrue();
        assertThat(keep(REAL)).containsExactly(Problem.error("simulated", "book.real-trial", "T-1"));
        assertThat(keep(SIMULATED)).isEmpty();
        assertThat(book.latest(Trial.class, "T-2").orElseThrow().value()).isEqualTo(SIMULATED);
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void theLaboratoryKeptWithItsTrialsDecides() {
        assertThat(keep(TRAINING, SIMULATED)).isEmpty();
    }

    @Test
    void aBookWithTrialsCannotChangeSides() {
        Books.keep(book, Samples.laboratory(), REAL);
        Draft flipped =
                Draft.correcting(book.latest(Laboratory.class, Laboratory.ID).orElseThrow(), TRAINING);
        assertThat(book.keep(List.of(flipped), "R. Vale", "why"))
                .containsExactly(Problem.error("training", "book.training-cannot-change"));
        assertThat(book.isTraining()).isFalse();
    }

    @Test
    void aBookWithoutTrialsMay() {
        Books.keep(book, Samples.laboratory());
        Books.correct(book, TRAINING);
        assertThat(book.isTraining()).isTrue();
    }

    @Test
    void theDemoIsKnownWhereverItLies() {
        assertThat(Training.isDemo(book)).isFalse();
        try (LabBook demo = Books.fresh(folder.resolve("a-copy.porebench"))) {
            assertThat(Training.isDemo(demo)).isFalse();
            new DemoYear().fill(demo);
            assertThat(Training.isDemo(demo)).isTrue();
        }
    }

    @Test
    void theImportSaysItByRow() {
        Place place = Place.of("trials.csv", 7);
        Intake.Result result = Intake.check(book, List.of(new Incoming(place, SIMULATED)), SampleCalibrations.TODAY);
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(Problem.error("simulated", "book.simulated-trial", "T-2")
                        .at(place));
        Books.keep(book, TRAINING);
        Trial explained = SIMULATED.keptFor(Optional.of("masses not noted"));
        assertThat(Intake.check(book, List.of(new Incoming(place, explained)), SampleCalibrations.TODAY)
                        .problems())
                .isEmpty();
        assertThat(Books.codes(Intake.check(book, List.of(new Incoming(place, REAL)), SampleCalibrations.TODAY)
                        .problems()))
                .containsExactly("book.real-trial");
    }

    @Test
    void aSimulatedTrialStaysOneWhateverIsDoneToIt() {
        assertThat(List.of(
                        SIMULATED.struck("x"),
                        SIMULATED.standing(),
                        SIMULATED.keptFor(Optional.of("x")),
                        SIMULATED.in(new DeterminationId("other"))))
                .allMatch(Trial::simulated);
        assertThat(REAL.struck("x").simulated()).isFalse();
    }
}
