package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.BoxLayout;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;

/** A reason given before is chosen by the keyboard alone; none is chosen by itself. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class ReasonMenuWindowTest {
    private final List<String> reasons = new ArrayList<>(List.of("leak at the gasket", "foam\non the water"));
    private Keys keys;
    private JFrame frame;
    private JTextField line;
    private JTextField below;
    private AbstractButton button;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        EventThread.run(() -> {
            frame = new JFrame();
            frame.setLayout(new BoxLayout(frame.getContentPane(), BoxLayout.Y_AXIS));
            line = new JTextField(20);
            below = new JTextField(20);
            ReasonMenu.in(line, () -> reasons, Locale.ENGLISH);
            button = ReasonMenu.below(below, () -> reasons, Locale.ENGLISH);
            frame.add(line);
            frame.add(below);
            frame.add(button);
            frame.setSize(500, 300);
            frame.setVisible(true);
        });
        Keys.bringTo(() -> line);
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> MenuSelectionManager.defaultManager().clearSelectedPath());
        EventThread.run(frame::dispose);
    }

    private static JPopupMenu menu() {
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        return path.length > 0 && path[0] instanceof JPopupMenu menu ? menu : null;
    }

    private void openBy(int... stroke) throws Exception {
        keys.strike(stroke);
        assertThat(EventThread.comes(() -> menu() != null && menu().isShowing()))
                .isTrue();
    }

    @Test
    void theSecondOneIsChosenByArrowsAndEnter() throws Exception {
        openBy(KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
        assertThat(line.getText()).isEmpty();
        keys.strike(KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> line.getText().startsWith("foam"))).isTrue();
        assertThat(EventThread.comes(line::isFocusOwner)).isTrue();
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(() -> line.getText().endsWith("waterx"))).isTrue();
    }

    @Test
    void escapeChoosesNothing() throws Exception {
        keys.strike(KeyEvent.VK_A);
        openBy(KeyEvent.VK_F4);
        keys.strike(KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> menu() == null)).isTrue();
        assertThat(EventThread.call(() -> line.getText())).isEqualTo("a");
    }

    @Test
    void theyStandInTheirOrderEachOnOneLine() throws Exception {
        Keys.bringTo(() -> button);
        openBy(KeyEvent.VK_SPACE);
        assertThat(EventThread.call(() -> menu().getSubElements())).hasSize(2);
        assertThat(EventThread.call(() -> ((JMenuItem) menu().getSubElements()[0]).getText()))
                .isEqualTo("leak at the gasket");
        assertThat(EventThread.call(() -> ((JMenuItem) menu().getSubElements()[1]).getText()))
                .isEqualTo("foam on the water");
        assertThat(below.getText()).isEmpty();
    }

    @Test
    void whereNoneWasGivenItIsSaid() throws Exception {
        reasons.clear();
        openBy(KeyEvent.VK_F4);
        JMenuItem only = EventThread.call(() -> (JMenuItem) menu().getSubElements()[0]);
        assertThat(only.getText()).isEqualTo("None was given before");
        assertThat(only.isEnabled()).isFalse();
    }
}
