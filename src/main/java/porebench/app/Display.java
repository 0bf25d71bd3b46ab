package porebench.app;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;

/** Whether this machine can show a window. */
final class Display {
    private Display() {}

    /** Asks the machine: a display that is named but does not answer counts as none. */
    static boolean isThere() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError | NoClassDefFoundError | UnsatisfiedLinkError none) {
            return false;
        }
    }
}
