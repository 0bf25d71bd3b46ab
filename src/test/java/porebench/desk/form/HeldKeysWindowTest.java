package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import javax.swing.JFrame;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;

/** Keys struck while something awaited takes so long that a dialog stands over the window. */
@NeedsDisplay
class HeldKeysWindowTest {
    /** The queue of this test's events, until it is over. */
    private static final class Queue extends HeldInput {
        private void leave() {
            pop();
        }
    }

    private final Queue queue = new Queue();
    private final JTextField field = new JTextField(20);
    private JFrame frame;
    private Tasks tasks;

    @BeforeEach
    void show() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
            frame = new JFrame("bench");
            frame.add(field);
            frame.pack();
            frame.setVisible(true);
            tasks = Tasks.inBackground(() -> frame.getRootPane(), Locale.ENGLISH, title -> title, queue);
        });
        assertThat(EventThread.comes(() -> {
                    frame.toFront();
                    field.requestFocus();
                    return field.isFocusOwner();
                }))
                .isTrue();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
        EventThread.run(queue::leave);
    }

    @Test
    void keysStruckUnderTheDialogComeIntoTheFieldThatHadTheCaret() throws Exception {
        CountDownLatch mayEnd = new CountDownLatch(1);
        EventQueue.invokeLater(() -> tasks.await(
                "Selecting",
                progress -> {
                    mayEnd.await();
                    return true;
                },
                done -> {},
                failure -> {
                    throw new IllegalStateException(failure);
                }));
        assertThat(EventThread.comes(() -> !frame.isActive() && frame.getOwnedWindows()[0].isShowing()))
                .isTrue();
        Keys keys = new Keys();
        for (int key : new int[] {KeyEvent.VK_Q, KeyEvent.VK_U, KeyEvent.VK_A, KeyEvent.VK_R, KeyEvent.VK_R}) {
            keys.strike(key);
        }
        assertThat(EventThread.call(() -> field.getText().isEmpty())).isTrue();
        mayEnd.countDown();
        assertThat(EventThread.comes(() -> field.getText().equals("quarr"))).isTrue();
        assertThat(EventThread.call(() -> frame.getOwnedWindows()[0].isShowing()))
                .isFalse();
    }
}
