package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.book.Belonging;
import porebench.store.Books;

/** Sources from files, held against what they were. */
class SourceIntakeTest {
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

    private Intake.Result check(Kept value) {
        return Intake.check(bench.book, List.of(new Incoming(line(2), value)), SampleCalibrations.TODAY);
    }

    private void keep(Intake.Result result) {
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
    }

    /** The same rule as in the window: no file makes another stone, or hides one, without saying so. */
    @Test
    void aSourceThatReadsAsAnotherStoneSaysWhatItIs() {
        Source other = Samples.source("S-1", Role.FINE, "Ledge 2");
        Intake.Result silent = check(other);
        assertThat(silent.drafts()).isEmpty();
        assertThat(silent.problems())
                .containsExactly(
                        Problem.error("step", "source.step-wanting", "S-1", 1).at(line(2)));
        Intake.Result corrected = check(SampleSources.corrected(other));
        assertThat(corrected.drafts()).hasSize(1);
        assertThat(Books.codes(corrected.problems()))
                .containsExactly("source.correction-of-words", "import.new-version");
        Source changed = SampleSources.changed(other, Bench.START);
        keep(check(changed));
        assertThat(check(changed).alreadyThere()).isEqualTo(1);
        assertThat(Books.codes(check(SampleSources.changed(other, Bench.START.minusDays(1)))
                        .problems()))
                .containsExactly("source.change-not-after", "source.change-unnamed");
        assertThat(check(SampleSources.changed(Samples.source("S-7", Role.FINE, "Ledge 2"), Bench.START))
                        .problems())
                .isEmpty();
    }

    @Test
    void aMeasurementIsOfAKnownSourceADayThatWasAndAtLeastOneFigure() {
        SourceMeasurement good = SampleSources.measurement("S-1/m1", "S-1", Bench.START, "2.66");
        assertThat(check(good).problems()).isEmpty();
        assertThat(Books.codes(check(SampleSources.measurement("S-8/m1", "S-8", Bench.START, "2.66"))
                        .problems()))
                .containsExactly("measurement.unknown-source");
        assertThat(Books.codes(
                        check(SampleSources.measurement("S-1/m2", "S-1", SampleCalibrations.TODAY.plusDays(1), "2.66"))
                                .problems()))
                .containsExactly("measurement.to-come");
    }

    /** That is how one is corrected: the version before stays. */
    @Test
    void aMeasurementThatDiffersIsANewVersion() {
        keep(check(SampleSources.measurement("S-1/m1", "S-1", Bench.START, "2.66")));
        SourceMeasurement corrected = SampleSources.measurement("S-1/m1", "S-1", Bench.START, "2.67");
        Intake.Result again = check(corrected);
        assertThat(Books.codes(again.problems())).containsExactly("import.new-version");
        keep(again);
        assertThat(check(corrected).alreadyThere()).isEqualTo(1);
        assertThat(bench.book.history(SourceMeasurement.class, "S-1/m1"))
                .extracting(version ->
                        version.value().relativeDensity().orElseThrow().toPlainString())
                .containsExactly("2.66", "2.67");
        assertThat(bench.book.latestOf(Belonging.MEASUREMENTS_OF_SOURCE, "S-1")).hasSize(1);
        assertThat(bench.book.verify()).isEmpty();
    }
}
