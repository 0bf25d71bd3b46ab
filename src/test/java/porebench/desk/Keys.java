package porebench.desk;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.Window;
import java.util.concurrent.Callable;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Keys struck on the display, one stroke a call.
 *
 * <p>Nothing is waited for while a key is down: a display repeats a key that is held, and a busy event thread would turn
 * one stroke into many.
 */
public final class Keys {
    private static final int MOST_ROUNDS = 30;

    private final Robot robot;

    /** Reaches for the display. */
    public Keys() throws AWTException {
        robot = new Robot();
        robot.setAutoWaitForIdle(false);
    }

    /** Strikes keys together, the last one first let go. What they cause is to be waited for: see {@link EventThread#comes}. */
    public void strike(int... keys) {
        for (int key : keys) {
            robot.keyPress(key);
        }
        for (int i = keys.length - 1; i >= 0; i--) {
            robot.keyRelease(keys[i]);
        }
    }

    /**
     * Gives the keyboard to a part of a window. A display without a window manager hands it over only when asked, and not always at
     * once; a request made a moment ago may still be on its way when another one was heard.
     */
    public static void bringTo(Callable<? extends Component> part) throws Exception {
        boolean isThere = false;
        for (int round = 0; round < MOST_ROUNDS && !isThere; round++) {
            EventThread.call(() -> {
                Component one = part.call();
                Window window = one instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(one);
                window.toFront();
                window.requestFocus();
                one.requestFocusInWindow();
                return true;
            });
            isThere = EventThread.comesWithin(1, () -> part.call().isFocusOwner()) && stays(part);
        }
        if (!isThere) {
            throw new AssertionError("the keyboard did not come to " + EventThread.call(part::call));
        }
    }

    /** Returns whether a part has the keyboard still when all that the display was asked for has come. */
    private static boolean stays(Callable<? extends Component> part) throws Exception {
        new Robot().waitForIdle();
        return EventThread.call(() -> part.call().isFocusOwner());
    }

    /** Strikes a key and waits until what it causes has come about. */
    public void strikeUntil(Callable<Boolean> effect, String what, int key) throws Exception {
        strike(key);
        robot.waitForIdle();
        if (!EventThread.comes(effect)) {
            throw new AssertionError(what + " did not come; the caret is in "
                    + EventThread.call(() -> String.valueOf(KeyboardFocusManager.getCurrentKeyboardFocusManager()
                            .getFocusOwner())));
        }
    }

    /** Returns whether a cell of a table is being typed into and shows a text. */
    public static boolean isTyping(JTable table, String text) {
        return table.getEditorComponent() instanceof JTextComponent editor
                && editor.getText().equals(text);
    }
}
