package porebench.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.method.Problem;
import porebench.record.TestPlan;
import porebench.record.column.Column;
import porebench.record.column.PlanColumns;

/** {@code test-plans.csv}: one row a test, the rows of a plan together stating it in their order. */
public final class PlanFormat implements Format<TestPlan> {
    private static final String FROM = PlanColumns.FROM.heading();
    private static final Headings COLUMNS = Headings.of(PlanColumns.ALL, PlanColumns.OF_ROW);
    private static final Pattern OF_A_ROW = Pattern.compile("rows\\.(\\d+)\\.(\\w+)");

    @Override
    public Class<TestPlan> type() {
        return TestPlan.class;
    }

    @Override
    public String fileName() {
        return "test-plans.csv";
    }

    @Override
    public Headings columns() {
        return COLUMNS;
    }

    @Override
    public Stated stated() {
        return Stated.of(PlanColumns.FROM, PlanColumns.ALL, PlanColumns.OF_ROW);
    }

    @Override
    public List<Sheet.Row<TestPlan>> read(Table table) {
        List<Sheet.Row<TestPlan>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, FROM, List.of())) {
            Optional<TestPlan> plan = read(group);
            if (group.checkGood(table, FROM)) {
                plan.ifPresent(kept -> good.add(new Sheet.Row<>(group.first().line(), kept)));
            }
        }
        return good;
    }

    private static Optional<TestPlan> read(RowGroup group) {
        List<TestPlan.Row> rows = new ArrayList<>();
        Map<Integer, HeadedRow> entries = new HashMap<>();
        for (HeadedRow entry : group.rows()) {
            PlanColumns.OF_ROW.read(SheetReader.of(entry)).ifPresent(row -> {
                entries.put(rows.size(), entry);
                rows.add(row);
            });
        }
        Optional<TestPlan> plan = PlanColumns.ALL.read(SheetReader.of(group, rows));
        plan.ifPresent(read -> read.check().forEach(problem -> note(problem, entries, group)));
        return plan;
    }

    private static void note(Problem problem, Map<Integer, HeadedRow> entries, RowGroup group) {
        Matcher ofRow = OF_A_ROW.matcher(problem.field());
        HeadedRow entry =
                ofRow.matches() ? entries.getOrDefault(Integer.valueOf(ofRow.group(1)), group.first()) : group.first();
        String heading = ofRow.matches()
                ? PlanColumns.OF_ROW
                        .ofField(ofRow.group(2))
                        .<Column<?, ?>>map(column -> column)
                        .map(Column::heading)
                        .orElse(FROM)
                : FROM;
        if (!entry.isRefused(heading)) {
            entry.error(heading, problem);
        }
    }

    @Override
    public List<List<String>> write(TestPlan plan) {
        return plan.rows().stream()
                .map(row -> {
                    SheetCells cells = SheetCells.ofWhole(PlanColumns.ALL, plan);
                    PlanColumns.OF_ROW.write(row, cells);
                    return cells.under(COLUMNS.all());
                })
                .toList();
    }
}
