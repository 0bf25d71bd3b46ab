package porebench.evidence.paper;

import java.util.List;
import java.util.Optional;
import porebench.evidence.plan.WeekPlan;
import porebench.method.ProblemText;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;

/**
 * The tests of a week on paper, with room to write who makes each and when it was done.
 *
 * @param laboratory whose it is; empty when the lab book does not say
 * @param plan the tests
 * @param doubts what is doubtful about each test, in words, in the order of the tests
 * @param massUnit the unit of the masses on the sheet
 */
public record PlanSheet(Optional<Laboratory> laboratory, WeekPlan plan, List<List<String>> doubts, MassUnit massUnit)
        implements Printed {
    public PlanSheet {
        doubts = doubts.stream().map(List::copyOf).toList();
        if (doubts.size() != plan.tests().size()) {
            throw new IllegalArgumentException(
                    "doubts must be as many as tests, " + plan.tests().size() + ", but is " + doubts.size());
        }
    }

    /** Returns the sheet of a plan, its doubts said in words. */
    public static PlanSheet of(Optional<Laboratory> laboratory, WeekPlan plan, ProblemText words, MassUnit massUnit) {
        return new PlanSheet(
                laboratory,
                plan,
                plan.tests().stream()
                        .map(test -> test.doubts().stream().map(words::say).toList())
                        .toList(),
                massUnit);
    }
}
