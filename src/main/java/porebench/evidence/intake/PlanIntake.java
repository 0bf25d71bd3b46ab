package porebench.evidence.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.TestPlan;

/** Checks a week's plan from a file. */
final class PlanIntake {
    private PlanIntake() {}

    /** Returns what is wrong with a plan: by itself, or because it names a mix or meter that nobody knows. */
    static List<Problem> check(TestPlan plan, BiFunction<RecordKind, String, Optional<Kept>> known) {
        List<Problem> problems = new ArrayList<>(plan.check());
        problems.addAll(plan.unknown(
                mix -> known.apply(RecordKind.MIX, mix.text()).isPresent(),
                meter -> known.apply(RecordKind.METER, meter.text()).isPresent()));
        return problems;
    }
}
