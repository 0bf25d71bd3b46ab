package porebench.method.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MeterType;
import porebench.statistics.PooledDeviation;
import porebench.statistics.Summary;

/**
 * The uncertainty that is quoted, U at 95 %, holds the truth in at least 95 of a hundred determinations, half a percentage point
 * allowed: of G on a divided dial, and of a field reading corrected by it.
 *
 * <p>G lies anywhere within a division. The budget is the barest there is, scatter and one reading, because every other line makes it
 * wider. <i>alone</i>: the lab book has no other determination; <i>equal</i>: it has eight of three trials which scatter as these do;
 * <i>unequal</i>: every second mix, this one too, scatters twice as much; <i>wide</i>: this mix does, and every second of the others.
 * The number of determinations a cell is {@code porebench.coverage}, 300 if not given; chance is allowed for by three standard
 * errors.
 */
class BudgetCoverageTest {
    private static final int DETERMINATIONS = Integer.getInteger("porebench.coverage", 300);
    private static final int DRAWS = 2000;
    private static final int OTHERS = 8;
    private static final double FIELD_SCATTER = 0.28;
    private static final double SAID = 0.95;
    private static final double ALLOWED = 0.005;

    /** One laboratory and one determination in it. */
    private record Bench(double truth, FactorInputs inputs) {
        static Bench of(Random random, int trials, double scatter, double division, String laboratory) {
            boolean isMixed = laboratory.equals("unequal") || laboratory.equals("wide");
            boolean isWide = laboratory.equals("wide") || (isMixed && random.nextBoolean());
            double truth = 0.4 + division * random.nextDouble();
            double[] factors = factors(random, trials, truth, (isWide ? 2 : 1) * scatter, division);
            List<PooledDeviation> others = new ArrayList<>();
            for (int i = 0; i < OTHERS && !laboratory.equals("alone"); i++) {
                double own = (isMixed && random.nextBoolean() ? 2 : 1) * scatter;
                double[] other = factors(random, 3, 0.4 + division * random.nextDouble(), own, division);
                PooledDeviation.of(List.of(Summary.of(other))).ifPresent(others::add);
            }
            Summary summary = Summary.of(factors);
            return new Bench(
                    truth,
                    new FactorInputs(
                            MeterType.B,
                            summary,
                            division,
                            summary.mean(),
                            0,
                            Optional.empty(),
                            Bowl.stated(7, 0.001),
                            Optional.empty(),
                            Optional.empty(),
                            TrialScatter.of(summary, MeterType.B, division, 0.1, others),
                            Optional.empty(),
                            Set.of()));
        }

        private static double[] factors(Random random, int trials, double truth, double scatter, double division) {
            double[] factors = new double[trials];
            for (int i = 0; i < trials; i++) {
                factors[i] = division * Math.rint((truth + scatter * random.nextGaussian()) / division);
            }
            return factors;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0.15, 0.1, alone",
        "2, 0.02, 0.1, alone",
        "3, 0.05, 0.05, alone",
        "10, 0.15, 0.01, alone",
        "2, 0.15, 0.01, equal",
        "3, 0.05, 0.1, equal",
        "2, 0.05, 0.05, unequal",
        "4, 0.1, 0.01, unequal",
        "2, 0.15, 0.1, wide",
        "6, 0.02, 0.01, wide"
    })
    void quotedUncertaintyOfGHoldsTheTruth(int trials, double scatter, double division, String laboratory) {
        Random random = new Random(20_261_127);
        int held = 0;
        for (int i = 0; i < DETERMINATIONS; i++) {
            Bench bench = Bench.of(random, trials, scatter, division, laboratory);
            BudgetResult result = BudgetResult.drawn(FactorBudget.of(bench.inputs()), DRAWS, i);
            held += result.lowPercent() <= bench.truth() && bench.truth() <= result.highPercent() ? 1 : 0;
        }
        assertHolds(held);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.15, alone", "2, 0.05, equal", "3, 0.1, wide", "10, 0.02, alone"})
    void quotedUncertaintyOfAFieldReadingHoldsTheAir(int trials, double scatter, String laboratory) {
        Random random = new Random(20_261_128);
        int held = 0;
        for (int i = 0; i < DETERMINATIONS; i++) {
            Bench bench = Bench.of(random, trials, scatter, 0.1, laboratory);
            double air = 5 + random.nextDouble();
            double reading = Math.rint(10 * (air + bench.truth() + FIELD_SCATTER * random.nextGaussian())) / 10;
            double handedOut = Math.rint(10 * bench.inputs().factors().mean()) / 10;
            Budget field = FieldBudget.of(new FieldInputs(
                    reading,
                    0.1,
                    Optional.empty(),
                    FIELD_SCATTER,
                    handedOut,
                    FactorBudget.of(bench.inputs()),
                    0,
                    false,
                    OptionalDouble.of(0.1)));
            BudgetResult result = BudgetResult.drawn(field, DRAWS, i);
            held += result.lowPercent() <= air && air <= result.highPercent() ? 1 : 0;
        }
        assertHolds(held);
    }

    private static void assertHolds(int held) {
        double error = Math.sqrt(SAID * (1 - SAID) / DETERMINATIONS);
        assertThat((double) held / DETERMINATIONS).isGreaterThanOrEqualTo(SAID - ALLOWED - 3 * error);
    }
}
