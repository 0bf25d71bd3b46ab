package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import javax.swing.JMenuBar;
import javax.swing.JRootPane;
import porebench.desk.EventThread;
import porebench.desk.Keys;

/** Chooses in the menu bar by real keys: F10, the arrow, and the underlined letter. */
final class MenuKeys {
    private MenuKeys() {}

    /**
     * Chooses an entry.
     *
     * @param place which menu, counted from 0 on the left
     * @param letter the key of the entry's letter
     */
    static void choose(WorkbenchFrame window, int place, int letter) throws Exception {
        open(window, place);
        new Keys().strike(letter);
        JMenuBar bar = window.frame().getJMenuBar();
        assertThat(EventThread.comes(() -> !bar.getMenu(place).isPopupMenuVisible()))
                .as("the letter chose something")
                .isTrue();
    }

    /** Opens a menu, counted from 0 on the left, the first one by its key, and waits until letters come to it. */
    static void open(WorkbenchFrame window, int place) throws Exception {
        JMenuBar bar = window.frame().getJMenuBar();
        if (place == 0) {
            new Keys().strike(KeyEvent.VK_F10);
        } else {
            EventThread.run(() -> bar.getMenu(place).doClick(0));
        }
        // Open is not yet at the keys: a moment later the menu has the keyboard, which it takes for its whole window.
        assertThat(EventThread.comes(() -> bar.getMenu(place).isPopupMenuVisible()
                        && KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JRootPane))
                .as("menu " + place)
                .isTrue();
    }
}
