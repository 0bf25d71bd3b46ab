package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.Screen;
import porebench.desk.form.Commands;
import porebench.desk.form.History;
import porebench.desk.table.ShownColumn;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.column.Column;
import porebench.record.id.MixId;

/** One register with the record on view, and its commands: begin a record, save its draft, drop it. */
abstract class RecordPage<T extends Kept> implements Screen {
    private final RecordModel<T> model;
    private final Texts texts;
    private final Action begin;
    private final Action save;
    private final Action drop;
    private final NewerVersion<T> newer;
    private final RecordPanel<T> panel;

    /**
     * Makes the register.
     *
     * @param open opens a page of the record on view; empty where there is none
     */
    RecordPage(RecordModel<T> model, List<ShownColumn<T>> columns, Optional<Action> open) {
        this(model, columns, open, mix -> {}, RecordSections.NONE);
    }

    /**
     * Makes the register of what mixes use.
     *
     * @param open opens a page of the record on view; empty where there is none
     * @param openMix turns the window to a mix that uses the record on view
     * @param sections what stands of the record below the register
     */
    RecordPage(
            RecordModel<T> model,
            List<ShownColumn<T>> columns,
            Optional<Action> open,
            Consumer<MixId> openMix,
            RecordSections sections) {
        this.model = model;
        this.texts = model.texts();
        begin = Commands.of(texts.get(model.what() + ".new"), this::begin);
        save = Commands.of(texts.get("record.save"), this::save);
        drop = Commands.of(texts.get("record.drop"), this::dropDraft);
        newer = new NewerVersion<>(model, this::component);
        panel = new RecordPanel<>(model, newer, columns, begin, save, drop, this::choose, open, openMix, sections);
        model.history().onChange(this::refresh);
        model.desk().onChange(() -> {
            model.follow();
            refresh();
        });
        refresh();
    }

    /** Returns the words that all registers share. */
    static Texts texts(DeskModel desk) {
        return Texts.of("porebench.desk.register.register", desk.tools().locale());
    }

    /** Returns a column that says what a record states in one of its own, under the name of that. */
    static <T extends Kept> ShownColumn<T> shown(RecordModel<T> model, Column<T, ?> column, int width) {
        return shown(model, column, model.words(column), width);
    }

    /** Returns a column that says what a record states in one of its own. */
    static <T extends Kept> ShownColumn<T> shown(RecordModel<T> model, Column<T, ?> column, String heading, int width) {
        return new ShownColumn<>(heading, width, record -> model.said(column, model.draftOf(record)));
    }

    private void refresh() {
        boolean changed = model.history().isChanged();
        Commands.say(save, newer.act(texts.get("record.save")));
        save.setEnabled(changed);
        drop.setEnabled(changed || model.isBegun());
        panel.refresh();
    }

    @Override
    public final void beginNew() {
        begin();
    }

    private void begin() {
        model.begin();
        refresh();
        panel.focusFirst();
    }

    private void choose(String recordId) {
        boolean isShown = model.base()
                .filter(version -> version.value().recordId().equals(recordId))
                .isPresent();
        if (!isShown) {
            model.show(recordId);
        }
    }

    private Asker asker() {
        return model.desk().tools().asker();
    }

    private String title() {
        return texts.get(model.what() + ".title");
    }

    @Override
    public final JComponent component() {
        return panel.component();
    }

    @Override
    public final void dropDraft() {
        model.dropDraft();
        refresh();
    }

    @Override
    public final Optional<History<?>> history() {
        return Optional.of(model.history());
    }

    /** Saves the draft, or shows what is wrong with it, or what somebody else kept meanwhile. */
    @Override
    public final void save() {
        newer.save(this::saveNewest);
    }

    private void saveNewest() {
        boolean good = model.trySaving();
        refresh();
        if (!good || !model.history().isChanged()) {
            return;
        }
        Optional<String> effects = model.effects();
        if (effects.isPresent()
                && !asker().confirm(component(), title(), effects.get(), texts.get("record.save-anyway"))) {
            return;
        }
        Optional<String> why = model.isNew()
                ? Optional.of(texts.get("record.first"))
                : model.reasonTyped()
                        .or(() ->
                                asker().reason(component(), title(), texts.get("record.why"), texts.get("record.act")));
        if (why.isPresent() && asker().person(component()).isPresent()) {
            model.save(
                    why.get(),
                    Outcome.of(
                            refused -> {
                                tell(refused);
                                if (refused.isEmpty() && effects.isPresent()) {
                                    afterEffects();
                                }
                            },
                            failure -> asker().failure(component(), texts.get("record.saving"), failure)));
        }
    }

    /** Offers what is to be done once a version was kept that made something untrue. */
    void afterEffects() {
        // Most registers have nothing to offer.
    }

    private void tell(List<Problem> refused) {
        refresh();
        if (!refused.isEmpty()) {
            asker().problems(component(), title(), refused);
        }
    }
}
