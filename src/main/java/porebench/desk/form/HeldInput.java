package porebench.desk.form;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.InputMethodEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.MenuSelectionManager;
import javax.swing.Timer;

/**
 * The events of the window, of which keys and clicks wait while an answer is awaited: they were meant for what the answer shows,
 * so they come after it, in their order. The window is painted and timers run meanwhile.
 *
 * <p>Keys also wait behind a key that did something, until what it set going has arrived: behind Enter, the next number must not come
 * before the keyboard does. A key struck on a busy machine may be older than what Java takes for the newest event, and then Java itself
 * does not hold it back.
 *
 * <p>A dialog of the name {@link #OPEN} stays open to clicks and Escape. A second click of a double click belongs to the first and
 * does not wait.
 */
public class HeldInput extends EventQueue {
    /** The name of a dialog that can be used while an answer is awaited. */
    static final String OPEN = "task";

    private static final int LOOK_AGAIN_MILLISECONDS = 10;
    private static final int MOST_LOOKS = 200;

    private final Deque<AWTEvent> held = new ArrayDeque<>();
    private final LostKeys lost = new LostKeys();
    private int awaited;
    private boolean answering;
    private boolean asked;
    private boolean replaying;
    private boolean didInMenu;
    private int looksForFocus;
    private int settling;

    @Override
    protected void dispatchEvent(AWTEvent event) {
        if (awaited == 0 && answering && isMeant(event)) {
            // Something that the answer asks or tells is in between.
            asked = true;
        }
        boolean waits = awaited > 0
                || settling > 0
                || replaying && !held.isEmpty()
                || event instanceof KeyEvent && isKeyboardBetween();
        if (!waits || !isMeant(event) || isOpenTo(event)) {
            pass(event);
        } else if (!(event instanceof MouseEvent click) || click.getClickCount() < 2) {
            held.add(event);
            if (awaited == 0) {
                replayLater();
            }
        }
    }

    /** Lets an event come; what follows a key that did something waits until what it posted has come, too. */
    private void pass(AWTEvent event) {
        if (event instanceof KeyEvent key && isLetterOfAMenu(key)) {
            return;
        }
        boolean hadMenu = isMenuOpen();
        super.dispatchEvent(event);
        if (event instanceof KeyEvent pressed && pressed.getID() == KeyEvent.KEY_PRESSED) {
            didInMenu = hadMenu && pressed.isConsumed();
        }
        if (event instanceof KeyEvent key && key.getID() == KeyEvent.KEY_PRESSED && key.isConsumed()) {
            settling++;
            EventQueue.invokeLater(() -> {
                settling--;
                if (awaited == 0 && !held.isEmpty()) {
                    replayLater();
                }
            });
        }
    }

    /**
     * Returns whether a letter is that of a stroke which closed a menu: a field has the keyboard by now, which the letter was never
     * meant for. To a menu that is still open it comes: by its letter, not by its key, a menu in it is opened.
     */
    private boolean isLetterOfAMenu(KeyEvent key) {
        boolean isIt = key.getID() == KeyEvent.KEY_TYPED && didInMenu && !isMenuOpen();
        didInMenu = didInMenu && key.getID() != KeyEvent.KEY_TYPED;
        return isIt;
    }

    private static boolean isMenuOpen() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
    }

    /** Returns whether the keyboard is on its way from one window to another, where a key would be lost: behind a closed dialog. */
    private boolean isKeyboardBetween() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean isThere = owner != null && owner.isShowing();
        if (isThere) {
            looksForFocus = 0;
        }
        return !isThere && looksForFocus < MOST_LOOKS;
    }

    private void replayLater() {
        if (!replaying) {
            replaying = true;
            EventQueue.invokeLater(this::replay);
        }
    }

    /** Returns whether an event is something that a person means: a key, a click, not a mere move of the mouse. */
    private static boolean isMeant(AWTEvent event) {
        int id = event.getID();
        boolean isMove =
                id == MouseEvent.MOUSE_MOVED || id == MouseEvent.MOUSE_ENTERED || id == MouseEvent.MOUSE_EXITED;
        return !isMove && (event instanceof InputEvent || event instanceof InputMethodEvent);
    }

    private static boolean isOpenTo(AWTEvent event) {
        Window window = event instanceof KeyEvent key && key.getKeyCode() == KeyEvent.VK_ESCAPE
                ? KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow()
                : windowOf(event).orElse(null);
        boolean isForIt =
                event instanceof MouseEvent || event instanceof KeyEvent key && key.getKeyCode() == KeyEvent.VK_ESCAPE;
        return isForIt && window instanceof Dialog && OPEN.equals(window.getName());
    }

    private static Optional<Window> windowOf(AWTEvent event) {
        return event.getSource() instanceof Component component
                ? Stream.<Component>iterate(component, part -> part != null, Component::getParent)
                        .filter(Window.class::isInstance)
                        .map(Window.class::cast)
                        .findFirst()
                : Optional.empty();
    }

    /** From now on keys and clicks wait. */
    void hold() {
        awaited++;
    }

    /** Gives the answer; what waited comes after it, unless the answer asked or told something itself. */
    void release(Runnable answer) {
        awaited--;
        boolean before = answering;
        answering = true;
        asked = false;
        boolean isGiven = false;
        try {
            answer.run();
            isGiven = true;
        } finally {
            answering = before;
            if (asked || !isGiven) {
                held.forEach(lost::drop);
                held.clear();
            }
            if (!held.isEmpty()) {
                replayLater();
            }
        }
    }

    /** Lets the first of those that waited come, and asks for the next: a dialog that it opens takes those behind it. */
    private void replay() {
        if (awaited > 0 || settling > 0 || held.isEmpty()) {
            // Those that are left wait for the next answer, or for what the last key set going.
            replaying = false;
            return;
        }
        if (held.peek() instanceof KeyEvent && isKeyboardBetween()) {
            looksForFocus++;
            Timer again = new Timer(LOOK_AGAIN_MILLISECONDS, event -> replay());
            again.setRepeats(false);
            again.start();
            return;
        }
        AWTEvent next = held.remove();
        EventQueue.invokeLater(this::replay);
        pass(next);
    }

    /** Tells from now on of what was typed and went nowhere, in the letters typed; blank once something arrives again. */
    public void onLost(Consumer<String> told) {
        lost.onLost(told);
    }
}
