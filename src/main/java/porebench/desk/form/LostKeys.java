package porebench.desk.form;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.swing.JList;
import javax.swing.text.JTextComponent;

/** Notices letters and digits that nothing took: the keyboard was on a page, a button, a table, or nowhere. */
final class LostKeys {
    private static final int MOST = 40;

    private Consumer<String> told = letters -> {};
    private String letters = "";
    private boolean isPressTaken;
    private int chosen;

    /** Tells from now on of what went nowhere. */
    void onLost(Consumer<String> listener) {
        told = listener;
        // Asked around the dispatch itself: a key that waits for a focus on its way is dispatched later than its event.
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.addKeyEventDispatcher(key -> {
            chosen = choiceIn(key.getComponent());
            return false;
        });
        manager.addKeyEventPostProcessor(key -> {
            dispatched(key);
            return false;
        });
    }

    private static int choiceIn(Component owner) {
        return owner instanceof JList<?> list ? list.getSelectedIndex() : -1;
    }

    /** Notes whether somebody took a key that was dispatched. */
    private void dispatched(KeyEvent key) {
        if (key.getID() == KeyEvent.KEY_PRESSED) {
            isPressTaken = key.isConsumed();
        } else if (isLetter(key)) {
            Component owner = key.getComponent();
            boolean isReadOnly = owner instanceof JTextComponent text && !(text.isEditable() && text.isEnabled());
            boolean isTaken = !isReadOnly && (key.isConsumed() || isPressTaken) || choiceIn(owner) != chosen;
            if (isTaken) {
                say("");
            } else {
                add(key.getKeyChar());
            }
        }
    }

    /** Notes an event that is dropped before anybody could take it. */
    void drop(AWTEvent event) {
        if (event instanceof KeyEvent key && isLetter(key)) {
            add(key.getKeyChar());
        }
    }

    /** A space presses what has the keyboard; what is struck with Alt or Ctrl is a command. */
    private static boolean isLetter(KeyEvent key) {
        boolean isCommand = (key.isAltDown() || key.isControlDown()) && !key.isAltGraphDown() || key.isMetaDown();
        char letter = key.getKeyChar();
        return key.getID() == KeyEvent.KEY_TYPED
                && !isCommand
                && letter != KeyEvent.CHAR_UNDEFINED
                && !Character.isISOControl(letter)
                && !Character.isWhitespace(letter);
    }

    private void add(char letter) {
        String all = letters + letter;
        say(all.substring(Math.max(0, all.length() - MOST)));
    }

    private void say(String now) {
        if (!now.equals(letters)) {
            letters = now;
            told.accept(now);
        }
    }
}
