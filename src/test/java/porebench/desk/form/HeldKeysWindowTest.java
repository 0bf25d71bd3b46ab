package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRootPane;
import javax.swing.JTextField;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
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
    private final JTextField field = new JTextField(20);
    private final JTextField next = new JTextField(20);
    private PushedInput queue;
    private JFrame frame;
    private Tasks tasks;

    @BeforeEach
    void show() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            queue = PushedInput.push();
            frame = new JFrame("bench");
            frame.add(field);
            frame.add(next, BorderLayout.SOUTH);
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

    /** Java holds a key back behind a focus on its way only where the key is newer than every event before it. */
    @Test
    void aNumberBehindEnterComesIntoTheNextFieldAlsoOnABusyMachine() throws Exception {
        EventThread.run(() -> EnterOrder.bind(field, next::requestFocusInWindow));
        long struck = System.currentTimeMillis();
        queue.postEvent(new MouseEvent(field, MouseEvent.MOUSE_MOVED, struck + 60_000, 0, 1, 1, 0, false));
        strike(struck, KeyEvent.VK_1, '1');
        strike(struck, KeyEvent.VK_ENTER, '\n');
        strike(struck, KeyEvent.VK_5, '5');
        assertThat(EventThread.comes(() -> (field.getText() + next.getText()).length() == 2))
                .isTrue();
        assertThat(EventThread.call(() -> field.getText() + " " + next.getText()))
                .isEqualTo("1 5");
    }

    /** The letter that chooses in a menu is not typed into the field that has the keyboard once the menu is closed. */
    @Test
    void theLetterThatChoosesInAMenuIsNotTypedIntoTheFieldBehindIt() throws Exception {
        JMenuItem item = new JMenuItem("Cut", KeyEvent.VK_T);
        EventThread.run(() -> {
            JMenuBar bar = new JMenuBar();
            JMenu menu = new JMenu("Edit");
            menu.add(item);
            bar.add(menu);
            frame.setJMenuBar(bar);
            frame.validate();
            item.addActionListener(event -> field.setText("cut"));
            menu.doClick(0);
            MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {bar, menu, menu.getPopupMenu()});
        });
        assertThat(EventThread.comes(() -> item.isShowing()
                        && KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JRootPane))
                .isTrue();
        long struck = System.currentTimeMillis();
        queue.postEvent(new KeyEvent(frame.getRootPane(), KeyEvent.KEY_PRESSED, struck, 0, KeyEvent.VK_T, 't'));
        assertThat(EventThread.comes(() -> field.getText().equals("cut") && !item.isShowing() && field.isFocusOwner()))
                .isTrue();
        // On a busy machine the letter of the same stroke comes only now.
        queue.postEvent(new KeyEvent(field, KeyEvent.KEY_TYPED, struck, 0, KeyEvent.VK_UNDEFINED, 't'));
        strike(struck + 50, KeyEvent.VK_5, '5');
        assertThat(EventThread.comes(() -> field.getText().endsWith("5"))).isTrue();
        assertThat(EventThread.call(() -> field.getText())).isEqualTo("cut5");
    }

    private void strike(long when, int key, char letter) {
        queue.postEvent(new KeyEvent(field, KeyEvent.KEY_PRESSED, when, 0, key, letter));
        queue.postEvent(new KeyEvent(field, KeyEvent.KEY_TYPED, when, 0, KeyEvent.VK_UNDEFINED, letter));
        queue.postEvent(new KeyEvent(field, KeyEvent.KEY_RELEASED, when, 0, key, letter));
    }
}
