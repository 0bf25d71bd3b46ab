package porebench.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.DraftModel;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.book.Wording;
import porebench.record.column.Column;
import porebench.record.column.Columns;

/**
 * The draft of one record in a form: a new one, or the correction of a version in the lab book. What is typed, how it is undone,
 * what the lab book has against it, and how it is kept, is the same of every kind of record.
 *
 * <p>What is only missing is not held against a new draft until somebody tried to save it.
 *
 * @param <T> the kind of record
 */
public abstract class RecordDraft<T extends Kept> extends DraftModel {
    private final DeskModel desk;
    private final Class<T> kind;
    private final Columns<T> columns;
    private Optional<Version<T>> base = Optional.empty();
    private boolean isTried;

    /**
     * Makes a draft in which nothing is typed.
     *
     * @param columns the columns of the record, the first of which is its name
     */
    protected RecordDraft(DeskModel desk, Texts texts, Class<T> kind, Columns<T> columns) {
        super(texts, "", TypedDraft.BLANK);
        this.desk = desk;
        this.kind = kind;
        this.columns = columns;
    }

    public final DeskModel desk() {
        return desk;
    }

    public final Columns<T> columns() {
        return columns;
    }

    private Column<T, ?> name() {
        return columns.all().get(0);
    }

    /** Returns the name of the record as it is typed. */
    public final String typedName() {
        return draft().text(name()).strip();
    }

    /** A record keeps its name. */
    @Override
    public boolean isFixed(Column<?, ?> column) {
        return !isNew() && column.equals(name());
    }

    /** Returns the version that is corrected; empty for a new record. */
    public final Optional<Version<T>> base() {
        return base;
    }

    public final boolean isNew() {
        return base.isEmpty();
    }

    /** Begins anew, from a version of the lab book or from none; a draft before is dropped. */
    protected void restart(Optional<Version<T>> from, TypedDraft draft) {
        base = from;
        isTried = false;
        history().restart(draft);
    }

    /** Notes that somebody wants to save: from now on everything missing is said. */
    protected final void setTried() {
        isTried = true;
    }

    protected final boolean isTried() {
        return isTried;
    }

    /** Returns how many errors kept a tried saving from being done; 0 when it was not tried. */
    protected final int errorsIn(List<Problem> problems) {
        return isTried ? (int) problems.stream().filter(Problem::isError).count() : 0;
    }

    /** Returns the problem that the lab book has a record of this name; it is given the word for such a record. */
    protected final Problem alreadyThere(Object word) {
        return Problem.error(name().field(), "book.already-there", word, typedName());
    }

    /** Returns what is wrong with the texts of the record, and with the name of a new one. */
    protected final List<Problem> wording(T record) {
        return Wording.ofForm(record, base.map(Version::value), desk.names());
    }

    /** Returns the record as it is kept: a new one, or a new version of the one that is corrected. */
    protected final Draft kept(T record) {
        return base.map(version -> Draft.correcting(version, record)).orElseGet(() -> Draft.of(record));
    }

    /** Returns all versions of a record, the newest first; none while they are looked up. */
    public final List<Version<T>> versions(String recordId) {
        List<Version<T>> versions = new ArrayList<>(
                desk.answer(new Question.Versions<>(kind, recordId)).orElse(List.of()));
        Collections.reverse(versions);
        return versions;
    }

    /** Returns all versions of the record on view, the newest first; none of a new one. */
    public final List<Version<T>> versions() {
        return base.map(version -> versions(version.value().recordId())).orElse(List.of());
    }
}
