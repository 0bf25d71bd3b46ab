package porebench.desk.frame;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.beans.PropertyChangeEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultEditorKit;
import javax.swing.text.JTextComponent;
import porebench.desk.form.Commands;
import porebench.method.Texts;

/** Cut, copy and paste for the menu: what they do is up to the field or table that had the keyboard before the menu opened. */
final class EditCommands {
    final Action cut;
    final Action copy;
    final Action paste;

    private final JComponent window;
    private Optional<JComponent> last = Optional.empty();

    /**
     * Makes the commands.
     *
     * @param window what the fields and tables stand in
     */
    EditCommands(JComponent window, Texts texts) {
        this.window = window;
        cut = Commands.of(texts.get("menu.cut"), "ctrl X", () -> perform("cut", DefaultEditorKit.cutAction));
        copy = Commands.of(texts.get("menu.copy-text"), "ctrl C", () -> perform("copy", DefaultEditorKit.copyAction));
        paste = Commands.of(texts.get("menu.paste"), "ctrl V", () -> perform("paste", DefaultEditorKit.pasteAction));
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener("permanentFocusOwner", this::follow);
    }

    List<Action> all() {
        return List.of(cut, copy, paste);
    }

    /** An open menu takes the keyboard for itself, which is not where anything is pasted. */
    private void follow(PropertyChangeEvent event) {
        if (event.getNewValue() instanceof JComponent owner
                && !(owner instanceof JRootPane)
                && SwingUtilities.isDescendingFrom(owner, window)) {
            last = Optional.of(owner);
        }
    }

    /** Says what can be done where the keyboard was. */
    void refresh() {
        boolean isText = last.filter(JTextComponent.class::isInstance).isPresent();
        boolean isTyped = last.filter(
                        owner -> owner instanceof JTextComponent text ? text.isEditable() && text.isEnabled() : true)
                .isPresent();
        boolean hasSelection = last.filter(owner ->
                        !(owner instanceof JTextComponent text) || text.getSelectionStart() < text.getSelectionEnd())
                .isPresent();
        cut.setEnabled(isText && isTyped && hasSelection);
        copy.setEnabled(
                hasSelection && find("copy", DefaultEditorKit.copyAction).isPresent());
        paste.setEnabled(isTyped && find("paste", DefaultEditorKit.pasteAction).isPresent());
    }

    /** Lets the keys do what they do, whatever the menu showed when it was open. */
    void release() {
        all().forEach(action -> action.setEnabled(true));
    }

    private Optional<Action> find(String ofTable, String ofText) {
        return last.flatMap(owner ->
                Optional.ofNullable(owner.getActionMap().get(owner instanceof JTextComponent ? ofText : ofTable)));
    }

    private void perform(String ofTable, String ofText) {
        find(ofTable, ofText).ifPresent(action -> {
            Component owner = last.orElseThrow();
            action.actionPerformed(new ActionEvent(owner, ActionEvent.ACTION_PERFORMED, ofTable));
        });
    }
}
