package porebench.desk.plan;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.ListOut;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.WeekPlan;
import porebench.method.Texts;

/** Puts the plan as it is on view on paper. */
final class PlanActions {
    final Action print;
    final Action save;

    private final PlanModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final ListOut out;
    private final ListOut.Words words;

    /**
     * Makes the actions.
     *
     * @param page the page, for dialogs to stand over
     * @param told takes what was done, in words
     */
    PlanActions(PlanModel model, JComponent page, Consumer<String> told) {
        this.model = model;
        this.desk = model.desk();
        this.texts = model.texts();
        this.out = new ListOut(desk, page, told);
        this.words = new ListOut.Words(
                texts.get("doing.print"),
                texts.get("printed"),
                texts.get("not-printed"),
                texts.get("pdf.title"),
                texts.get("pdf.kind"),
                "",
                file -> texts.get("doing.pdf", file),
                file -> texts.get("pdf.saved", file));
        print = Commands.of(
                texts.get("act.print"), () -> sheet().map(this::leaf).ifPresent(out::print));
        save = Commands.of(texts.get("act.pdf"), () -> sheet().map(this::leaf).ifPresent(out::save));
    }

    /** Shows whether there is a plan to print: one that is worked out as it is on view. */
    void refresh() {
        boolean isKnown = model.plan().isPresent();
        print.setEnabled(isKnown);
        save.setEnabled(isKnown);
    }

    private Optional<PlanSheet> sheet() {
        return model.plan()
                .map(plan -> PlanSheet.of(
                        desk.laboratory(),
                        plan,
                        model.base().filter(kept -> isAsKept(plan)).map(PlanSheet.Arranged::of),
                        PlanText.in(desk.tools().locale()),
                        desk.tools().problemText(),
                        desk.units().batchMass()));
    }

    private boolean isAsKept(WeekPlan plan) {
        return !model.history().isChanged()
                && model.from().filter(plan.from()::equals).isPresent();
    }

    private ListOut.Leaf leaf(PlanSheet sheet) {
        return new ListOut.Leaf(
                sheet,
                Optional.empty(),
                texts.get("pdf.file", Days.show(sheet.plan().from())),
                words);
    }
}
