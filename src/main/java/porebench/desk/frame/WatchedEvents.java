package porebench.desk.frame;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.util.function.Supplier;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.form.HeldInput;
import porebench.method.Texts;

/** Tells the person of a fault of the program instead of letting it vanish on the console. */
final class WatchedEvents extends HeldInput {
    private final Asker asker;
    private final Texts texts;
    private final Supplier<JComponent> over;
    private boolean telling;

    WatchedEvents(Asker asker, Texts texts, Supplier<JComponent> over) {
        this.asker = asker;
        this.texts = texts;
        this.over = over;
    }

    /** Watches no longer: the queue before it goes on. */
    void end() {
        pop();
    }

    /** Tells that what is typed and not saved cannot be kept; from any thread. */
    void tellOfDrafts(Exception failure) {
        EventQueue.invokeLater(() -> asker.failure(over.get(), texts.get("draft.keeping"), failure));
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        try {
            super.dispatchEvent(event);
        } catch (RuntimeException fault) {
            tell(fault);
        } catch (LinkageError | StackOverflowError | OutOfMemoryError fault) {
            // The window can go on where it stands; that it could not do this one thing is told like any other fault.
            tell(new IllegalStateException(fault));
        }
    }

    private void tell(RuntimeException fault) {
        if (!telling) {
            telling = true;
            try {
                asker.failure(over.get(), texts.get("frame.fault"), fault);
            } finally {
                telling = false;
            }
        }
    }
}
