package porebench.desk.register;

import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.Outcome;
import porebench.desk.form.Commands;
import porebench.method.Texts;

/** The commands of a register: begin a record, save its draft, drop it. */
final class RecordActions {
    private final RecordModel<?> model;
    private final String what;
    private final Texts texts;
    private final Supplier<JComponent> over;
    private final Runnable refresh;
    private final Action begin;
    private final Action save;
    private final Action drop;

    /**
     * Makes the commands.
     *
     * @param what the word that leads the keys of their texts
     * @param over what dialogs stand over
     * @param refresh shows what a command changed besides the draft
     */
    RecordActions(RecordModel<?> model, String what, Supplier<JComponent> over, Runnable refresh) {
        this.model = model;
        this.what = what;
        this.texts = model.texts();
        this.over = over;
        this.refresh = refresh;
        begin = Commands.of(texts.get(what + ".new"), this::beginNew);
        save = Commands.of(texts.get("record.save"), this::saveDraft);
        drop = Commands.of(texts.get("record.drop"), this::dropDraft);
    }

    Action begin() {
        return begin;
    }

    Action save() {
        return save;
    }

    Action drop() {
        return drop;
    }

    /** Offers what can be done now. */
    void refresh() {
        boolean changed = model.history().isChanged();
        save.setEnabled(changed);
        drop.setEnabled(changed || model.isBegun());
    }

    /** Asks about a draft, and goes on when it may be left; else it shows what it shows. */
    void leave(Runnable then) {
        if (model.history().isChanged()) {
            switch (asker().draft(over.get(), texts.get(what + ".title"))) {
                case SAVE -> saveDraft();
                case DROP -> dropDraft();
                case KEEP_EDITING -> {}
            }
        }
        model.desk().tools().tasks().whenAnswered(() -> {
            if (!model.history().isChanged()) {
                then.run();
            }
            refresh.run();
        });
    }

    private Asker asker() {
        return model.desk().tools().asker();
    }

    private void beginNew() {
        leave(model::begin);
    }

    private void dropDraft() {
        model.dropDraft();
        refresh.run();
    }

    /** Saves the draft, or shows what is wrong with it. */
    void saveDraft() {
        boolean good = model.trySaving();
        refresh.run();
        if (!good || !model.history().isChanged()) {
            return;
        }
        String title = texts.get(what + ".title");
        Optional<String> effects = model.effects();
        if (effects.isPresent()
                && !asker().confirm(over.get(), title, effects.get(), texts.get("record.save-anyway"))) {
            return;
        }
        Optional<String> why = model.isNew()
                ? Optional.of(texts.get("record.first"))
                : asker().reason(over.get(), title, texts.get("record.why"));
        if (why.isEmpty() || asker().person(over.get()).isEmpty()) {
            return;
        }
        keep(title, why.get());
    }

    private void keep(String title, String why) {
        model.save(
                why,
                Outcome.of(
                        refused -> {
                            refresh.run();
                            if (!refused.isEmpty()) {
                                asker().problems(over.get(), title, refused);
                            }
                        },
                        failure -> asker().failure(over.get(), texts.get("record.saving"), failure)));
    }
}
