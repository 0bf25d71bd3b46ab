package porebench.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.evidence.RegisterRow;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.TestPlan;
import porebench.record.column.PlanColumns;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * What is wrong with what is arranged, as far as the lab book is known.
 *
 * @param draft what is arranged
 * @param rows the mixes of the lab book at that time
 * @param answer the plan as it can be kept, or what is wrong
 */
record Judged(TypedDraft draft, List<RegisterRow> rows, Answer<TestPlan> answer) {
    /**
     * Looks at a draft.
     *
     * @param reader reads it
     * @param wording what is wrong with the texts of a plan
     */
    static Judged of(TypedDraft draft, DraftReader reader, DeskModel desk, Function<TestPlan, List<Problem>> wording) {
        Optional<TestPlan> plan = PlanColumns.ALL.read(reader);
        List<Problem> problems = new ArrayList<>(reader.problems());
        if (plan.isPresent() && !Problem.anyError(problems)) {
            problems.addAll(plan.get().check());
            problems.addAll(unknown(plan.get(), desk));
            problems.addAll(wording.apply(plan.get()));
        }
        return new Judged(
                draft,
                desk.rows(),
                plan.isEmpty() || Problem.anyError(problems)
                        ? Answer.refused(problems)
                        : Answer.of(plan.get(), problems));
    }

    private static List<Problem> unknown(TestPlan plan, DeskModel desk) {
        Set<MixId> named = plan.mixes();
        Set<MixId> mixes = desk.rows().stream()
                .map(RegisterRow::mixId)
                .filter(named::contains)
                .collect(Collectors.toSet());
        Set<MeterId> meters =
                desk.meters().stream().map(story -> story.meter().value().id()).collect(Collectors.toSet());
        return plan.unknown(mixes::contains, meters::contains);
    }

    /** Returns whether it is of a draft and a state of the lab book. */
    boolean isOf(TypedDraft other, DeskModel desk) {
        return other == draft && desk.rows() == rows;
    }
}
