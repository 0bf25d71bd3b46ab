package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.trial.Readings;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/**
 * A Type A meter holds near the elevation at which it was calibrated: more than 183 m (600 ft) away it is calibrated anew.
 * Source: ASTM C231, annex on calibration (recalled). The meter of these tests was calibrated at 210 m.
 */
class TrialUphillTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        Books.keep(bench.book, Samples.meter("A-7", MeterType.A));
        Books.keep(bench.book, SampleCalibrations.columnCalibration("C-7", "A-7", DAY.minusDays(10)));
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private static Trial made(Optional<String> metres, LocalDate day) {
        return new Trial(
                new TrialId("T-70"),
                new MixId("M-1"),
                new DeterminationId("M-1/7"),
                day.atTime(9, 30),
                "R. Vale",
                new MeterId("A-7"),
                new Readings(
                        MeterType.A,
                        Typed.of("7.050", VolumeUnit.LITRE),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Samples.some("0.70"),
                        Samples.some("0.30"),
                        false),
                "",
                Optional.empty(),
                Optional.empty(),
                metres.map(Samples::number),
                false);
    }

    private List<Problem> uphill(Trial trial) {
        Books.keep(bench.book, Samples.determination("M-1/7", "M-1"));
        Books.keep(bench.book, trial);
        return bench
                .evidence()
                .determination(new DeterminationId("M-1/7"))
                .orElseThrow()
                .trials()
                .get(0)
                .doubts()
                .stream()
                .filter(problem -> problem.code().equals("meter.moved-too-far"))
                .toList();
    }

    /** 210 + 183 = 393 and 210 - 183 = 27 are the last elevations at which it may be used. */
    @ParameterizedTest
    @CsvSource({"210, 0", "393, 0", "393.1, 1", "27, 0", "26.9, 1", "1600, 1", "-50, 1"})
    void isDoubtedBeyondTheLimit(String metres, int doubts) {
        assertThat(uphill(made(Optional.of(metres), DAY))).hasSize(doubts);
    }

    @Test
    void saysHowFarAndIsNoErrorAndStandsAtTheField() {
        Problem doubt = uphill(made(Optional.of("610"), DAY)).get(0);
        assertThat(doubt.isError()).isFalse();
        assertThat(doubt.field()).isEqualTo("elevation");
        assertThat(doubt.values()).startsWith(400.0, 183.0);
    }

    @Test
    void saysNothingWhereNobodySaidTheElevation() {
        assertThat(uphill(made(Optional.empty(), DAY))).isEmpty();
    }

    @Test
    void saysNothingBeforeTheMeterWasCalibrated() {
        assertThat(uphill(made(Optional.of("1600"), DAY.minusDays(20)))).isEmpty();
    }
}
