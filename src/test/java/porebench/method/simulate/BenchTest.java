package porebench.method.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.method.MeterType;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** What a simulated bench writes down. */
class BenchTest {
    private static final Bench TYPE_B = Bench.of(MeterType.B, 0.4);

    @ParameterizedTest
    @EnumSource(MeterType.class)
    void givesTheSameTrialsFromTheSameSeedAndOthersFromAnother(MeterType type) {
        Bench bench = Bench.of(type, 0.4);
        List<SimulatedTrial> trials = bench.trials(20, 1);
        assertThat(trials).hasSize(20).isEqualTo(Bench.of(type, 0.4).trials(20, 1));
        assertThat(bench.trials(6, 1)).isEqualTo(trials.subList(0, 6));
        assertThat(bench.trials(20, 2)).isNotEqualTo(trials);
        assertThat(trials.stream().map(SimulatedTrial::number)).startsWith(1, 2, 3);
    }

    @Test
    void writesDownWhatATypeBNeeds() {
        for (SimulatedTrial trial : TYPE_B.trials(200, 4)) {
            assertThat(trial.meterType()).isEqualTo(MeterType.B);
            assertThat(trial.bowl()).hasToString("7.00 L");
            assertThat(trial.h1Percent()).isEmpty();
            assertThat(trial.h2Percent()).isEmpty();
            // 350 mL is 5 % of 7 L; it strays by 3 mL, so six of them bound it.
            assertThat(trial.withdrawnMillilitres().orElseThrow().doubleValue()).isBetween(332.0, 368.0);
            assertThat(trial.withdrawnMillilitres().orElseThrow().scale()).isZero();
            assertThat(trial.gaugePercent().orElseThrow().scale()).isEqualTo(1);
            assertThat(trial.gaugePercent().orElseThrow().doubleValue()).isBetween(4.5, 6.3);
            assertThat(trial.fine().number().doubleValue()).isBetween(4485.0, 4515.0);
            assertThat(trial.coarse().number().doubleValue()).isBetween(6485.0, 6515.0);
            assertThat(trial.soakMinutes()).isEqualByComparingTo("30");
            assertThat(trial.waterCelsius().doubleValue()).isBetween(14.0, 26.0);
        }
    }

    @Test
    void writesDownWhatATypeANeeds() {
        for (SimulatedTrial trial : Bench.of(MeterType.A, 0.4).trials(200, 4)) {
            assertThat(trial.withdrawnMillilitres()).isEmpty();
            assertThat(trial.gaugePercent()).isEmpty();
            assertThat(trial.h1Percent().orElseThrow().scale()).isEqualTo(1);
            assertThat(trial.h2Percent().orElseThrow().doubleValue()).isBetween(0.0, 0.7);
        }
    }

    @Test
    void readsTheScaleItIsGiven() {
        Bench.Gauge half =
                new Bench.Gauge(MeterType.B, Typed.of("0.249", VolumeUnit.CUBIC_FOOT), new BigDecimal("0.05"), 0.06, 1);
        List<SimulatedTrial> trials = TYPE_B.with(half).trials(100, 9);
        assertThat(trials).allMatch(trial -> trial.bowl().equals(half.bowl()));
        BigDecimal division = new BigDecimal("0.05");
        assertThat(trials)
                .allMatch(trial ->
                        trial.gaugePercent().orElseThrow().remainder(division).signum() == 0)
                .anyMatch(trial -> trial.gaugePercent()
                                .orElseThrow()
                                .remainder(new BigDecimal("0.1"))
                                .signum()
                        != 0);
    }

    /** A fault changes the reading, and of what is written down beside it nothing but the soak time. */
    @ParameterizedTest
    @EnumSource(Fault.class)
    void leavesEverythingElseAsItWasWhenSomethingGoesWrong(Fault fault) {
        List<SimulatedTrial> sound = TYPE_B.trials(50, 6);
        List<SimulatedTrial> faulty = TYPE_B.with(fault).trials(50, 6);
        int changed = 0;
        for (int i = 0; i < 50; i++) {
            assertThat(faulty.get(i).withdrawnMillilitres())
                    .isEqualTo(sound.get(i).withdrawnMillilitres());
            assertThat(faulty.get(i).fine()).isEqualTo(sound.get(i).fine());
            assertThat(faulty.get(i).waterCelsius()).isEqualTo(sound.get(i).waterCelsius());
            changed += faulty.get(i).gaugePercent().equals(sound.get(i).gaugePercent()) ? 0 : 1;
            if (fault == Fault.SOAK) {
                assertThat(faulty.get(i).soakMinutes().intValue()).isBetween(2, 6);
            } else {
                assertThat(faulty.get(i).soakMinutes()).isEqualTo(sound.get(i).soakMinutes());
            }
        }
        assertThat(changed).isGreaterThan(25);
    }

    /** Type A the other way round: a lost pressure moves the level less, a pressure too high moves it more. */
    @Test
    void movesTheLevelOfATypeAAsThePhysicsSays() {
        Bench sound = Bench.of(MeterType.A, 8).withOperatorScatter(0);
        assertThat(meanFactor(sound.with(Fault.LEAK))).isLessThan(meanFactor(sound) - 0.05);
        assertThat(meanFactor(sound.with(Fault.LINE))).isGreaterThan(meanFactor(sound) + 0.1);
        assertThat(meanFactor(sound.with(Fault.FOAM))).isGreaterThan(meanFactor(sound) + 0.2);
    }

    private static double meanFactor(Bench bench) {
        return bench.trials(400, 12).stream()
                .mapToDouble(trial -> trial.h1Percent()
                        .orElseThrow()
                        .subtract(trial.h2Percent().orElseThrow())
                        .doubleValue())
                .average()
                .orElseThrow();
    }

    @Test
    void collectsFaults() {
        Bench both = TYPE_B.with(Fault.LEAK).with(Fault.FOAM);
        assertThat(both.faults()).isEqualTo(Set.of(Fault.LEAK, Fault.FOAM));
        assertThat(TYPE_B.faults()).isEmpty();
    }

    @Test
    void soaksNoLongerThanItShouldWhenTheSoakIsShort() {
        Mass none = Mass.of(0, MassUnit.GRAM);
        Bench brief = TYPE_B.with(new Bench.Filling(0, none, none, 1)).with(Fault.SOAK);
        for (SimulatedTrial trial : brief.trials(20, 2)) {
            assertThat(trial.soakMinutes()).isEqualByComparingTo("1");
            assertThat(trial.withdrawnMillilitres().orElseThrow().signum()).isGreaterThanOrEqualTo(0);
            assertThat(trial.fine().number().signum()).isGreaterThanOrEqualTo(0);
            assertThat(trial.gaugePercent().orElseThrow().signum()).isGreaterThanOrEqualTo(0);
        }
    }

    @Test
    void refusesABenchThatCannotBe() {
        Bench.Gauge gauge = TYPE_B.gauge();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bench.of(MeterType.B, -0.1))
                .withMessage("trueFactorPercent must be from 0.0 to 10.0, but is -0.1");
        assertThatIllegalArgumentException().isThrownBy(() -> TYPE_B.withOperatorScatter(-1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TYPE_B.trials(0, 1))
                .withMessage("count must be at least 1, but is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bench.Gauge(MeterType.B, gauge.bowl(), BigDecimal.ZERO, 0, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bench.Gauge(MeterType.B, gauge.bowl(), BigDecimal.ONE, -1, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bench.Gauge(MeterType.B, gauge.bowl(), BigDecimal.ONE, 0, 0.4));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bench.Gauge(MeterType.B, Typed.of("0", VolumeUnit.LITRE), BigDecimal.ONE, 0, 1));
        Mass none = Mass.of(0, MassUnit.GRAM);
        assertThatIllegalArgumentException().isThrownBy(() -> new Bench.Filling(21, none, none, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bench.Filling(5, none, none, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bench.Filling(5, Mass.of(-1, MassUnit.GRAM), none, 1));
    }
}
