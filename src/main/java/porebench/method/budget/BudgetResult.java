package porebench.method.budget;

import porebench.statistics.uncertainty.IntervalCheck;
import porebench.statistics.uncertainty.MonteCarlo;

/**
 * The result of a budget: the one uncertainty to quote, U at 95 %, and by which of two ways it was found.
 *
 * <p>The law of propagation holds where drawing agrees with it. Where it does not, few trials having made the rule of effective
 * degrees of freedom rough, the drawn interval is the result, and U is half its width.
 *
 * <p>Source: JCGM 101:2008, clause 8 (the check) and 7.9 (drawing until it settles); recalled. Differences from the source: none.
 *
 * @param budget the budget
 * @param drawn the result by drawing
 * @param check how far the two agree
 */
public record BudgetResult(Budget budget, MonteCarlo drawn, IntervalCheck check) {
    /** Always the same unless another is asked for, so that the same records give the same interval. */
    public static final long SEED = 1;

    /** A fifth of the tolerance of the check, as its clause 8.2 advises. */
    private static final double PART_OF_TOLERANCE = 0.2;

    /**
     * Draws until the ends of the interval have settled to a fifth of the tolerance of the check.
     *
     * @param mostDraws after which drawing ends all the same, at least two blocks
     * @param seed of the random numbers
     */
    public static BudgetResult settled(Budget budget, int mostDraws, long seed) {
        double tolerance = PART_OF_TOLERANCE * IntervalCheck.toleranceOf(budget.combinedPercent());
        return of(budget, budget.settle(tolerance, mostDraws, seed));
    }

    /**
     * Draws a number of times.
     *
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     */
    public static BudgetResult drawn(Budget budget, int draws, long seed) {
        return of(budget, budget.simulate(draws, seed));
    }

    private static BudgetResult of(Budget budget, MonteCarlo drawn) {
        return new BudgetResult(
                budget,
                drawn,
                IntervalCheck.of(budget.valuePercent(), budget.combinedPercent(), budget.expandedPercent(), drawn));
    }

    /** Returns whether the drawn interval is the result. */
    public boolean isDrawn() {
        return !check.agrees();
    }

    /** Returns the lower end of the 95 % interval, in % air. */
    public double lowPercent() {
        return isDrawn() ? drawn.symmetric().low() : budget.valuePercent() - budget.expandedPercent();
    }

    /** Returns the upper end of the 95 % interval, in % air. */
    public double highPercent() {
        return isDrawn() ? drawn.symmetric().high() : budget.valuePercent() + budget.expandedPercent();
    }

    /** Returns U at 95 %, in % air: half the width of the interval. */
    public double uncertaintyPercent() {
        return (highPercent() - lowPercent()) / 2;
    }
}
