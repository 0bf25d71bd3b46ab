package porebench.desk.frame;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import porebench.record.book.LabBook;

/** Lets calls of a lab book wait, as a slow disk does, until the test opens it. */
final class Gate {
    private static final long MOST_SECONDS = 60;

    private Set<String> shut = Set.of();
    private int waiting;
    private int over;

    /** From now on some calls wait. */
    synchronized void shut(String... calls) {
        shut = Set.of(calls);
    }

    /** Lets all go on. */
    synchronized void open() {
        shut = Set.of();
        notifyAll();
    }

    /** Returns whether some call waits. */
    synchronized boolean isWaitedAt() {
        return waiting > 0;
    }

    /** Returns how many calls came to their end. */
    synchronized int over() {
        return over;
    }

    private synchronized void end() {
        over++;
    }

    private synchronized void pass(String call) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        waiting++;
        while (shut.contains(call) && System.nanoTime() < end) {
            TimeUnit.NANOSECONDS.timedWait(this, end - System.nanoTime());
        }
        waiting--;
    }

    /** Returns a lab book whose calls pass the gate. */
    LabBook before(LabBook book) {
        return (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("equals")) {
                        return proxy == arguments[0];
                    }
                    pass(method.getName());
                    try {
                        return method.invoke(book, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    } finally {
                        end();
                    }
                });
    }
}
