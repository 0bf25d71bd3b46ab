package porebench.record.column;

import java.time.LocalDate;
import java.util.List;
import porebench.record.TestPlan;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** The columns of a week's plan, and of its tests. */
public final class PlanColumns {
    public static final Column<TestPlan.Row, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), TestPlan.Row::mixId);
    public static final Column<TestPlan.Row, LocalDate> DAY =
            Column.needed("test_day", CellType.day(), TestPlan.Row::day).called("day");
    public static final Column<TestPlan.Row, String> WHO = Column.needed("who", CellType.text(), TestPlan.Row::who);
    public static final Column<TestPlan.Row, Integer> TRIALS =
            Column.any("trials", CellType.whole(1), TestPlan.Row::trials);
    public static final Column<TestPlan.Row, MeterId> METER = Column.any(
                    "meter_id", CellType.word(MeterId::new, MeterId::text), TestPlan.Row::meter)
            .called("meter");
    public static final Column<TestPlan.Row, TestPlan.Mark> MARK = Column.needed(
                    "mark", CellType.choice(TestPlan.Mark.values(), TestPlan.Mark::symbol), TestPlan.Row::mark)
            .blankMeans(TestPlan.Mark.ASKED);
    public static final Column<TestPlan.Row, String> REMARK =
            Column.needed("remark", CellType.text(), TestPlan.Row::remark);

    public static final Columns<TestPlan.Row> OF_ROW = Columns.of(
                    "test_plan_row", PlanColumns::row, MIX, DAY, WHO, TRIALS, METER, MARK, REMARK)
            .since(20);

    public static final Part<TestPlan.Row> OF_ROWS = new Part<>(OF_ROW, true);

    public static final Column<TestPlan, LocalDate> FROM =
            Column.needed("plan_from", CellType.day(), TestPlan::from).called("from");
    public static final Column<TestPlan, List<TestPlan.Row>> ROWS =
            Column.needed("mix_id", CellType.several(OF_ROWS), TestPlan::rows).called("rows");

    public static final Columns<TestPlan> ALL =
            Columns.of("test_plan", PlanColumns::made, FROM, ROWS).since(20).checked(TestPlan::check);

    private PlanColumns() {}

    private static TestPlan.Row row(Cells cells) {
        return new TestPlan.Row(
                cells.get(MIX),
                cells.get(DAY),
                cells.get(WHO),
                cells.any(TRIALS),
                cells.any(METER),
                cells.get(MARK),
                cells.get(REMARK));
    }

    private static TestPlan made(Cells cells) {
        return new TestPlan(cells.get(FROM), cells.get(ROWS));
    }
}
