package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.FactorBudget;

/** The one uncertainty that is quoted of a factor, on budget, form of issue and card. */
final class QuotedUncertaintyPromise implements Promise {
    private static final int DRAWS = 2000;
    private static final double SAID = 0.95;

    @Override
    public String name() {
        return "The quoted uncertainty of G";
    }

    @Override
    public String sentence() {
        return "G lies within U, 95 %, of the mean";
    }

    @Override
    public int fewRuns() {
        return 15;
    }

    @Override
    public int manyRuns() {
        return 1000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.05, 0.1}) {
            for (double sigma : new double[] {0.02, 0.05, 0.15}) {
                for (int trials : new int[] {2, 3, 5, 10}) {
                    for (BudgetBench.Others others : BudgetBench.Others.values()) {
                        cells.add(cell(new Dial(MeterType.B, division), sigma, trials, others, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, int trials, BudgetBench.Others others, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_132L + trials + Math.round(1000 * sigma));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            BudgetBench bench = BudgetBench.drawn(dial, sigma, trials, others, random);
            BudgetResult result = BudgetResult.drawn(FactorBudget.of(bench.inputs()), DRAWS, run);
            hits += result.lowPercent() <= bench.factor() && bench.factor() <= result.highPercent() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "division %s, scatter %s, %d trials, others %s",
                        dial.division(),
                        sigma,
                        trials,
                        others.name().toLowerCase(Locale.ROOT)),
                Cell.Way.AT_LEAST,
                SAID,
                hits,
                runs);
    }
}
