package porebench.desk.plan;

import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.method.Texts;
import porebench.record.TestPlan;
import porebench.record.column.Column;
import porebench.record.column.PlanColumns;

/** How the tests of a plan are called and said. */
final class PlanWords implements PartWords {
    private final Texts texts;

    PlanWords(Texts texts) {
        this.texts = texts;
    }

    @Override
    public String all() {
        return texts.get("plan.rows.plain");
    }

    @Override
    public String thing(int row, TypedDraft typed) {
        return texts.get("row.thing", typed.text(PlanColumns.MIX));
    }

    @Override
    public String cell(int row, TypedDraft typed, Column<?, ?> cell) {
        return texts.get("row.cell", typed.text(PlanColumns.MIX), texts.get("row." + cell.field() + ".plain"));
    }

    @Override
    public String said(TypedDraft typed, Column<?, ?> cell) {
        return cell == PlanColumns.MARK ? mark(typed) : typed.text(cell).strip();
    }

    private String mark(TypedDraft typed) {
        TestPlan.Mark mark =
                typed.text(PlanColumns.MARK).isEmpty() ? TestPlan.Mark.ASKED : typed.chosen(PlanColumns.MARK);
        return texts.get("row.mark." + mark.symbol());
    }
}
