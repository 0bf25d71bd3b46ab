package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;

/** A day is chosen by the keyboard alone, and typing goes on as if there were no month. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class DayPickerWindowTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 29);

    private Keys keys;
    private JFrame frame;
    private JTextField day;
    private JTextField moment;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        EventThread.run(() -> {
            frame = new JFrame();
            frame.setLayout(new BoxLayout(frame.getContentPane(), BoxLayout.Y_AXIS));
            day = new JTextField(20);
            moment = new JTextField(20);
            DayPicker.onDay(day, () -> TODAY, Locale.GERMANY);
            DayPicker.onMoment(moment, () -> TODAY, Locale.GERMANY);
            frame.add(day);
            frame.add(moment);
            frame.setSize(500, 500);
            frame.setVisible(true);
        });
        Keys.bringTo(() -> day);
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(frame::dispose);
    }

    private boolean isOpen(JTextField field) throws Exception {
        return EventThread.call(() -> DayPicker.of(field).orElseThrow().isOpen());
    }

    private void openBy(JTextField field, int... stroke) throws Exception {
        keys.strike(stroke);
        assertThat(EventThread.comes(() -> DayPicker.of(field).orElseThrow().isOpen()))
                .isTrue();
    }

    private void assertSays(JTextField field, String text) throws Exception {
        assertThat(EventThread.comes(() -> field.getText().equals(text)))
                .as(field.getText())
                .isTrue();
    }

    @Test
    void enterTakesTheDayThatTheArrowKeysMarked() throws Exception {
        openBy(day, KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
        assertSays(day, "");
        keys.strike(KeyEvent.VK_RIGHT);
        keys.strike(KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_PAGE_DOWN);
        keys.strike(KeyEvent.VK_UP);
        keys.strike(KeyEvent.VK_LEFT);
        assertSays(day, "");
        keys.strike(KeyEvent.VK_ENTER);
        // 29 November and a day, a week and a month are 7 January; a week and a day before that it is 30 December.
        assertSays(day, "2026-12-30");
        assertThat(isOpen(day)).isFalse();
        assertThat(EventThread.call(day::isFocusOwner)).isTrue();
    }

    @Test
    void escapeLeavesWhatIsTyped() throws Exception {
        EventThread.run(() -> day.setText("2026-03-01"));
        openBy(day, KeyEvent.VK_F4);
        keys.strike(KeyEvent.VK_PAGE_UP);
        keys.strike(KeyEvent.VK_HOME);
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !DayPicker.of(day).orElseThrow().isOpen()))
                .isTrue();
        assertSays(day, "2026-03-01");
    }

    /** Sunday 1 March 2026 ends a German week, which begins on 23 February. */
    @Test
    void theMonthBeginsWithWhatIsTyped() throws Exception {
        EventThread.run(() -> day.setText("2026-03-01"));
        openBy(day, KeyEvent.VK_F4);
        keys.strike(KeyEvent.VK_HOME);
        keys.strike(KeyEvent.VK_ENTER);
        assertSays(day, "2026-02-23");
    }

    @Test
    void whatIsTypedWhileTheMonthIsThereClosesItAndIsTyped() throws Exception {
        openBy(day, KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_2);
        assertSays(day, "2");
        assertThat(isOpen(day)).isFalse();
        keys.strike(KeyEvent.VK_0);
        keys.strike(KeyEvent.VK_LEFT);
        keys.strike(KeyEvent.VK_1);
        assertSays(day, "210");
    }

    /** Without Alt the arrow keys and Enter are what they were: Down opens nothing. */
    @Test
    void noKeyOfTypingOpensIt() throws Exception {
        for (int key : new int[] {
            KeyEvent.VK_DOWN, KeyEvent.VK_UP, KeyEvent.VK_ENTER, KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_SPACE, KeyEvent.VK_7
        }) {
            keys.strike(key);
            assertThat(isOpen(day)).as(KeyEvent.getKeyText(key)).isFalse();
        }
    }

    @Test
    void tabPassesByTheButtonAndTheClosedMonth() throws Exception {
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(moment::isFocusOwner)).isTrue();
    }

    @Test
    void theTimeOfAMomentStays() throws Exception {
        Keys.bringTo(() -> moment);
        EventThread.run(() -> moment.setText("2026-11-27 14:05"));
        openBy(moment, KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_RIGHT);
        keys.strike(KeyEvent.VK_ENTER);
        assertSays(moment, "2026-11-28 14:05");
    }

    @Test
    void afterTheDayOfAMomentItsTimeIsTyped() throws Exception {
        Keys.bringTo(() -> moment);
        openBy(moment, KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_ENTER);
        assertSays(moment, "2026-11-29 ");
        keys.strike(KeyEvent.VK_8);
        assertSays(moment, "2026-11-29 8");
    }

    /** Finds what hangs from a field: some looks give it a window of its own. */
    private static Component onView(String name) {
        List<AssertionError> failures = new ArrayList<>();
        for (Window window : Window.getWindows()) {
            if (window.isShowing()) {
                try {
                    return Named.in(window, Component.class, name);
                } catch (AssertionError notThere) {
                    failures.add(notThere);
                }
            }
        }
        throw failures.get(0);
    }

    @Test
    void theMouseTakesADayToo() throws Exception {
        EventThread.run(() -> ((JButton) day.getClientProperty("JTextField.trailingComponent")).doClick());
        assertThat(EventThread.comes(() -> DayPicker.of(day).orElseThrow().isOpen()))
                .isTrue();
        EventThread.run(() -> {
            Component third = onView("day.2026-11-03");
            third.dispatchEvent(new java.awt.event.MouseEvent(
                    third, java.awt.event.MouseEvent.MOUSE_RELEASED, 0, 0, 2, 2, 1, false, 1));
        });
        assertSays(day, "2026-11-03");
    }

    @Test
    void aFieldThatCannotBeTypedInHasNoMonth() throws Exception {
        EventThread.run(() -> day.setEditable(false));
        keys.strike(KeyEvent.VK_F4);
        assertThat(isOpen(day)).isFalse();
    }
}
