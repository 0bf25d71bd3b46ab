package porebench.desk.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.record.TestPlan;
import porebench.record.column.PlanColumns;
import porebench.record.id.MeterId;

/**
 * A mix on the plan as it is on view.
 *
 * @param typed what is arranged of it
 * @param test what is worked out of it; empty until it is
 * @param isArranged whether it stands among what is arranged; otherwise it is proposed
 */
record PlanLine(TypedDraft typed, Optional<PlannedTest> test, boolean isArranged) {
    /**
     * Returns the lines of a plan by day, those left out last.
     *
     * @param rows what is arranged; nothing where all is proposed
     * @param shown what is worked out; empty while it is not known
     */
    static List<PlanLine> all(List<TypedDraft> rows, Optional<WeekPlan> shown) {
        List<PlannedTest> all = shown.map(plan -> Stream.concat(plan.tests().stream(), plan.leftOut().stream())
                        .toList())
                .orElse(List.of());
        Map<String, PlannedTest> tests =
                all.stream().collect(Collectors.toMap(test -> test.mixId().text(), test -> test));
        Set<String> there = rows.stream().map(row -> row.text(PlanColumns.MIX)).collect(Collectors.toSet());
        PlannedTest.Placing beside = rows.isEmpty() ? PlannedTest.Placing.PROPOSED : PlannedTest.Placing.NEW;
        List<PlanLine> lines = new ArrayList<>();
        all.stream()
                .filter(test -> test.place().placing() == beside)
                .filter(test -> !there.contains(test.mixId().text()))
                .forEach(test -> lines.add(new PlanLine(row(test), Optional.of(test), false)));
        rows.forEach(row ->
                lines.add(new PlanLine(row, Optional.ofNullable(tests.get(row.text(PlanColumns.MIX))), true)));
        lines.sort(Comparator.comparing((PlanLine line) -> !line.isTested()).thenComparing(PlanLine::day));
        return lines;
    }

    /** Returns a test as it would be arranged. */
    private static TypedDraft row(PlannedTest test) {
        return TypedDraft.BLANK
                .with(PlanColumns.MIX, test.mixId().text())
                .with(PlanColumns.DAY, Days.show(test.place().day()))
                .with(PlanColumns.TRIALS, Integer.toString(test.trials()))
                .with(PlanColumns.METER, test.meter().map(MeterId::text).orElse(""))
                .with(PlanColumns.MARK, TestPlan.Mark.ASKED.symbol());
    }

    /** Returns the name of the mix. */
    String mix() {
        return typed.text(PlanColumns.MIX);
    }

    String day() {
        return typed.text(PlanColumns.DAY).strip();
    }

    TestPlan.Mark mark() {
        return typed.text(PlanColumns.MARK).isEmpty() ? TestPlan.Mark.ASKED : typed.chosen(PlanColumns.MARK);
    }

    boolean isTested() {
        return mark() != TestPlan.Mark.LEFT_OUT;
    }
}
