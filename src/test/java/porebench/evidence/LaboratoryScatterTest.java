package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.trial.Readings;
import porebench.method.trial.Scatter;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.Variability;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.statistics.summary.PooledDeviation;
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
        return LaboratoryScatter.ofCounted(Evidence.ofAll(bench.book).stream()
                .flatMap(each -> each.counted().stream())
                .toList());
    }

    private void mix(String number, String... gauges) {
        Books.keep(
                bench.book,
                Samples.mix("M-" + number, "S-1", "S-2"),
                Samples.determination("M-" + number + "/1", "M-" + number));
        for (int i = 0; i < gauges.length; i++) {
            Books.keep(bench.book, Samples.trial("U-" + number + i, "M-" + number, "M-" + number + "/1", gauges[i]));
        }
    }

    private ScatterElsewhere seenFrom(DeterminationId determination) {
        Evidence evidence = Evidence.ofAll(bench.book).stream()
                .filter(one -> one.determination(determination).isPresent())
                .findFirst()
                .orElseThrow();
        return evidence.elsewhere(evidence.determination(determination).orElseThrow(), MeterType.B, scatter());
    }

    /** 5.4 5.4 5.5: squares 0.02 / 3 on 2 degrees; 5.2 5.4: 0.02 on 1 degree; together sqrt(0.0266667 / 3) = 0.094281. */
    @Test
    void looksAtTheOtherDeterminationsMixByMix() {
        mix("2", "5.2", "5.4");
        assertThat(seenFrom(OTHER).sameMix()).isEmpty();
        assertThat(seenFrom(OTHER).otherMixes().list()).singleElement().satisfies(mix -> {
            assertThat(mix.degreesOfFreedom()).isEqualTo(2);
            assertThat(mix.standardDeviation()).isCloseTo(Math.sqrt(0.02 / 3 / 2), offset(1e-9));
        });
        assertThat(seenFrom(Bench.FIRST).otherMixes().list()).singleElement().satisfies(mix -> {
            assertThat(mix.degreesOfFreedom()).isEqualTo(1);
            assertThat(mix.standardDeviation()).isCloseTo(Math.sqrt(0.02), offset(1e-9));
        });
        mix("3", "5.4");
        PooledDeviation all = seenFrom(new DeterminationId("M-3/1")).pooled().orElseThrow();
        assertThat(all.sets()).isEqualTo(2);
        assertThat(all.degreesOfFreedom()).isEqualTo(3);
        assertThat(all.standardDeviation()).isCloseTo(0.094281, offset(1e-6));
    }

    @Test
    void keepsTheOtherDeterminationsOfTheMixApart() {
        mix("2", "5.2", "5.4");
        Books.keep(
                bench.book,
                Samples.determination("M-1/2", "M-1"),
                Samples.trial("V-1", "M-1", "M-1/2", "5.4"),
                Samples.trial("V-2", "M-1", "M-1/2", "5.8"));
        assertThat(seenFrom(Bench.FIRST).sameMix().orElseThrow().standardDeviation())
                .isCloseTo(Math.sqrt(0.08), offset(1e-9));
        assertThat(seenFrom(Bench.FIRST).otherMixes().list()).hasSize(1);
    }

    @Test
    void countsOnlyTrialsThatCountAndDeterminationsOfAtLeastTwo() {
        mix("2", "5.4");
        bench.strike(List.of("T-3"));
        assertThat(seenFrom(OTHER).pooled().orElseThrow().standardDeviation()).isZero();
        bench.strike(List.of("T-2"));
        assertThat(scatter().sets()).isEmpty();
        assertThat(seenFrom(OTHER)).isEqualTo(ScatterElsewhere.NONE);
    }

    @Test
    void looksAtOneTypeOfMeter() {
        mix("2", "5.2", "5.4");
        JudgedDetermination judged = bench.evidence().determination(Bench.FIRST).orElseThrow();
        assertThat(bench.evidence().elsewhere(judged, MeterType.A, scatter())).isEqualTo(ScatterElsewhere.NONE);
    }

    /** The sample of a determination read on both types of meter scatters by the type too. */
    @Test
    void aDeterminationOnTwoTypesOfMeterDoesNotCount() {
        Trial plain = Samples.trial("A-9", "M-1", "M-1/1", "5.4");
        Readings typeA = new Readings(
                MeterType.A,
                plain.readings().bowl(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Samples.some("0.70"),
                Samples.some("0.30"),
                false);
        assertThat(scatter().sets()).hasSize(1);
        Books.keep(
                bench.book,
                new Trial(
                        plain.id(),
                        plain.mixId(),
                        plain.determinationId(),
                        plain.testedAt(),
                        plain.operator(),
                        plain.meterId(),
                        typeA,
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false));
        assertThat(scatter().sets()).isEmpty();
    }

    /** As in the first test: 5.4 5.4 5.5 has sqrt(0.02 / 3 / 2), 5.2 5.4 has sqrt(0.02). */
    @Test
    void eachOtherDeterminationOfTheTypeScattersByItself() {
        mix("2", "5.2", "5.4");
        assertThat(scatter().apart(new DeterminationId("M-3/1"), MeterType.B))
                .extracting(PooledDeviation::standardDeviation)
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(Math.sqrt(0.02 / 3 / 2), offset(1e-9)),
                        second -> assertThat(second).isCloseTo(Math.sqrt(0.02), offset(1e-9)));
        assertThat(scatter().apart(Bench.FIRST, MeterType.B))
                .singleElement()
                .satisfies(other -> assertThat(other.standardDeviation()).isCloseTo(Math.sqrt(0.02), offset(1e-9)));
        assertThat(scatter().apart(Bench.FIRST, MeterType.A)).isEmpty();
    }

    /** A mix's own scatter is drawn towards that of three other mixes; two are too few. */
    @Test
    void isReckonedWithFromThreeOtherMixesOn() {
        mix("2", "5.2", "5.4");
        mix("3", "5.2", "5.4");
        assertThat(basis()).isEqualTo(Scatter.Basis.OWN);
        mix("4", "5.2", "5.4");
        assertThat(basis()).isEqualTo(Scatter.Basis.LABORATORY);
    }

    private Scatter.Basis basis() {
        Evidence evidence = bench.evidence();
        JudgedDetermination judged = evidence.determination(Bench.FIRST).orElseThrow();
        Variability variability = Variability.of(
                        judged.trials().stream()
                                .filter(JudgedTrial::counts)
                                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                                .toArray(),
                        judged.meterType(),
                        evidence.divisionPercent(judged),
                        evidence.profile(),
                        evidence.elsewhere(judged, judged.meterType(), scatter()))
                .orElseThrow();
        assertThat(variability.summary()).isEqualTo(judged.summary().orElseThrow());
        return variability.stop().scatter().orElseThrow().basis();
    }
}
