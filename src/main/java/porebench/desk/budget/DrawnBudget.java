package porebench.desk.budget;

import porebench.method.budget.Budget;
import porebench.statistics.IntervalCheck;
import porebench.statistics.MonteCarlo;

/**
 * A budget with the same by drawing beside it.
 *
 * @param budget the budget
 * @param drawn the result by drawing
 * @param check how far the two agree
 */
record DrawnBudget(Budget budget, MonteCarlo drawn, IntervalCheck check) {
    /** Ends are found to about a hundredth of the standard uncertainty, in a tenth of a second. */
    static final int DRAWS = 100_000;

    /** Always the same, so that the same records give the same interval. */
    static final long SEED = 1;

    static DrawnBudget of(Budget budget) {
        MonteCarlo drawn = budget.simulate(DRAWS, SEED);
        return new DrawnBudget(
                budget,
                drawn,
                IntervalCheck.of(budget.valuePercent(), budget.combinedPercent(), budget.expandedPercent(), drawn));
    }
}
