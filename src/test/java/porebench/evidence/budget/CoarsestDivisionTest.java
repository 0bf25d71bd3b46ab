package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.method.MeterType;
import porebench.record.Meter;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.store.Books;

/** A determination made on several meters is judged by the one that is read least finely; its meters have 0.10 %. */
class CoarsestDivisionTest {
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

    /** Moves a trial to another meter, which is like the first but for its division. */
    private void move(String trial, String meter, String division) {
        Meter usual = Samples.meter(meter, MeterType.B);
        Books.keep(
                bench.book,
                new Meter(
                        usual.id(),
                        usual.type(),
                        usual.serial(),
                        usual.bowl(),
                        new BigDecimal(division),
                        usual.scaleTopPercent(),
                        true,
                        ""));
        Trial made = bench.newest(Trial.class, trial);
        Books.correct(
                bench.book,
                new Trial(
                        made.id(),
                        made.mixId(),
                        made.determinationId(),
                        made.testedAt(),
                        made.operator(),
                        usual.id(),
                        made.readings(),
                        made.remarks(),
                        made.keptBecause(),
                        made.struckBecause(),
                        Optional.empty(),
                        false));
    }

    private void assertDivision(double percent) {
        Evidence evidence = bench.evidence();
        JudgedDetermination judged = evidence.determination(Bench.FIRST).orElseThrow();
        assertThat(evidence.divisionPercent(judged)).isEqualTo(percent);
        assertThat(BudgetInputs.of(evidence, judged, LaboratoryScatter.NONE)
                        .orElseThrow()
                        .divisionPercent())
                .isEqualTo(percent);
    }

    @Test
    void oneMeterHasItsOwn() {
        assertDivision(0.1);
    }

    @ParameterizedTest
    @CsvSource({"T-1", "T-2", "T-3"})
    void theCoarsestCountsWhereverItStands(String trial) {
        move(trial, "B-9", "0.20");
        assertDivision(0.2);
    }

    @ParameterizedTest
    @CsvSource({"T-1", "T-2", "T-3"})
    void aFinerOneChangesNothing(String trial) {
        move(trial, "B-9", "0.05");
        assertDivision(0.1);
    }

    @Test
    void aStruckTrialVouchesForNothing() {
        move("T-3", "B-9", "0.20");
        bench.strike(List.of("T-3"));
        assertDivision(0.1);
    }
}
