package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import porebench.record.book.Progress;
import porebench.record.id.ReadingId;

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

    private Intake.Result checkAt(LocalDateTime now, FieldReading... readings) {
        List<Incoming> incoming = new ArrayList<>();
        for (FieldReading reading : readings) {
            incoming.add(new Incoming(Place.of("field-readings.csv", incoming.size() + 2), reading));
        }
        return Intake.check(bench.book, incoming, now, Progress.UNHEARD);
    }

    private static FieldReading at(String id, int minutes) {
        return SampleReadings.plain(id, "M-1", "5.5").at(SampleReadings.AT.plusMinutes(minutes));
    }

    @Test
    void aClockThatIsAheadIsKeptForAReasonOnlyAndAnHourToComeNot() {
        Intake.Result result = checkAt(SampleReadings.AT, at("r1", 30), at("r2", 61), at("r3", 5));
        assertThat(result.problems()).extracting(Problem::code).containsExactly("field.clock", "field.to-come");
        assertThat(result.doubtedReadings()).containsExactly(new ReadingId("r1"));
        assertThat(result.doubts()).isEqualTo(1);
        assertThat(result.drafts()).hasSize(2);
        Intake.Result explained = result.keptFor("phone was ahead");
        assertThat(explained.doubts()).isZero();
        assertThat(explained.drafts())
                .extracting(draft -> ((FieldReading) draft.value()).keptBecause())
                .containsExactly(Optional.of("phone was ahead"), Optional.empty());
        bench.book.keep(explained.drafts(), "R. Vale", "imported");
        Intake.Result again = checkAt(SampleReadings.AT, at("r1", 30));
        assertThat(again.alreadyThere()).isEqualTo(1);
        assertThat(again.drafts()).isEmpty();
        assertThat(again.doubts()).isZero();
    }

    @Test
    void twoOfOneLoadInOneFileOrBesideTheLabBookAreRefusedWithTheirPlace() {
        Intake.Result result = checkAt(SampleReadings.AT, at("r1", 0), at("r2", 0), at("r3", 1));
        assertThat(result.problems()).extracting(Problem::code).containsExactly("field.twice");
        assertThat(result.problems().get(0).place()).contains(Place.of("field-readings.csv", 3));
        assertThat(result.drafts())
                .extracting(draft -> draft.value().recordId())
                .containsExactly("r1", "r3");
        bench.book.keep(result.drafts(), "R. Vale", "imported");
        Intake.Result later = checkAt(SampleReadings.AT, at("r4", 1), at("r5", 2), at("r6", 24 * 60 * 3));
        assertThat(later.problems()).extracting(Problem::code).containsExactly("field.to-come", "field.twice");
        assertThat(later.drafts()).extracting(draft -> draft.value().recordId()).containsExactly("r5");
        Intake.Result moved = checkAt(SampleReadings.AT, at("r3", 0), at("r1", 1));
        assertThat(moved.problems()).extracting(Problem::code).containsOnly("import.new-version");
    }

    /** Loads of three days stand in the lab book: each is met by a second one of the same file. */
    @Test
    void aSecondOneOfALoadIsRefusedOnEveryDayOfAFile() {
        int day = 60 * 24;
        LocalDateTime now = SampleReadings.AT.plusDays(4);
        bench.book.keep(
                checkAt(now, at("r1", 0), at("r2", day), at("r3", 3 * day)).drafts(), "R. Vale", "imported");
        Intake.Result later = checkAt(now, at("r4", 0), at("r5", day), at("r6", 2 * day), at("r7", 3 * day));
        assertThat(later.problems())
                .extracting(Problem::code)
                .containsExactly("field.twice", "field.twice", "field.twice");
        assertThat(later.drafts()).extracting(draft -> draft.value().recordId()).containsExactly("r6");
    }
}
