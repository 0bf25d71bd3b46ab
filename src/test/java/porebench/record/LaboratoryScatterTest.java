package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.trial.Scatter;
import porebench.method.trial.Variability;
import porebench.statistics.PooledDeviation;
import porebench.store.Books;

/** The bench's first determination read 5.4, 5.4, 5.5; readings of one sample give factors that differ as they do. */
class LaboratoryScatterTest {
    private static final DeterminationId OTHER = new DeterminationId("M-2/1");

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

    private LaboratoryScatter scatter() {
        return LaboratoryScatter.of(Evidence.ofAll(bench.book));
    }

    private void otherMix(String... gauges) {
        Books.keep(bench.book, Samples.mix("M-2", "S-1", "S-2"), Samples.determination("M-2/1", "M-2"));
        for (int i = 0; i < gauges.length; i++) {
            Books.keep(bench.book, Samples.trial("U-" + i, "M-2", "M-2/1", gauges[i]));
        }
    }

    /** 5.4 5.4 5.5: squares 0.02 / 3 on 2 degrees; 5.2 5.4: 0.02 on 1 degree; together sqrt(0.0266667 / 3) = 0.094281. */
    @Test
    void poolsTheTrialsOfAllMixes() {
        otherMix("5.2", "5.4");
        PooledDeviation all =
                scatter().without(new DeterminationId("none"), MeterType.B).orElseThrow();
        assertThat(all.sets()).isEqualTo(2);
        assertThat(all.degreesOfFreedom()).isEqualTo(3);
        assertThat(all.standardDeviation()).isCloseTo(0.094281, offset(1e-6));
        assertThat(scatter().without(new DeterminationId("none"), MeterType.A)).isEmpty();
    }

    @Test
    void leavesOutTheDeterminationThatIsComparedWithIt() {
        otherMix("5.2", "5.4");
        assertThat(scatter().without(OTHER, MeterType.B).orElseThrow().standardDeviation())
                .isCloseTo(Math.sqrt(0.02 / 3 / 2), offset(1e-9));
        assertThat(scatter().without(Bench.FIRST, MeterType.B).orElseThrow().standardDeviation())
                .isCloseTo(Math.sqrt(0.02), offset(1e-9));
    }

    @Test
    void countsOnlyTrialsThatCountAndDeterminationsOfAtLeastTwo() {
        bench.strike(List.of("T-3"));
        assertThat(scatter().without(OTHER, MeterType.B).orElseThrow().standardDeviation())
                .isZero();
        bench.strike(List.of("T-2"));
        assertThat(scatter().sets()).isEmpty();
        assertThat(LaboratoryScatter.NONE.without(OTHER, MeterType.B)).isEmpty();
    }

    /** Eleven readings of another mix are ten degrees of freedom, as many as are asked for; ten are one too few. */
    @Test
    void isReckonedWithFromTenDegreesOfFreedomOn() {
        otherMix("5.4", "5.5", "5.4", "5.5", "5.4", "5.5", "5.4", "5.5", "5.4", "5.5");
        assertThat(basis()).isEqualTo(Scatter.Basis.OWN);
        Books.keep(bench.book, Samples.trial("U-10", "M-2", "M-2/1", "5.4"));
        assertThat(basis()).isEqualTo(Scatter.Basis.LABORATORY);
    }

    private Scatter.Basis basis() {
        Evidence evidence = bench.evidence();
        JudgedDetermination judged = evidence.determination(Bench.FIRST).orElseThrow();
        Variability variability = evidence.variability(judged, scatter()).orElseThrow();
        assertThat(variability.summary()).isEqualTo(judged.summary().orElseThrow());
        return variability.stop().scatter().orElseThrow().basis();
    }
}
