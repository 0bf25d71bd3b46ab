package porebench.desk.form;

import java.awt.Toolkit;

/** The window's queue of events in a test, until it is left. */
public final class PushedInput extends HeldInput {
    private PushedInput() {}

    /** Lets all events come through it from now on; on the event thread. */
    public static PushedInput push() {
        PushedInput queue = new PushedInput();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
        return queue;
    }

    /** Gives way to the queue before it. */
    public void leave() {
        pop();
    }
}
