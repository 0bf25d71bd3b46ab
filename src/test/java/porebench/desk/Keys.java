package porebench.desk;

import java.awt.AWTException;
import java.awt.Robot;

/**
 * Keys struck on the display, one stroke a call.
 *
 * <p>Nothing is waited for while a key is down: a display repeats a key that is held, and a busy event thread would turn
 * one stroke into many.
 */
public final class Keys {
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
}
