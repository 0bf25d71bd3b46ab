package porebench.evidence.budget;

import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.FactorBudget;

/** The one uncertainty to quote of a factor, wherever it is quoted: on a page, in the register, at its issue. */
public final class QuotedBudget {
    /** A few tenths of a second at most. */
    private static final int MOST_DRAWS = 400_000;

    private QuotedBudget() {}

    /**
     * Returns the budget of a determination's factor with its result; empty while no trial counts. It takes some tenths of a second.
     *
     * @param laboratory how trials scatter in the laboratory
     */
    public static Optional<BudgetResult> of(
            Evidence evidence, JudgedDetermination determination, LaboratoryScatter laboratory) {
        return BudgetInputs.of(evidence, determination, laboratory)
                .map(FactorBudget::of)
                .map(QuotedBudget::of);
    }

    /** Returns a budget with its result; from the same figures it is always the same. */
    public static BudgetResult of(Budget budget) {
        return BudgetResult.settled(budget, MOST_DRAWS, BudgetResult.SEED);
    }
}
