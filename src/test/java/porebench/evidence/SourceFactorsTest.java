package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** The bench's first mix gave 0.4, 0.4, 0.5. */
class SourceFactorsTest {
    private static final SourceId STONE = new SourceId("S-2");

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

    private void mix(int number, String stone, String gauge) {
        String mix = "M-" + number;
        Books.keep(
                bench.book,
                Samples.mix(mix, "S-1", stone),
                Samples.determination(mix + "/1", mix),
                Samples.trial("U-" + number, mix, mix + "/1", gauge));
    }

    private Optional<SourceFactors> found() {
        return SourceFactors.of(Evidence.ofAll(bench.book), STONE);
    }

    /** Means 0.4333, 0.2, 0.3, 0.5 and 0.7: mean 0.42667, s 0.19205; k for 5, 90 % with 95 %, is 4.2906 (reference file). */
    @Test
    void fiveMixesGiveARange() {
        mix(2, "S-2", "5.2");
        mix(3, "S-2", "5.3");
        mix(4, "S-2", "5.5");
        assertThat(found().orElseThrow().range()).isEmpty();
        assertThat(found().orElseThrow().seen().count()).isEqualTo(4);
        mix(5, "S-2", "5.7");
        SourceFactors factors = found().orElseThrow();
        assertThat(factors.seen().mean()).isCloseTo(0.42667, within(1e-5));
        assertThat(factors.range().orElseThrow().high()).isCloseTo(0.42667 + 4.2906 * 0.19205, within(1e-3));
        assertThat(factors.range().orElseThrow().low()).isCloseTo(0.42667 - 4.2906 * 0.19205, within(1e-3));
    }

    @Test
    void onlyMixesWithTheSourceCount() {
        mix(2, "S-1", "5.2");
        assertThat(found().orElseThrow().seen().count()).isEqualTo(1);
        assertThat(SourceFactors.of(Evidence.ofAll(bench.book), new SourceId("S-9")))
                .isEmpty();
    }

    @Test
    void trialsOfAnEarlierVersionSayNothingOfTheSourceAsItIsNow() {
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        assertThat(found()).isEmpty();
    }

    /** Equal means: s is 0.1 / sqrt(12) = 0.028868 on a scale divided to 0.1; 4.2906 times that. */
    @Test
    void equalFactorsLeaveWhatTheScaleCannotShow() {
        SourceFactors factors = SourceFactors.of(new double[] {0.4, 0.4, 0.4, 0.4, 0.4}, 0.1 / Math.sqrt(12));
        assertThat(factors.range().orElseThrow().high()).isCloseTo(0.4 + 4.2906 * 0.028868, within(1e-5));
    }

    /** Five mixes whose means are all 0.4, read on scales divided to 0.1. */
    @Test
    void theScaleOfTheTrialsIsWhatTheyCannotShow() {
        bench.strike(List.of("T-3"));
        for (int number = 2; number < 6; number++) {
            mix(number, "S-2", "5.4");
        }
        assertThat(found().orElseThrow().range().orElseThrow().high()).isCloseTo(0.4 + 4.2906 * 0.028868, within(1e-5));
    }

    @Test
    void aDeterminationWithoutATrialThatCountsDoesNotHideTheOneBefore() {
        Books.keep(bench.book, Samples.determination("M-1/2", "M-1"));
        assertThat(found().orElseThrow().seen().count()).isEqualTo(1);
    }
}
