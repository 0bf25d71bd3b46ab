package porebench.evidence.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Problem;
import porebench.method.air.AirVerdict;
import porebench.method.sample.Batch;
import porebench.print.SievedCards;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.SampleReadings;
import porebench.record.book.LabBook;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/**
 * Readings of a wet-sieved concrete: G 0.4 from 9 March 2026, 6.0 +- 1.5 % wanted of the sieved concrete. The volumes are those of
 * {@link SievedCards}: 0.95 m3 in all, 0.095 held, 0.855 passing, 0.57 of mortar.
 */
class SievedReadingsTest {
    private static final String READ_AT = "2026-03-20T09:30";

    @TempDir
    Path folder;

    private final MovingClock clock = new MovingClock("2026-03-02");
    private LabBook book;

    @BeforeEach
    void aFactorIsInForce() {
        Bench bench = new Bench(folder);
        bench.issue(Bench.START);
        bench.close();
        book = new SqliteShelf(clock).open(folder.resolve("book.porebench"));
        clock.turnTo("2026-03-28");
    }

    @AfterEach
    void end() {
        book.close();
    }

    private Evidence evidence() {
        return Evidence.of(book, Bench.MIX).orElseThrow();
    }

    /** Says since 28 March that the concrete is sieved. What was read before is corrected still: the factor held then. */
    private void design(Batch batch) {
        MixDesign mix = evidence().mix().value();
        Books.correct(
                book,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        new Batch(batch.constituents(), batch.volume(), new BigDecimal("6.0"), batch.wetSieved()),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        mix.profileId(),
                        mix.remarks(),
                        mix.plant()));
    }

    private FieldFinding of(String gauge) {
        FieldReading reading = SampleReadings.plain("r1", "M-1", gauge).at(LocalDateTime.parse(READ_AT));
        return new FieldReadings(
                        book,
                        mix -> Evidence.of(book, mix),
                        () -> LaboratoryScatter.ofCounted(evidence().counted()),
                        Optional.empty())
                .notKept(List.of(reading))
                .get(0)
                .now();
    }

    private FieldAir air(String gauge) {
        return of(gauge).air().orElseThrow();
    }

    private static String spread(FieldAir air) {
        return air.spread()
                .map(both -> both.fullMixturePercent() + " " + both.mortarPercent())
                .orElse("-");
    }

    /**
     * By pencil, with A the air of the sieved concrete, A Vc / (Vt - A Va / 100) and A Vc / (Vm + A (Vc - Vm) / 100):
     *
     * <pre>
     * 6.4: A 6.0; 5.13 / (0.95 - 0.0057) = 5.4326, 5.13 / (0.57 + 0.0171) = 8.7379
     * 4.9: A 4.5; 3.8475 / (0.95 - 0.004275) = 4.0683, 3.8475 / (0.57 + 0.012825) = 6.6015
     * 5.05: A 4.65, not the 4.6 that is reported; 3.97575 / 0.9455825 = 4.2046, 3.97575 / 0.5832525 = 6.8165 (of 4.6: 6.7449)
     * </pre>
     */
    @Test
    void fullMixtureAndMortarFollowFromTheAirOfTheSievedConcrete() {
        design(SievedCards.BATCH);
        assertThat(spread(air("6.4"))).isEqualTo("5.4 8.7");
        assertThat(spread(air("4.9"))).isEqualTo("4.1 6.6");
        assertThat(spread(air("5.05"))).isEqualTo("4.2 6.8");
        assertThat(of("6.4").doubts()).isEmpty();
    }

    /** 4.5 of the sieved concrete is the limit and passes, though the full mixture has 4.1; 7.6 fails, though it has 6.9. */
    @Test
    void theAirOfTheSievedConcreteIsJudged() {
        design(SievedCards.BATCH);
        assertThat(air("4.9").verdict()).contains(AirVerdict.PASSES);
        assertThat(air("8.0").verdict()).contains(AirVerdict.FAILS);
        assertThat(spread(air("8.0"))).startsWith("6.9 ");
        assertThat(air("4.9").limits().lowPercent()).isEqualByComparingTo("4.5");
    }

    @Test
    void aDesignThatDoesNotGiveTheVolumesIsNamedAndTheLoadIsJudgedAllTheSame() {
        design(evidence().mix().value().batch().withWetSieved(true));
        FieldFinding finding = of("6.4");
        assertThat(spread(finding.air().orElseThrow())).isEqualTo("-");
        assertThat(finding.air().orElseThrow().verdict()).contains(AirVerdict.PASSES);
        assertThat(finding.doubts()).extracting(Problem::code).containsExactly("field.volumes-unknown");
    }

    @Test
    void ofOtherConcreteThereIsNothingToSpread() {
        assertThat(spread(air("6.4"))).isEqualTo("-");
        assertThat(of("6.4").doubts()).isEmpty();
    }

    @Test
    void airsThatPartSaySomethingElse() {
        design(SievedCards.BATCH);
        FieldAir air = air("6.4");
        FieldAir other = new FieldAir(
                air.issue(),
                air.airPercent(),
                air.reportedPercent(),
                air.rule(),
                air.budget(),
                air.limits(),
                air.verdict(),
                Optional.of(new SievedAirs.Spread(new BigDecimal("5.4"), new BigDecimal("8.8"))));
        assertThat(air.saysTheSameAs(air("6.4"))).isTrue();
        assertThat(air.saysTheSameAs(other)).isFalse();
    }

    /** 0.1 read with G 0.4 is less than no air, which no concrete has: there is nothing to spread. */
    @Test
    void lessThanNoAirIsNotSpread() {
        design(SievedCards.BATCH);
        assertThat(of("0.1").air().flatMap(FieldAir::spread)).isEmpty();
    }
}
