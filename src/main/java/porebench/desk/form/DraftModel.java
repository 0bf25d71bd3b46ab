package porebench.desk.form;

import porebench.method.Texts;
import porebench.record.column.Column;

/** A form whose draft can be undone step by step; one word leads the keys of its columns. */
public class DraftModel implements ColumnModel {
    private final Texts texts;
    private final String lead;
    private final History<TypedDraft> history;

    /**
     * Makes a form.
     *
     * @param lead what leads the keys of its columns, such as {@code form.}
     * @param draft the draft it begins with
     */
    public DraftModel(Texts texts, String lead, TypedDraft draft) {
        this.texts = texts;
        this.lead = lead;
        this.history = new History<>(draft);
    }

    @Override
    public final Texts texts() {
        return texts;
    }

    @Override
    public String key(Column<?, ?> column) {
        return lead + column.field();
    }

    /** Returns the steps of its draft. */
    public final History<TypedDraft> history() {
        return history;
    }

    @Override
    public final TypedDraft draft() {
        return history.draft();
    }

    @Override
    public void update(String label, TypedDraft changed) {
        history.update(label, changed);
    }
}
