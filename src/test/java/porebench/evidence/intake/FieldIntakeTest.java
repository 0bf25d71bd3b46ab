package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.book.Belonging;

/** Field readings from files: what nobody can have read at a load is refused, with its place. */
class FieldIntakeTest {
    private static final LocalDate DAY = SampleReadings.AT.toLocalDate();

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

    private Intake.Result check(FieldReading reading, LocalDate today) {
        return Intake.check(bench.book, List.of(new Incoming(Place.of("field-readings.csv", 2), reading)), today);
    }

    private void refused(FieldReading reading, LocalDate today, String code) {
        Intake.Result result = check(reading, today);
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems()).extracting(Problem::code).containsExactly(code);
        assertThat(result.problems().get(0).place()).contains(Place.of("field-readings.csv", 2));
    }

    @Test
    void aReadingOfAKnownMixAndMeterIsKept() {
        FieldReading reading = SampleReadings.full("r1", "M-1", "B-1");
        Intake.Result result = check(reading, DAY);
        assertThat(result.problems()).isEmpty();
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
        assertThat(bench.book.latestOf(Belonging.READINGS_OF_MIX, "M-1"))
                .extracting(version -> version.value())
                .containsExactly(reading);
        assertThat(bench.book.latestOf(Belonging.READINGS_OF_MIX, "M-2")).isEmpty();
        assertThat(check(reading, DAY).alreadyThere()).isEqualTo(1);
    }

    @Test
    void aCorrectedRowIsANewVersionAndTheOneBeforeStays() {
        bench.book.keep(check(SampleReadings.plain("r1", "M-1", "5.5"), DAY).drafts(), "R. Vale", "imported");
        Intake.Result again = check(SampleReadings.plain("r1", "M-1", "5.6"), DAY);
        assertThat(again.problems()).extracting(Problem::code).containsExactly("import.new-version");
        bench.book.keep(again.drafts(), "R. Vale", "imported");
        assertThat(bench.book.history(FieldReading.class, "r1"))
                .extracting(version -> version.value().gaugePercent().toPlainString())
                .containsExactly("5.5", "5.6");
    }

    @Test
    void whatNobodyCanHaveReadIsRefused() {
        refused(SampleReadings.plain("r1", "M-99", "5.5"), DAY, "import.unknown-mix");
        refused(SampleReadings.full("r1", "M-1", "B-99"), DAY, "field.unknown-meter");
        refused(SampleReadings.plain("r1", "M-1", "5.5"), DAY.minusDays(1), "field.to-come");
        refused(SampleReadings.onMeter("r1", "M-1", "B-1", "99"), DAY, "field.above-scale");
    }
}
