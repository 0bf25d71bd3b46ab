package porebench.desk.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.WithoutPrinter;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.UnitSystem;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.WeekPlan;
import porebench.method.Texts;
import porebench.port.Paper;

/** Puts the plan as it is on view on paper. */
final class PlanActions {
    private static final String PDF = "pdf";

    final Action print;
    final Action save;

    private final PlanModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final JComponent page;
    private final Consumer<String> told;

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
        this.page = page;
        this.told = told;
        print = Commands.of(texts.get("act.print"), () -> sheet().ifPresent(this::print));
        save = Commands.of(texts.get("act.pdf"), () -> sheet().ifPresent(this::save));
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

    private Paper paper() {
        return desk.units() == UnitSystem.US ? Paper.LETTER : Paper.A4;
    }

    private void print(PlanSheet sheet) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("doing.print");
        desk.tools()
                .tasks()
                .run(
                        doing,
                        progress -> desk.tools().press().print(sheet, paper, locale, progress),
                        printed -> told.accept(texts.get(printed ? "printed" : "not-printed")),
                        failure -> WithoutPrinter.tell(desk.tools(), page, doing, failure, () -> save(sheet)));
    }

    private void save(PlanSheet sheet) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        desk.tools()
                .asker()
                .fileToWrite(
                        page,
                        texts.get("pdf.title"),
                        texts.get("pdf.file", Days.show(sheet.plan().from())) + "." + PDF,
                        List.of(new Asker.Kind(PDF, texts.get("pdf.kind"))))
                .ifPresent(file -> {
                    String doing = texts.get("doing.pdf", file.path().toString());
                    desk.tools()
                            .tasks()
                            .run(
                                    doing,
                                    () -> {
                                        desk.tools().press().write(sheet, paper, locale, file);
                                        return file.path().toString();
                                    },
                                    written -> told.accept(texts.get("pdf.saved", written)),
                                    failure -> desk.tools().asker().failure(page, doing, failure));
                });
    }
}
