package porebench.evidence.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.FactorState;
import porebench.method.Problem;
import porebench.method.air.AcceptanceLimits;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** The gate of field readings, on the lab book of {@link Bench}, whose mix was kept and tested on 2 March 2026. */
class FieldJudgingTest {
    private static final LocalDateTime NOW = SampleReadings.AT.plusHours(1);

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

    private List<Problem> check(FieldReading reading) {
        return FieldJudging.of(bench.book, NOW).check(reading);
    }

    private static FieldReading with(
            String id, String truck, LocalDateTime at, Optional<String> meter, Optional<String> kept) {
        FieldReading plain = SampleReadings.plain(id, "M-1", "5.5");
        return new FieldReading(
                plain.id(),
                plain.mixId(),
                at,
                truck,
                meter.map(MeterId::new),
                plain.gaugePercent(),
                plain.density(),
                plain.temperatureCelsius(),
                plain.remarks(),
                kept,
                plain.struckBecause());
    }

    private static FieldReading at(LocalDateTime at, Optional<String> kept) {
        return with("r1", "12", at, Optional.empty(), kept);
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() {
        assertThat(check(SampleReadings.plain("r1", "M-1", "5.5"))).isEmpty();
        assertThat(check(SampleReadings.onMeter("r1", "M-1", "B-1", "10.0"))).isEmpty();
        assertThat(Books.codes(check(SampleReadings.onMeter("r1", "M-9", "B-9", "5.5"))))
                .containsExactly("import.unknown-mix", "field.unknown-meter");
        assertThat(Books.codes(check(SampleReadings.onMeter("r1", "M-1", "B-1", "10.1"))))
                .containsExactly("field.above-scale");
        assertThat(Books.codes(check(at(NOW.plusMinutes(61), Optional.of("late")))))
                .containsExactly("field.to-come");
    }

    @Test
    void aClockThatIsAheadNeedsAReason() {
        FieldReading ahead = at(NOW.plusMinutes(30), Optional.empty());
        assertThat(Books.codes(check(ahead))).containsExactly("field.clock");
        assertThat(FieldJudging.needsReason(ahead, check(ahead))).isTrue();
        FieldReading blank = at(NOW.plusMinutes(30), Optional.of(" "));
        assertThat(FieldJudging.needsReason(blank, check(blank))).isTrue();
        FieldReading explained = at(NOW.plusMinutes(30), Optional.of("summer time on the phone"));
        assertThat(Books.codes(check(explained))).containsExactly("field.clock");
        assertThat(FieldJudging.needsReason(explained, check(explained))).isFalse();
        FieldReading good = at(NOW, Optional.empty());
        assertThat(FieldJudging.needsReason(good, check(good))).isFalse();
        FieldReading refused = at(NOW.plusDays(1), Optional.empty());
        assertThat(FieldJudging.needsReason(refused, check(refused))).isFalse();
    }

    /** The design was kept on 2 March at noon UTC: the laboratory's day may be 1 March. A revision may be older than the lab book. */
    @Test
    void beforeTheMixWasThereIsADoubt() {
        assertThat(check(at(LocalDateTime.of(2026, 3, 1, 0, 0), Optional.empty())))
                .isEmpty();
        FieldReading early = at(LocalDateTime.of(2026, 2, 28, 23, 59), Optional.empty());
        assertThat(Books.codes(check(early))).containsExactly("field.before-mix");
        assertThat(check(early).get(0).values()).endsWith("2026-03-01");
        assertThat(FieldJudging.needsReason(early, check(early))).isTrue();
    }

    @Test
    void twoReadingsOfOneLoadAreOneTooMany() {
        FieldReading first = with("r1", "12", SampleReadings.AT, Optional.empty(), Optional.empty());
        FieldReading again =
                with("r2", " 12 ", SampleReadings.AT.plusSeconds(59), Optional.of("B-1"), Optional.empty());
        assertThat(FieldJudging.twice(again, List.of(first)).map(Problem::code)).contains("field.twice");
        assertThat(FieldJudging.twice(first, List.of(first))).isEmpty();
        assertThat(FieldJudging.twice(
                        with("r2", "7", SampleReadings.AT, Optional.empty(), Optional.empty()), List.of(first)))
                .isEmpty();
        assertThat(FieldJudging.twice(
                        with("r2", "12", SampleReadings.AT.plusMinutes(1), Optional.empty(), Optional.empty()),
                        List.of(first)))
                .isEmpty();
        FieldReading other = SampleReadings.plain("r2", "M-2", "5.5");
        assertThat(FieldJudging.twice(other, List.of(first))).isEmpty();
        FieldReading onB1 = with("r1", "12", SampleReadings.AT, Optional.of("B-1"), Optional.empty());
        FieldReading onB2 = with("r2", "12", SampleReadings.AT, Optional.of("B-2"), Optional.empty());
        assertThat(FieldJudging.twice(onB2, List.of(onB1))).isEmpty();
        assertThat(FieldJudging.twice(
                        onB2, List.of(with("r1", "12", SampleReadings.AT, Optional.of("B-2"), Optional.empty()))))
                .isPresent();
        FieldReading noTruck = with("r1", "", SampleReadings.AT, Optional.empty(), Optional.empty());
        assertThat(FieldJudging.twice(
                                with("r2", " ", SampleReadings.AT, Optional.empty(), Optional.empty()),
                                List.of(noTruck))
                        .orElseThrow()
                        .values())
                .containsExactly("r2", "r1", "M-1", "-", "2026-03-03 09:30");
    }

    @Test
    void aStruckReadingIsNotASecondOne() {
        FieldReading struck = SampleReadings.full("r2", "M-1", "B-1");
        FieldReading standing = with("r1", "12", struck.readAt(), Optional.empty(), Optional.empty());
        assertThat(FieldJudging.twice(standing, List.of(struck))).isEmpty();
        assertThat(FieldJudging.twice(struck, List.of(standing))).isEmpty();
    }

    @Test
    void theLabBookIsAskedForTheSameMinute() {
        Books.keep(bench.book, with("r1", "12", SampleReadings.AT.plusSeconds(59), Optional.empty(), Optional.empty()));
        FieldJudging gate = FieldJudging.of(bench.book, NOW);
        assertThat(gate.twice(SampleReadings.plain("r2", "M-1", "6"))).isPresent();
        assertThat(gate.twice(SampleReadings.plain("r1", "M-1", "6"))).isEmpty();
        assertThat(gate.twice(with("r2", "12", SampleReadings.AT.plusMinutes(1), Optional.empty(), Optional.empty())))
                .isEmpty();
    }

    @Test
    void aGuardBandHasAWidthThatCanBeMeant() {
        for (String good : List.of("0.001", "1.645", "10")) {
            assertThat(FieldJudging.checkGuard(new BigDecimal(good))).isEmpty();
        }
        for (String bad : List.of("0", "-1", "10.001")) {
            assertThat(FieldJudging.checkGuard(new BigDecimal(bad)).map(Problem::code))
                    .contains("field.guard-out-of-range");
        }
    }

    @Test
    void aGuardBandNeedsAnUncertainty() {
        AcceptanceLimits plain = AcceptanceLimits.of(new BigDecimal("6.0"), new BigDecimal("1.5"));
        FieldReading reading = SampleReadings.plain("r1", "M-1", "5.5");
        assertThat(FieldJudging.limits(reading, plain, Optional.empty(), OptionalDouble.empty())
                        .value())
                .contains(plain);
        assertThat(Books.codes(FieldJudging.limits(reading, plain, Optional.of(BigDecimal.ONE), OptionalDouble.empty())
                        .problems()))
                .containsExactly("field.guard-without-uncertainty");
        assertThat(Books.codes(FieldJudging.limits(reading, plain, Optional.of(BigDecimal.TEN), OptionalDouble.of(0.2))
                        .problems()))
                .containsExactly("field.guard-too-wide");
        assertThat(FieldJudging.limits(reading, plain, Optional.of(BigDecimal.ONE), OptionalDouble.of(0.2))
                        .value()
                        .orElseThrow()
                        .guardPercent())
                .isEqualTo(0.2);
    }

    @Test
    void aFindingHasAnAirOrAMark() {
        assertThatThrownBy(() -> new FieldFinding(FactorState.NO_FACTOR, Optional.empty(), Optional.empty(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
