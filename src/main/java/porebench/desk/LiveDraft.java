package porebench.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.form.History;
import porebench.desk.form.TypedDraft;
import porebench.record.book.LabBook;
import porebench.record.column.Column;

/** Keeps what is typed into a form in {@link Unsaved}, letter by letter, under the name of what the form shows. */
public final class LiveDraft {
    private final DeskModel desk;
    private final History<TypedDraft> history;
    private final List<? extends Column<?, ?>> columns;
    private final Function<TypedDraft, KeptDraft> asKept;
    private Optional<String> place = Optional.empty();
    private Optional<LabBook> book = Optional.empty();
    private boolean isKeeping;

    /**
     * Keeps nothing until the form stands somewhere.
     *
     * @param columns in which numbers are typed, among others
     * @param asKept says of which record it is the draft
     */
    public LiveDraft(
            DeskModel desk,
            History<TypedDraft> history,
            List<? extends Column<?, ?>> columns,
            Function<TypedDraft, KeptDraft> asKept) {
        this.desk = desk;
        this.history = history;
        this.columns = columns;
        this.asKept = asKept;
        history.onChange(this::keep);
        desk.unsaved().onChange(this::follow);
    }

    /** Returns what is kept under a name. */
    public Optional<KeptDraft> find(String name) {
        return desk.unsaved()
                .find(name)
                .flatMap(KeptDraft::parse)
                .map(kept -> kept.with(desk.unsaved().respelling(name).of(kept.draft(), columns)));
    }

    /** Keeps the draft under a name from now on. */
    void stand(String name) {
        place = Optional.of(name);
        book = Optional.of(desk.book());
    }

    /** Goes on with what is kept under a name, if anything is, and keeps the draft there from now on. */
    public void goOn(String name) {
        stand(name);
        find(name).ifPresent(kept -> history.resume(kept.draft()));
    }

    /** Keeps the draft no further; what is kept stays. */
    public void leave() {
        place = Optional.empty();
        book = Optional.empty();
    }

    /** Keeps nothing of the draft any more. */
    public void forget() {
        place.ifPresent(desk.unsaved()::drop);
        leave();
    }

    /** Returns whether the draft belongs to a lab book that is not open any more. */
    public boolean isOfAnotherBook() {
        return book.filter(other -> other != desk.book()).isPresent();
    }

    private void keep() {
        if (place.isEmpty() || isOfAnotherBook()) {
            return;
        }
        isKeeping = true;
        if (history.isChanged()) {
            desk.unsaved().keep(place.get(), asKept.apply(history.draft()).text());
        } else {
            desk.unsaved().drop(place.get());
        }
        isKeeping = false;
    }

    /** Goes on with what another part of the window did with the same draft. */
    private void follow() {
        if (isKeeping || place.isEmpty() || isOfAnotherBook()) {
            return;
        }
        Optional<KeptDraft> kept = find(place.get());
        KeptDraft own = asKept.apply(history.draft());
        if (kept.filter(other -> other.isOf(own.recordId(), own.version()) && !other.equals(own))
                .isPresent()) {
            history.resume(kept.get().draft());
        } else if (kept.isEmpty() && history.isChanged()) {
            history.resume(history.saved());
        }
    }
}
