package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.SheetImport;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.trial.TrialFactor;
import porebench.record.Trial;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/** The commands of the Trials page: what must be asked is asked, then the model does it. */
final class TrialsActions {
    private final TrialsModel model;
    private final JComponent over;
    private final Consumer<List<Problem>> goTo;
    private final Runnable saved;
    private final SheetImport sheets;
    private final DeskModel desk;
    private final Texts texts;
    private final NewerVersion<Trial> newer;

    /**
     * Makes the commands.
     *
     * @param over the page, over which dialogs stand
     * @param goTo puts the caret where something is wrong
     * @param saved told when a trial was saved
     * @param sheets brings sheets in
     */
    TrialsActions(
            TrialsModel model, JComponent over, Consumer<List<Problem>> goTo, Runnable saved, SheetImport sheets) {
        this.model = model;
        this.over = over;
        this.goTo = goTo;
        this.saved = saved;
        this.sheets = sheets;
        this.desk = model.desk();
        this.texts = model.texts();
        this.newer = new NewerVersion<>(model.entry(), () -> over);
    }

    private Asker asker() {
        return desk.tools().asker();
    }

    /** Returns what is done about a trial that somebody else corrected meanwhile. */
    NewerVersion<Trial> newer() {
        return newer;
    }

    /** Saves the form: a new trial, or the correction of one with a reason; shows before what somebody else kept meanwhile. */
    void save() {
        if (model.entry().determination().isPresent()) {
            newer.save(this::saveNewest);
        }
    }

    private void saveNewest() {
        BenchModel entry = model.entry();
        if (entry.draft().text(TrialColumns.OPERATOR).isBlank()) {
            // Who works here is asked once, and is who made the trial unless somebody else is typed.
            asker().person(over).ifPresent(person -> entry.type(TrialColumns.OPERATOR, person));
        }
        List<Problem> errors = entry.attempt();
        model.fire();
        if (!errors.isEmpty()) {
            goTo.accept(errors);
            return;
        }
        if (asker().person(over).isEmpty()) {
            return;
        }
        String id = entry.draft().text(TrialColumns.ID);
        Optional<String> kept = Optional.empty();
        if (entry.wantsReason()) {
            kept = asker().reason(
                            over,
                            texts.get("doubts.title", id),
                            texts.get("doubts.question", doubts(entry)),
                            texts.get("doubts.act"));
            if (kept.isEmpty()) {
                return;
            }
        }
        Optional<String> why = entry.base().isPresent()
                ? asker().reason(
                                over,
                                texts.get("correct.title", id),
                                texts.get("correct.question"),
                                texts.get("correct.act"))
                : Optional.of(texts.get("why.entered"));
        if (why.isPresent()) {
            OptionalDouble factor =
                    entry.read().live().map(TrialFactor::factorPercent).orElse(OptionalDouble.empty());
            Optional<MixId> mix = desk.selected();
            entry.keep(kept, why.get(), refused -> {
                tell(refused);
                if (refused.isEmpty()) {
                    mix.ifPresent(one -> model.noteKept(new TrialsModel.KeptTrial(one, id, factor)));
                    saved.run();
                }
            });
        }
    }

    private String doubts(BenchModel entry) {
        return String.join(
                "\n",
                entry.read().doubts().stream()
                        .map(desk.tools().problemText()::say)
                        .toList());
    }

    void begin() {
        asker().reason(
                        over,
                        texts.get("determination.begin.title"),
                        texts.get("determination.begin.question"),
                        texts.get("determination.begin.act"))
                .ifPresent(purpose -> {
                    model.begin(purpose);
                    saved.run();
                });
    }

    void strike() {
        withReason("strike", model::strike);
    }

    void restore() {
        withReason("restore", model::restore);
    }

    private void withReason(String act, BiConsumer<String, Outcome> change) {
        Optional<String> id = model.selected().map(row -> row.id().text());
        if (id.isPresent() && asker().person(over).isPresent()) {
            asker().reason(
                            over,
                            texts.get(act + ".title", id.get()),
                            texts.get(act + ".question"),
                            texts.get(act + ".act"))
                    .ifPresent(reason -> change.accept(reason, this::tell));
        }
    }

    /** Brings trials of the mix in from sheets. */
    void importSheet() {
        desk.selected()
                .ifPresent(mix -> sheets.choose(
                        over, TrialsTaken.of(mix, model.determinations().begun())));
    }

    private void tell(List<Problem> problems) {
        if (!problems.isEmpty()) {
            asker().problems(over, texts.get("refused.title"), problems);
        }
    }
}
