package porebench.desk.frame;

import java.awt.AWTEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import porebench.desk.frame.book.GuardedBook;

/**
 * How long single events hold the event thread.
 *
 * <p>What is measured of an event is the processor time that the event thread itself used while it was dispatched, and the time it
 * stood before a monitor that another thread had; not the time of the day, so that a loaded machine makes no event longer. What
 * events in between used, as under a dialog, is theirs. Loading a class and compiling on the event thread at first use count: a
 * test goes through everything once before it measures. Waiting for a disk or in {@code wait} and {@code park} is not seen; that the
 * event thread does not call the lab book, {@link GuardedBook} sees.
 */
final class EventTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final List<Held> held = new ArrayList<>();
    private String during = "";
    private boolean measuring;
    private long inBetween;

    /**
     * An event that held the event thread.
     *
     * @param time how long
     * @param during what the person did
     * @param event what it was
     */
    record Held(Duration time, String during, String event) {
        boolean isPainting() {
            return event.contains("javax.swing.RepaintManager");
        }
    }

    /** Begins to measure; what was measured before is forgotten. On the event thread. */
    void begin() {
        THREADS.setThreadContentionMonitoringEnabled(true);
        held.clear();
        measuring = true;
    }

    /** Says what the person does now. On the event thread. */
    void during(String doing) {
        during = doing;
    }

    /**
     * Returns the events that held the event thread longer than they may. On the event thread.
     *
     * @param most how long an event may hold it
     * @param mostOfPainting how long an event may hold it that lays out and paints what changed
     */
    List<Held> longer(Duration most, Duration mostOfPainting) {
        return held.stream()
                .filter(one -> one.time().compareTo(one.isPainting() ? mostOfPainting : most) > 0)
                .toList();
    }

    /** Returns how many events were measured. On the event thread. */
    int count() {
        return held.size();
    }

    /** Dispatches an event and notes how long it took. On the event thread. */
    void dispatch(AWTEvent event, Runnable dispatching) {
        if (!measuring) {
            dispatching.run();
            return;
        }
        long before = used();
        long outside = inBetween;
        inBetween = 0;
        try {
            dispatching.run();
        } finally {
            long all = used() - before;
            held.add(new Held(Duration.ofNanos(all - inBetween), during, String.valueOf(event)));
            inBetween = outside + all;
        }
    }

    /** Returns what the event thread has used until now, in nanoseconds. */
    private static long used() {
        ThreadInfo own = THREADS.getThreadInfo(Thread.currentThread().getId());
        return THREADS.getCurrentThreadCpuTime()
                + Duration.ofMillis(own.getBlockedTime()).toNanos();
    }
}
