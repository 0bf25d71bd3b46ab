package porebench.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.form.DraftModel;
import porebench.desk.form.PartWords;
import porebench.desk.form.TwoVersions;
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
    private final LiveDraft live;
    /** Which version stands behind a draft that counts as saved: undoing can turn back to an earlier one. */
    private final Map<TypedDraft, Version<T>> bases = new IdentityHashMap<>();

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
        // Before the draft is kept, which tells of which version it is.
        history()
                .onChange(() ->
                        base = Optional.ofNullable(bases.get(history().saved())).or(() -> base));
        this.live = new LiveDraft(desk, history(), columns.all(), this::asKept);
    }

    /** Returns a version of the record as it would be typed. */
    protected abstract TypedDraft typed(T record);

    public final DeskModel desk() {
        return desk;
    }

    @Override
    public Optional<LocalDate> today() {
        return Optional.of(desk.tools().today());
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
        bases.clear();
        from.ifPresent(version -> bases.put(draft, version));
        isTried = false;
        history().restart(draft);
    }

    /**
     * Turns to a record, or to a new one, whose draft from now on outlives the page and the program; one that was typed before and
     * not saved is gone on with. The draft on view until now stays kept.
     *
     * @param name the name under which the draft is kept
     * @param from the newest version of the record; empty for a new one
     * @param draft what the form begins with where nothing is kept
     */
    protected final void turnTo(String name, Optional<Version<T>> from, TypedDraft draft) {
        live.leave();
        restart(from, draft);
        Optional<KeptDraft> kept = live.find(name);
        String id = from.map(version -> version.value().recordId()).orElse("");
        int number = from.map(Version::number).orElse(0);
        if (kept.filter(known -> !known.isOf(id, number)).isEmpty()) {
            live.stand(name);
            kept.ifPresent(known -> history().resume(known.draft()));
        } else {
            desk.ask(new Question.Versions<>(kind, kept.get().recordId()), all -> resume(name, kept.get(), all));
        }
    }

    /** Goes on with the correction of a version that is not the newest one any more, or of a record that was not on view. */
    private void resume(String name, KeptDraft kept, List<Version<T>> all) {
        all.stream().filter(one -> one.number() == kept.version()).findFirst().ifPresent(version -> {
            restart(Optional.of(version), typed(version.value()));
            live.stand(name);
            history().resume(kept.draft());
        });
    }

    /** Turns away from the draft on view, which stays kept outside the lab book. */
    protected final void turnAway() {
        live.leave();
    }

    /** Returns whether it shows a record of a lab book that is not open any more. */
    protected final boolean isOfAnotherBook() {
        return live.isOfAnotherBook();
    }

    /** Keeps nothing of the draft on view any more, because it stands in the lab book now. */
    protected final void forgetTyped() {
        live.forget();
    }

    private KeptDraft asKept(TypedDraft typed) {
        return base.map(version -> new KeptDraft(version.value().recordId(), version.number(), typed))
                .orElseGet(() -> KeptDraft.ofNew(typed));
    }

    /** Returns the version that somebody else kept while this draft was typed; empty where none is known. */
    public final Optional<Version<T>> newer() {
        return base.flatMap(
                version -> desk.answer(new Question.One<>(kind, version.value().recordId()))
                        .flatMap(this::asNewer));
    }

    private Optional<Version<T>> asNewer(Optional<Version<T>> found) {
        return found.filter(newest ->
                base.filter(version -> newest.number() > version.number()).isPresent());
    }

    /** Looks in the lab book as it is now for the version that somebody else kept while this draft was typed. */
    final void lookForNewer(Consumer<Optional<Version<T>>> then) {
        if (base.isEmpty()) {
            then.accept(Optional.empty());
        } else {
            desk.ask(new Question.One<>(kind, base.get().value().recordId()), found -> then.accept(asNewer(found)));
        }
    }

    /** Returns the draft beside a version that somebody else kept meanwhile. */
    public final TwoVersions beside(Version<T> newest) {
        return new TwoVersions(
                this, compared(), this::partWords, this::partNames, history().saved(), typed(newest.value()), draft());
    }

    /** Returns two records side by side, as they would be typed: a line where they differ says them as theirs and yours. */
    public final TwoVersions sideBySide(T one, T other) {
        return new TwoVersions(
                this, compared(), this::partWords, this::partNames, typed(one), typed(one), typed(other));
    }

    /** Returns the columns in which two versions are compared, as they stand in the form. */
    protected List<? extends Column<?, ?>> compared() {
        return columns.all();
    }

    /** Returns the words of a column of which the record has several things. */
    protected PartWords partWords(Column<?, ?> column) {
        throw new IllegalStateException("column must be of one thing, but is " + column.field());
    }

    /** Returns the columns that together name one of several things, those that name it best first; none where its place does. */
    protected List<List<Column<?, ?>>> partNames(Column<?, ?> column) {
        return List.of();
    }

    /**
     * Goes on from a version that somebody else kept meanwhile, as a step that can be undone.
     *
     * @param label what was done, for the person
     * @param chosen the draft from now on
     */
    public final void goOnFrom(Version<T> newest, String label, TypedDraft chosen) {
        TypedDraft theirs = typed(newest.value());
        bases.put(theirs, newest);
        history().goOnFrom(label, theirs, chosen);
    }

    /** Turns to the version that somebody else kept meanwhile where nothing was typed yet; says whether it did. */
    protected final boolean followNewest() {
        Optional<Version<T>> newest = history().isChanged() ? Optional.empty() : newer();
        newest.ifPresent(version -> restart(newest, typed(version.value())));
        return newest.isPresent();
    }

    /**
     * Takes a correction back to what the newest version says, as a step that can be undone.
     *
     * @param label what was done, for the person
     * @return whether it was: a new record is dropped in another way
     */
    protected final boolean takeBack(String label) {
        boolean can = !isNew() && history().isChanged();
        if (can) {
            isTried = false;
            newer().ifPresentOrElse(
                            newest -> goOnFrom(newest, label, typed(newest.value())),
                            () -> history().renew(label, history().saved()));
        }
        return can;
    }

    /**
     * Gives the draft on view up, as a step that can be taken back: it is then shown again as it was typed.
     *
     * @param label what was done, for the person
     * @param turn turns to what is shown in its place
     * @param turnBack turns to the record of the draft again
     */
    protected final void giveUp(String label, Runnable turn, Runnable turnBack) {
        TypedDraft typed = draft();
        boolean wasChanged = history().isChanged();
        turn.run();
        if (wasChanged) {
            history().gaveUp(label, () -> {
                turnBack.run();
                history().resume(typed);
            });
        }
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
