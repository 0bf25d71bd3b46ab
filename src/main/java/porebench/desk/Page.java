package porebench.desk;

import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.form.History;

/** One page of the selected mix, or one register of the laboratory. */
public interface Page {
    /** Returns a short stable name, for the memory of the window and for tests: such as {@code trials}. */
    String name();

    /** Returns the title in the person's language. */
    String title();

    /** Returns the page itself, always the same component. */
    JComponent component();

    /** Returns whether a draft on it would be lost if the page turned to another mix. */
    default boolean hasUnsavedDraft() {
        return false;
    }

    /** Drops its draft and shows what the lab book says. */
    default void dropDraft() {}

    /** Returns the steps of its draft, if it has one that can be undone. */
    default Optional<History<?>> history() {
        return Optional.empty();
    }

    /** Takes back the last step of its draft, if it has one. */
    default void undo() {
        history().ifPresent(History::undo);
    }

    /** Does the last undone step again, if there is one. */
    default void redo() {
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
