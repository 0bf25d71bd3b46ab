package porebench.desk.form;

import porebench.record.column.Column;

/** How the things are called and said of which a record has several in a column. */
public interface PartWords {
    /** Returns how all of them are called in a sentence. */
    String all();

    /**
     * Returns how one of them is called.
     *
     * @param row which of them it is, counted from 0
     */
    String thing(int row, TypedDraft typed);

    /** Returns how one cell of a thing is called. */
    String cell(int row, TypedDraft typed, Column<?, ?> cell);

    /** Returns what a thing says in a cell, in words. */
    String said(TypedDraft typed, Column<?, ?> cell);
}
