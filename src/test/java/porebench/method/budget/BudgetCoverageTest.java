package porebench.method.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MeterType;
import porebench.statistics.MonteCarlo;
import porebench.statistics.Summary;

/**
 * Honest determinations on a bench whose cylinder, bowl and dial are each wrong by what the budget says they may be: the true
 * factor lies within the expanded uncertainty, and within the drawn interval, in at least 95 of a hundred.
 *
 * <p>G = 0.43 % on a dial read to 0.1 %, 350 mL out of about 7 L. Of 4000 determinations chance leaves 0.35 % either way.
 * Measured: 96.8 % to 98.6 % by expanded uncertainty, 97.9 % to 99.0 % by drawing; more than 95 % because part of the division and
 * of the last digit is in the scatter as well.
 */
class BudgetCoverageTest {
    private static final double TRUTH = 0.43;
    private static final int DETERMINATIONS = 4000;
    private static final double DIAL = 0.03;
    private static final double BOWL = 0.004;
    private static final double CYLINDER = 2.5;

    /** One bench: what is wrong with it, and nobody knows. */
    private static FactorInputs determination(Random random, int trials, double scatter, double dialDeviation) {
        double stated = 7;
        double bowl = stated + BOWL * random.nextGaussian();
        double cylinder = CYLINDER * (2 * random.nextDouble() - 1);
        double dial = dialDeviation * random.nextGaussian();
        double[] factors = new double[trials];
        double reading = 0;
        double water = 0;
        for (int i = 0; i < trials; i++) {
            double poured = 330 + 40 * random.nextDouble();
            double written = Math.rint(poured - cylinder);
            double air = TRUTH + scatter * random.nextGaussian() + 0.1 * poured / bowl;
            double read = Math.rint(10 * (air + dial)) / 10;
            factors[i] = read - 0.1 * written / stated;
            reading += read / trials;
            water += written / trials;
        }
        return new FactorInputs(
                MeterType.B,
                Summary.of(factors),
                0.1,
                reading,
                0,
                Optional.of(new Dial(0, DIAL, Double.POSITIVE_INFINITY, false, Optional.empty())),
                new Bowl(stated, BOWL, Double.POSITIVE_INFINITY, true),
                Optional.of(Water.ofVolume(water, 1, CYLINDER)),
                Optional.empty(),
                TrialScatter.of(Summary.of(factors), MeterType.B, 0.1, 0.1, List.of()),
                Set.of());
    }

    @ParameterizedTest
    @CsvSource({"2, 0.02", "3, 0.02", "3, 0.05", "4, 0.08", "6, 0.08", "10, 0.15"})
    void expandedUncertaintyCoversTheTruth(int trials, double scatter) {
        Random random = new Random(20_260_701);
        int covered = 0;
        for (int i = 0; i < DETERMINATIONS; i++) {
            Budget budget = FactorBudget.of(determination(random, trials, scatter, DIAL));
            covered += Math.abs(budget.valuePercent() - TRUTH) <= budget.expandedPercent() ? 1 : 0;
        }
        assertThat((double) covered / DETERMINATIONS).isGreaterThan(0.94);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.05", "3, 0.05", "6, 0.08"})
    void drawnIntervalCoversTheTruth(int trials, double scatter) {
        Random random = new Random(20_260_702);
        int covered = 0;
        for (int i = 0; i < DETERMINATIONS / 4; i++) {
            MonteCarlo drawn = FactorBudget.of(determination(random, trials, scatter, DIAL))
                    .simulate(2000, i);
            covered += drawn.symmetric().low() <= TRUTH
                            && TRUTH <= drawn.symmetric().high()
                    ? 1
                    : 0;
        }
        assertThat((double) covered / DETERMINATIONS * 4).isGreaterThan(0.94);
    }

    /** A dial four times as wrong as its calibration says: the budget knows nothing of it and misses. */
    @Test
    void missesWhatItWasNotTold() {
        Random random = new Random(20_260_703);
        int covered = 0;
        for (int i = 0; i < DETERMINATIONS; i++) {
            Budget budget = FactorBudget.of(determination(random, 6, 0.08, 4 * DIAL));
            covered += Math.abs(budget.valuePercent() - TRUTH) <= budget.expandedPercent() ? 1 : 0;
        }
        assertThat((double) covered / DETERMINATIONS).isLessThan(0.8);
    }
}
