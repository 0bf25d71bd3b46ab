package porebench.desk.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;

/** The correction sample in a real window, no larger than the smallest screen leaves it, by the keyboard alone. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class SampleWindowTest {
    private final BenchBook bench = new BenchBook();
    private JFrame frame;
    private SamplePage page;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            page = new SamplePage(bench.desk);
            frame = new JFrame();
            frame.setContentPane(page.component());
            frame.setSize(720, 510);
            frame.setVisible(true);
        });
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
    }

    @Test
    void withoutAMeterTheSettingsAreOpenForWithThemEverythingBegins() throws Exception {
        assertThat(((JToggleButton) named("sample.settings")).isSelected()).isTrue();
        assertThat(named("meter").isShowing()).isTrue();
        assertThat(named("masses").isVisible()).isFalse();
    }

    @Test
    void theMassesAndTheStartingWaterAreLargestAndOnTheFirstScreen() throws Exception {
        chooseTheBowl();
        EventThread.run(() -> ((JToggleButton) named("sample.settings")).doClick());
        Font usual = new JTextField().getFont();
        for (String name : new String[] {"mass.Sand", "mass.Stone", "water.first"}) {
            JLabel number = (JLabel) named(name);
            assertThat(number.getFont().getSize()).as(name).isGreaterThan(usual.getSize() * 2);
            Point end = SwingUtilities.convertPoint(number, number.getWidth(), number.getHeight(), frame.getRootPane());
            assertThat(end.y).as(name).isLessThan(frame.getRootPane().getHeight());
            assertThat(end.x).as(name).isLessThan(frame.getRootPane().getWidth());
        }
        assertThat(((JLabel) named("mass.Sand")).getText()).isEqualTo("4900");
        assertThat(((JLabel) named("mass.Stone")).getText()).isEqualTo("7350");
        assertThat(((JLabel) named("water.first")).getText()).isEqualTo("2333");
    }

    @Test
    void theSettingsSayWhatTheyAreAndOpenByTheirKey() throws Exception {
        chooseTheBowl();
        EventThread.run(() -> ((JToggleButton) named("sample.settings")).doClick());
        assertThat(named("spare").isShowing()).isFalse();
        assertThat(named("sample.settings").getAccessibleContext().getAccessibleName())
                .isEqualTo("Settings: bowl of 7 L, Type B; trials 3, spare 10 %; masses in g; moisture as designed");
        takeTheKeyboard();
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_G);
        assertThat(EventThread.comes(() -> named("spare").isShowing())).isTrue();
        assertThat(EventThread.comes(() -> focused().equals("sample.settings"))).isTrue();
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(() -> focused().equals("meter"))).isTrue();
    }

    @Test
    void whatIsWrongInTheSettingsOpensThem() throws Exception {
        chooseTheBowl();
        JToggleButton opener = (JToggleButton) named("sample.settings");
        EventThread.run(opener::doClick);
        EventThread.run(() -> ((JTextField) named("trials")).setText("none"));
        assertThat(opener.isSelected()).isTrue();
        assertThat(named("trials.message").isShowing()).isTrue();
    }

    @Test
    void nothingIsWiderThanThePage() throws Exception {
        chooseTheBowl();
        EventThread.settle();
        for (String name : new String[] {"masses", "sample.caution", "sample.settings"}) {
            Component part = named(name);
            int end = SwingUtilities.convertPoint(part, part.getWidth(), 0, frame.getRootPane()).x;
            assertThat(end).as(name).isLessThanOrEqualTo(frame.getRootPane().getWidth());
        }
    }

    private void chooseTheBowl() throws Exception {
        EventThread.run(() -> ((JTextField) named("bowl")).setText("7"));
        assertThat(EventThread.comes(() -> named("masses").isShowing())).isTrue();
    }

    private void takeTheKeyboard() throws Exception {
        EventThread.run(() -> {
            frame.toFront();
            ((JComponent) named("sample.settings")).requestFocus();
        });
        assertThat(EventThread.comes(() -> !focused().isEmpty())).isTrue();
    }

    private static String focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null || owner.getName() == null ? "" : owner.getName();
    }

    private Component named(String name) {
        return find(frame.getContentPane(), name);
    }

    private static Component find(Container around, String name) {
        for (Component child : around.getComponents()) {
            if (name.equals(child.getName())) {
                return child;
            }
            Component found = child instanceof Container inner ? find(inner, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
