package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.form.History;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Kept;

/** One register with the record on view: what the pages of sources, of meters and of equipment share. */
abstract class RecordPage<T extends Kept> implements Screen {
    private final RecordModel<T> model;
    private final RecordActions actions;
    private final RecordPanel<T> panel;

    /**
     * Makes the register.
     *
     * @param open opens a page of the record on view; empty where there is none
     */
    RecordPage(
            RecordModel<T> model,
            String what,
            List<ShownColumn<T>> columns,
            Supplier<String> note,
            Optional<Action> open) {
        this.model = model;
        this.actions = new RecordActions(model, what, this::component, this::refresh);
        this.panel = new RecordPanel<>(model, what, columns, note, actions, this::choose, open);
        model.history().onChange(this::refresh);
        model.desk().onChange(() -> {
            model.follow();
            refresh();
        });
        refresh();
    }

    static Texts texts(DeskModel desk) {
        return Texts.of("porebench.desk.register.register", desk.tools().locale());
    }

    private void refresh() {
        panel.refresh();
    }

    private void choose(String recordId) {
        boolean isShown = model.base()
                .filter(version -> version.value().recordId().equals(recordId))
                .isPresent();
        if (!isShown) {
            actions.leave(() -> model.show(recordId));
        }
    }

    @Override
    public JComponent component() {
        return panel.component();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }

    @Override
    public void dropDraft() {
        model.dropDraft();
        refresh();
    }

    @Override
    public void save() {
        actions.saveDraft();
    }
}
