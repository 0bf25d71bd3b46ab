package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.budget.Bowl;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.TrialScatter;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * One determination in a laboratory, with the barest budget there is, scatter and one reading: every other line makes U wider.
 *
 * @param factor the true factor, in % air
 * @param inputs what its budget is made from
 */
record BudgetBench(double factor, FactorInputs inputs) {
    private static final int OTHERS = 8;
    private static final double CARD_STEP = 0.1;

    /** What is known of other mixes. */
    enum Others {
        /** The lab book has none. */
        ALONE,
        /** Eight determinations of three trials, which scatter as these do. */
        EQUAL,
        /** Every second mix, this one too, scatters twice as much. */
        UNEQUAL,
        /** This mix scatters twice as much, and every second of the others. */
        WIDE;

        private boolean isMixed() {
            return this == UNEQUAL || this == WIDE;
        }
    }

    /** Draws a determination. */
    static BudgetBench drawn(Dial dial, double sigma, int trials, Others others, SplittableRandom random) {
        boolean isWide = others == Others.WIDE || (others == Others.UNEQUAL && random.nextBoolean());
        double factor = dial.anyFactor(random);
        Summary summary = Summary.of(dial.read(factor, (isWide ? 2 : 1) * sigma, trials, random));
        List<PooledDeviation> known = new ArrayList<>();
        for (int i = 0; i < OTHERS && others != Others.ALONE; i++) {
            double own = (others.isMixed() && random.nextBoolean() ? 2 : 1) * sigma;
            PooledDeviation.of(List.of(Summary.of(dial.read(dial.anyFactor(random), own, 3, random))))
                    .ifPresent(known::add);
        }
        return new BudgetBench(
                factor,
                new FactorInputs(
                        MeterType.B,
                        summary,
                        dial.division(),
                        summary.mean(),
                        0,
                        Optional.empty(),
                        Bowl.stated(7, 0.001),
                        Optional.empty(),
                        Optional.empty(),
                        TrialScatter.of(summary, MeterType.B, dial.division(), CARD_STEP, known),
                        Optional.empty(),
                        Set.of()));
    }
}
