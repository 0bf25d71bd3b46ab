package porebench.bench.waits;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.lang.reflect.InvocationTargetException;
import java.util.Locale;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.RepaintManager;

/**
 * Says when a window of this process can be used: it is on the screen, a list or table in it has rows, everything in it is
 * painted and nothing waits for the event thread.
 *
 * <p>Prints the milliseconds since {@code waits.launched} (milliseconds since 1970, taken before the process was started)
 * and for how long the event thread was held at most, then ends the process.
 */
final class Usable {
    private static final int LOOK_EVERY_MILLISECONDS = 4;

    private Usable() {}

    /** Watches in the background. */
    static void watch() {
        long launched = Long.getLong("waits.launched", System.currentTimeMillis());
        Thread watcher = new Thread(
                () -> {
                    long longest = 0;
                    boolean isUsable = false;
                    while (!isUsable) {
                        long before = System.nanoTime();
                        isUsable = Window.getWindows().length > 0 && onEventThread();
                        longest = Math.max(longest, System.nanoTime() - before);
                        sleep();
                    }
                    System.out.printf(
                            Locale.ROOT, "%d %d%n", System.currentTimeMillis() - launched, longest / 1_000_000);
                    System.out.flush();
                    end();
                },
                "watcher");
        watcher.setDaemon(true);
        watcher.start();
    }

    /** An archive of classes is written at an orderly end only. */
    private static void end() {
        if (Boolean.getBoolean("waits.orderly")) {
            System.exit(0);
        }
        Runtime.getRuntime().halt(0);
    }

    private static void sleep() {
        try {
            Thread.sleep(LOOK_EVERY_MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean onEventThread() {
        boolean[] found = {false};
        try {
            EventQueue.invokeAndWait(() -> found[0] = isUsable());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException failure) {
            throw new IllegalStateException(failure);
        }
        return found[0];
    }

    private static boolean isUsable() {
        for (Window window : Window.getWindows()) {
            if (window.isShowing() && hasRows(window) && EventQueue.getCurrentEvent() != null && isQueueEmpty()) {
                RepaintManager.currentManager(window).paintDirtyRegions();
                Toolkit.getDefaultToolkit().sync();
                return true;
            }
        }
        return false;
    }

    private static boolean isQueueEmpty() {
        return Toolkit.getDefaultToolkit().getSystemEventQueue().peekEvent() == null;
    }

    private static boolean hasRows(Container parent) {
        for (Component child : parent.getComponents()) {
            boolean has = child instanceof JTable table && table.getRowCount() > 0
                    || child instanceof JList<?> list && list.getModel().getSize() > 0;
            if (child.isShowing() && (has || child instanceof Container inside && hasRows(inside))) {
                return true;
            }
        }
        return false;
    }
}
