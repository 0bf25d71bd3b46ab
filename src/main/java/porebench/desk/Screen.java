package porebench.desk;

import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.form.History;

/** What a room makes of one page: the parts of a window, and the draft that is typed in them. */
public interface Screen {
    /** Returns what is seen, always the same component. */
    JComponent component();

    /** Takes the keyboard: into the first field to type in, or the first table. */
    default void focus() {
        Focusing.first(component());
    }

    /** Takes over what is being typed in a cell of a table. */
    default void finishTyping() {}

    /** Begins a new entry and takes the keyboard into its first field, on a page where there are entries to begin. */
    default void beginNew() {}

    /** Drops its draft and shows what the lab book says. */
    default void dropDraft() {}

    /** Returns the steps of its draft, if it has one that can be undone. */
    default Optional<History<?>> history() {
        return Optional.empty();
    }

    /** Takes back the last step of its draft, if it has one. */
    default void undo() {
        finishTyping();
        history().ifPresent(History::undo);
    }

    /** Does the last undone step again, if there is one. */
    default void redo() {
        finishTyping();
        history().ifPresent(History::redo);
    }

    /** Returns the label of what undoing would take back. */
    default Optional<String> undoLabel() {
        return history().flatMap(History::undoLabel);
    }

    /** Returns the label of what redoing would do again. */
    default Optional<String> redoLabel() {
        return history().flatMap(History::redoLabel);
    }

    /** Saves its draft, asking what must be asked; does nothing on a page without one. */
    default void save() {}
}
