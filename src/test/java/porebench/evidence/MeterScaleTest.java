package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.paper.FactorCard;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.FactorIssue;
import porebench.record.Meter;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** A determination read on several meters has the coarsest division and the lowest top of those whose trials count. */
class MeterScaleTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        // The bench's own meter B-1 is divided to 0.10 up to 10.
        Books.keep(bench.book, meter("B-0", "0.05", "8"), meter("B-2", "0.20", "15"), meter("B-3", "0.50", "5"));
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private static Meter meter(String id, String division, String top) {
        return new Meter(
                new MeterId(id),
                MeterType.B,
                "",
                Typed.of("7.050", VolumeUnit.LITRE),
                new BigDecimal(division),
                new BigDecimal(top),
                true,
                "");
    }

    private static Trial on(String meter, Trial trial) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                new MeterId(meter),
                trial.readings(),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                trial.elevationMetres(),
                trial.simulated());
    }

    private MeterScale scale() {
        Evidence evidence = bench.evidence();
        return evidence.scale(evidence.determination(Bench.FIRST).orElseThrow().trials());
    }

    @Test
    void theCoarsestDivisionAndTheLowestTopOfTheTrialsThatCount() {
        Books.keep(
                bench.book,
                on("B-0", Samples.trial("T-4", "M-1", "M-1/1", "5.4")),
                on("B-2", Samples.trial("T-5", "M-1", "M-1/1", "5.4")));
        assertThat(scale().divisionPercent()).isEqualByComparingTo("0.20");
        assertThat(scale().topPercent().orElseThrow()).isEqualByComparingTo("8");
        Books.keep(
                bench.book,
                on("B-3", Samples.trial("T-6", "M-1", "M-1/1", "5.4")).struck("spilled"));
        assertThat(scale().divisionPercent()).isEqualByComparingTo("0.20");
        assertThat(scale().topPercent().orElseThrow()).isEqualByComparingTo("8");
    }

    @Test
    void whereNoneCountsAllDo() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(
                bench.book,
                on("B-3", Samples.trial("T-6", "M-1", "M-1/1", "5.4")).struck("spilled"));
        assertThat(scale().divisionPercent()).isEqualByComparingTo("0.50");
        assertThat(scale().topPercent().orElseThrow()).isEqualByComparingTo("5");
    }

    @Test
    void withoutAMeterTheUsualDivisionHoldsAndNoTopIsKnown() {
        MeterScale none = MeterScale.of(List.of(), bench.evidence().meters());
        assertThat(none.divisionPercent()).isEqualByComparingTo("0.1");
        assertThat(none.topPercent()).isEmpty();
    }

    // By pencil: the bench's mix has 5 % of air, and G is 0.4; what is printed ends at the lowest top, 8 %.
    @Test
    void theCardAndTheEvidenceTakeTheSameScale() {
        Books.keep(
                bench.book,
                on("B-0", Samples.trial("T-4", "M-1", "M-1/1", "5.4")),
                on("B-2", Samples.trial("T-5", "M-1", "M-1/1", "5.4")));
        LocalDate day = Bench.START;
        FactorIssue issue = bench.issue(day);
        Evidence evidence = bench.evidence();
        FactorCard card = FactorCard.of(evidence, issue, Optional.empty(), bench.book.head(), day.atTime(12, 0));
        JudgedDetermination judged = evidence.determination(Bench.FIRST).orElseThrow();
        assertThat(card.divisionPercent()).isEqualByComparingTo("0.20");
        assertThat(evidence.divisionPercent(judged)).isEqualTo(0.20);
        assertThat(card.window().rows().get(card.window().rows().size() - 1).reading())
                .isEqualByComparingTo("8");
        assertThat(card.window()
                        .rows()
                        .get(1)
                        .reading()
                        .subtract(card.window().rows().get(0).reading()))
                .isEqualByComparingTo("0.20");
    }

    /** A scale of a single division can be read, one that ends within its first division cannot. */
    @Test
    void aDivisionIsNoLargerThanTheWholeScale() {
        assertThat(meter("B-9", "0.5", "0.5").checkScale()).isEmpty();
        assertThat(meter("B-9", "0.5", "0.4").checkScale())
                .contains(Problem.error(
                        "scaleTop", "meter.division-beyond-top", new BigDecimal("0.5"), new BigDecimal("0.4")));
    }
}
