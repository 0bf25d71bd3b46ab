package porebench.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.SteadyButton;
import porebench.desk.form.TwoVersions;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Version;

/**
 * What a page does about a version that somebody else kept while a correction was typed on it: says so, and shows both side by
 * side before anything is saved. What was typed is not lost in any case: nothing is done without a choice, and undoing takes it back.
 *
 * @param <T> the kind of record
 */
public final class NewerVersion<T extends Kept> {
    private final RecordDraft<T> draft;
    private final Texts texts;
    private final Supplier<JComponent> over;

    /**
     * Looks after a draft.
     *
     * @param over the page, over which both are shown
     */
    public NewerVersion(RecordDraft<T> draft, Supplier<JComponent> over) {
        this.draft = draft;
        this.texts = Texts.of("porebench.desk.desk", draft.desk().tools().locale());
        this.over = over;
    }

    private Optional<Version<T>> known() {
        return draft.history().isChanged() ? draft.newer() : Optional.empty();
    }

    /** Says that somebody kept another version, who and when; blank where nobody did. */
    public String words() {
        return known().map(newest -> texts.get(
                        "newer.kept",
                        newest.stamp().who(),
                        Integer.toString(newest.number()),
                        Days.show(newest.stamp().at(), draft.desk().tools().zone())))
                .orElse("");
    }

    /** Returns what the button that saves says: where another version is known that both are shown first. */
    public String act(String saving) {
        return known().isPresent() ? texts.get("newer.compare") : saving;
    }

    /** Returns a button that saves, which has the room to say that both versions are shown first. */
    public SteadyButton button(String name, Action saving) {
        SteadyButton button = Commands.button(name, saving);
        button.keepRoomFor(texts.get("newer.compare"));
        return button;
    }

    /** Saves a draft; where somebody kept another version meanwhile, both are shown first, and what was chosen is saved. */
    public void save(Runnable saving) {
        if (draft.isNew() || !draft.history().isChanged()) {
            saving.run();
        } else {
            draft.lookForNewer(newest -> newest.ifPresentOrElse(version -> show(version, saving), saving));
        }
    }

    private void show(Version<T> newest, Runnable then) {
        TwoVersions both = draft.beside(newest);
        Optional<List<Boolean>> choice = both.lines().isEmpty()
                ? Optional.of(List.of())
                : draft.desk()
                        .tools()
                        .asker()
                        .both(over.get(), draft.typedName(), newest.stamp(), newest.number(), both.lines());
        choice.ifPresent(takesTheirs -> {
            draft.goOnFrom(newest, texts.get("newer.step"), both.chosen(takesTheirs));
            then.run();
        });
    }
}
