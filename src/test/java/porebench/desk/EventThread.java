package porebench.desk;

import java.awt.EventQueue;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs parts of a window test on the event thread, and fails a test during which an exception went astray there. */
public final class EventThread implements BeforeEachCallback, AfterEachCallback {
    private final List<Throwable> astray = new CopyOnWriteArrayList<>();
    private Thread.UncaughtExceptionHandler before = (thread, failure) -> {};

    /** Does something on the event thread and waits until it and everything it caused there is over. */
    public static <T> T call(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        EventQueue.invokeAndWait(task);
        settle();
        return task.get();
    }

    /** Does something on the event thread, as {@link #call}. */
    public static void run(Runnable work) throws Exception {
        call(() -> {
            work.run();
            return true;
        });
    }

    /** Waits until the events that are queued now, and those which they queue, are handled. */
    public static void settle() throws Exception {
        for (int round = 0; round < 3; round++) {
            EventQueue.invokeAndWait(() -> {});
        }
    }

    /** Asks on the event thread until something is so, and returns whether it came about within half a minute. */
    public static boolean comes(Callable<Boolean> what) throws Exception {
        return comesWithin(30, what);
    }

    /** Asks on the event thread until something is so, and returns whether it came about within some seconds. */
    public static boolean comesWithin(int seconds, Callable<Boolean> what) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        while (!call(what)) {
            if (System.nanoTime() > end) {
                return false;
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(1));
        }
        return true;
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        before = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> astray.add(failure));
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        settle();
        Thread.setDefaultUncaughtExceptionHandler(before);
        if (!astray.isEmpty()) {
            AssertionError failure = new AssertionError("exceptions on the event thread: " + astray);
            astray.forEach(failure::addSuppressed);
            astray.clear();
            throw failure;
        }
    }
}
