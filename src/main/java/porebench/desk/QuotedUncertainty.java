package porebench.desk;

import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.budget.BudgetInputs;
import porebench.evidence.budget.QuotedBudget;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FactorInputs;

/** The one uncertainty to quote of a determination's factor; nothing is drawn again until what it rests on changes. */
public final class QuotedUncertainty {
    /**
     * What is asked; of the same state of the lab book the answer is the same.
     *
     * @param evidence everything known about the mix
     * @param determination one of its determinations
     * @param laboratory how trials scatter in the laboratory
     */
    public record Asked(Evidence evidence, JudgedDetermination determination, LaboratoryScatter laboratory) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Asked asked
                    && asked.evidence == evidence
                    && asked.laboratory == laboratory
                    && asked.determination.equals(determination);
        }

        @Override
        public int hashCode() {
            return determination.hashCode();
        }
    }

    private Optional<FactorInputs> known = Optional.empty();
    private Optional<BudgetResult> result = Optional.empty();

    /**
     * Returns the budget of a determination with its result; empty while no trial counts.
     *
     * <p>Takes some tenths of a second, so that it is no work for the event thread.
     */
    public synchronized Optional<BudgetResult> of(Asked asked) {
        Optional<FactorInputs> inputs = BudgetInputs.of(asked.evidence(), asked.determination(), asked.laboratory());
        if (!inputs.equals(known)) {
            known = inputs;
            result = inputs.map(FactorBudget::of).map(QuotedBudget::of);
        }
        return result;
    }
}
