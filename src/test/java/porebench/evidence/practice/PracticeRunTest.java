package porebench.evidence.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Samples;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** What is planted in a run of the simulated bench is said by its seed alone. */
class PracticeRunTest {
    @Test
    void everySeedSaysWhatIsPlanted() {
        for (int lot = 0; lot < 65536; lot += 4369) {
            for (int trials = 1; trials <= PracticeRun.MOST_TRIALS; trials++) {
                comesBack(new PracticeRun(lot, trials, Optional.empty(), 0));
                for (Fault fault : Fault.values()) {
                    for (int faulty = 1; faulty <= trials; faulty++) {
                        comesBack(new PracticeRun(lot, trials, Optional.of(fault), faulty));
                    }
                }
            }
        }
    }

    private static void comesBack(PracticeRun run) {
        assertThat(PracticeRun.ofSeed(run.seed())).contains(run);
    }

    /**
     * Lot 1234, 6 trials, foam (3) in 2 of them, worked in another language from the form in the Javadoc: planted is
     * 6 * 128 + 2 * 8 + 3 = 787; with the mask of the lot, (1235 * 9E3779B97F4A7C15 mod 2^64) / 2^53, and the check of the
     * payload, ((payload + 1) * 9E3779B97F4A7C15 mod 2^64) / 2^56.
     */
    @Test
    void theFormOfASeedStaysAsItIs() {
        assertThat(new PracticeRun(1234, 6, Optional.of(Fault.FOAM), 2).seed()).isEqualTo(35006791277L);
        assertThat(new PracticeRun(0, 1, Optional.empty(), 0).seed()).isEqualTo(34360029522L);
    }

    @Test
    void aSeedThatSomebodyChoseSaysNothing() {
        for (long chosen : new long[] {Long.MIN_VALUE, -1, 0, 1, 42, 2026, 20261125, 123456789012L, Long.MAX_VALUE}) {
            assertThat(PracticeRun.ofSeed(chosen)).as("%d", chosen).isEmpty();
        }
    }

    @Test
    void aSeedWithAWrongCheckSaysNothing() {
        long seed = new PracticeRun(1234, 6, Optional.of(Fault.FOAM), 2).seed();
        long payload = seed & ~0xFFL;
        for (int check = 0; check < 256; check++) {
            assertThat(PracticeRun.ofSeed(payload | check).isPresent()).isEqualTo((payload | check) == seed);
        }
    }

    @Test
    void equalFaultsDoNotLookAlike() {
        Set<Long> beginnings = new HashSet<>();
        for (int lot = 0; lot < 100; lot++) {
            beginnings.add(new PracticeRun(lot, 6, Optional.of(Fault.LEAK), 1).seed() >>> 8 & 0x7FF);
        }
        assertThat(beginnings).hasSizeGreaterThan(50);
    }

    /**
     * The hash of HG-101 is 2128258084, that of HG-108 seven more; times 9E3779B97F4A7C15 mod 2^64, divided by 2^32, they leave
     * 11 and 8 when divided by 26, worked in another language.
     */
    @Test
    void aMixHasAlwaysTheSameTrueFactor() {
        assertThat(PracticeRun.trueFactorPercent(new MixId("HG-101"))).isEqualTo(0.31);
        assertThat(PracticeRun.trueFactorPercent(new MixId("HG-108"))).isEqualTo(0.28);
    }

    @Test
    void whatIsPlantedNamesAsManyTrialsOfTheRunAsGoWrong() {
        PracticeRun run = new PracticeRun(77, 6, Optional.of(Fault.SOAK), 2);
        Planted planted = run.planted(new MixId("HG-101"));
        assertThat(planted.faults()).containsExactly(Fault.SOAK);
        assertThat(planted.trials())
                .hasSize(2)
                .doesNotHaveDuplicates()
                .allSatisfy(id -> assertThat(PracticeRun.seedOf(id)).contains(run.seed()));
        assertThat(new PracticeRun(77, 6, Optional.empty(), 0)
                        .planted(new MixId("HG-101"))
                        .trials())
                .isEmpty();
    }

    @Test
    void chanceDrawsEveryFaultAndNoneInUpToHalfOfTheTrials() {
        Set<Optional<Fault>> drawn = new HashSet<>();
        for (int lot = 0; lot < 200; lot++) {
            PracticeRun run = PracticeRun.byLot(lot, 6);
            drawn.add(run.fault());
            assertThat(run.faulty()).isBetween(0, 3);
        }
        assertThat(drawn).hasSize(5);
        assertThat(PracticeRun.byLot(3, 1).trials()).isEqualTo(1);
    }

    @Test
    void theSeedStandsInTheIdsOfTheTrials() {
        assertThat(PracticeRun.seedOf(new TrialId("SIM-34359738368-001"))).contains(34359738368L);
        assertThat(PracticeRun.seedOf(new TrialId("SIM--5-001"))).contains(-5L);
        assertThat(PracticeRun.seedOf(new TrialId("HG-101-001"))).isEmpty();
        assertThat(PracticeRun.seedOf(new TrialId("SIM-9999999999999999999-1"))).isEmpty();
    }

    @Test
    void aRunThatContradictsItselfIsNoRun() {
        assertThatThrownBy(() -> new PracticeRun(0, 6, Optional.empty(), 1))
                .hasMessageContaining("faulty must be from 0.0 to 0.0");
        assertThatThrownBy(() -> new PracticeRun(0, 6, Optional.of(Fault.LEAK), 0))
                .hasMessageContaining("faulty must be from 1.0 to 6.0");
        assertThatThrownBy(() -> new PracticeRun(0, 16, Optional.empty(), 0)).hasMessageContaining("trials");
        assertThatThrownBy(() -> new PracticeRun(65536, 6, Optional.empty(), 0)).hasMessageContaining("lot");
    }

    /** The same seed on the same bench makes the same trials; a fault makes others of them. */
    @Test
    void aRunMakesItsTrialsWithItsFaultInSomeOfThem() {
        Bench bench = PracticeBench.of(
                        Samples.mix("M-1", "S-1", "S-2"),
                        MeterType.B,
                        Typed.of("7.050", VolumeUnit.LITRE),
                        Samples.number("0.10"),
                        0.4)
                .value()
                .orElseThrow();
        PracticeRun leaking = new PracticeRun(77, 6, Optional.of(Fault.LEAK), 2);
        assertThat(leaking.madeAt(bench))
                .hasSize(6)
                .isEqualTo(bench.with(Fault.LEAK).trials(6, leaking.seed(), Planted.draw(6, 2, leaking.seed())))
                .isNotEqualTo(bench.trials(6, leaking.seed(), Set.of()));
        PracticeRun clean = new PracticeRun(77, 4, Optional.empty(), 0);
        assertThat(clean.madeAt(bench)).hasSize(4).isEqualTo(bench.trials(4, clean.seed(), Set.of()));
    }
}
