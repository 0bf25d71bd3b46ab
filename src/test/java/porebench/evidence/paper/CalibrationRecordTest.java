package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.MeterStory;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.record.id.CalibrationId;

/** The printed record of one calibration among several of its meter. */
class CalibrationRecordTest {
    private static final LocalDate SPRING = LocalDate.of(2026, 3, 2);
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "for a test");

    /** Three dial checks in three months, each reading a little higher than the one before. */
    private static final MeterStory STORY = MeterStory.of(
            new Version<>(Samples.meter("B-1", MeterType.B), 1, STAMP),
            List.of(
                    version("C-1", SPRING, "5.00", "10.00"),
                    version("C-2", SPRING.plusMonths(1), "5.04", "10.05"),
                    version("C-3", SPRING.plusMonths(2), "5.08", "10.10")),
            Profiles.standard());

    private static Version<MeterCalibration> version(String id, LocalDate day, String at5, String at10) {
        return new Version<>(SampleCalibrations.dialCalibration(id, "B-1", day, "0.00", at5, at10), 1, STAMP);
    }

    private static Optional<CalibrationRecord> record(String id) {
        return CalibrationRecord.of(
                STORY, new CalibrationId(id), Optional.of(Samples.laboratory()), new Head("0123456789abcdef", 7));
    }

    @Test
    void holdsTheCalibrationThatWasAskedForAndItsDriftSinceTheOneBefore() {
        CalibrationRecord second = record("C-2").orElseThrow();
        assertThat(second.judged().calibration().value().id()).isEqualTo(new CalibrationId("C-2"));
        assertThat(second.drift())
                .contains(STORY.chamberChanges().get(0).drift())
                .isNotEqualTo(record("C-3").orElseThrow().drift());
        assertThat(record("C-3").orElseThrow().drift())
                .contains(STORY.chamberChanges().get(1).drift());
        assertThat(second.meter()).isEqualTo(Samples.meter("B-1", MeterType.B));
        assertThat(second.laboratory()).contains(Samples.laboratory());
        assertThat(second.head().entries()).isEqualTo(7);
    }

    @Test
    void theFirstCalibrationHasNoDrift() {
        assertThat(record("C-1").orElseThrow().drift()).isEmpty();
    }

    @Test
    void holdsUntilTheDayKnownWhenItWasMade() {
        assertThat(record("C-1").orElseThrow().nextDue()).isEqualTo(STORY.nextDueOn(SPRING));
    }

    @Test
    void aCalibrationOfAnotherMeterHasNoRecordHere() {
        assertThat(record("C-9")).isEmpty();
    }
}
