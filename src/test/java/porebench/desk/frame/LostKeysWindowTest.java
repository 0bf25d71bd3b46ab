package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.record.id.MixId;

/** What is typed arrives in a field or is told; the keyboard is where a page that was chosen wants it. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class LostKeysWindowTest {
    @TempDir
    private Path folder;

    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, new ScriptedAsker());
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("M. Sorrel"));
    }

    @AfterEach
    void close() throws Exception {
        started.close();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.content(), type, name);
    }

    private String said() {
        return named(JLabel.class, "strip.lost").getText();
    }

    private void focus(JComponent part) throws Exception {
        assertThat(EventThread.comes(() -> {
                    window.frame().toFront();
                    part.requestFocus();
                    return part.isFocusOwner();
                }))
                .isTrue();
    }

    private String focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null || owner.getName() == null ? "" : owner.getName();
    }

    @Test
    void digitsThatHaveNoFieldAreToldUntilAWhileAfterSomethingArrives() throws Exception {
        focus(named(AbstractButton.class, "newMix"));
        keys.strike(KeyEvent.VK_5);
        keys.strike(KeyEvent.VK_7);
        assertThat(EventThread.comes(() -> said().contains("57"))).isTrue();
        assertThat(EventThread.call(this::said)).isEqualTo("“57” was not typed anywhere: click a field first");
        focus(named(JTextField.class, "findMix"));
        keys.strike(KeyEvent.VK_1);
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "findMix").getText().equals("1")))
                .isTrue();
        assertThat(EventThread.call(this::said)).as("for who looks up only now").contains("57");
        assertThat(EventThread.comes(() -> said().isEmpty())).isTrue();
    }

    /** What the bench took is not told as lost behind it, and the keyboard is back where it was once the bench is left. */
    @Test
    void whatIsTypedOnTheBenchIsNotToldAsLost() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        EventThread.run(() -> window.turnTo(window.pages().named("trials").orElseThrow()));
        focus(named(JTextField.class, "soak"));
        keys.strike(KeyEvent.VK_F11);
        assertThat(EventThread.comes(() -> focused().equals("bench"))).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        for (int key : new int[] {KeyEvent.VK_NUMPAD2, KeyEvent.VK_NUMPAD2}) {
            keys.strike(key);
        }
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> focused().equals("soak"))).isTrue();
        assertThat(EventThread.call(this::said)).isEmpty();
        keys.strike(KeyEvent.VK_1);
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "soak").getText().equals("1")))
                .isTrue();
    }

    /** Keys that follow Enter at once are dispatched only when the next field has the keyboard; they arrive all the same. */
    @Test
    void whatIsTypedRightAfterEnterIsNotToldAsLost() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        EventThread.run(() -> window.turnTo(window.pages().named("trials").orElseThrow()));
        focus(named(JTextField.class, "fine"));
        for (int key : new int[] {KeyEvent.VK_5, KeyEvent.VK_ENTER, KeyEvent.VK_7, KeyEvent.VK_8}) {
            keys.strike(key);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(25));
        }
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "coarse").getText().equals("78")))
                .isTrue();
        assertThat(EventThread.call(this::said)).isEmpty();
    }

    @Test
    void aPageThatIsChosenTakesTheKeyboard() throws Exception {
        focus(named(AbstractButton.class, "step.trials"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> focused().equals("trials")))
                .as("a factor was issued from these trials, so that none can be added")
                .isTrue();
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        assertThat(EventThread.comes(() -> named(JTextField.class, "fine").isEnabled()))
                .isTrue();
        focus(named(AbstractButton.class, "step.trials"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> focused().equals("fine"))).isTrue();
        focus(named(AbstractButton.class, "register.sources"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> focused().equals("source.table"))).isTrue();
        focus(named(AbstractButton.class, "register.meters"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> focused().equals("meter.table")
                        && named(AbstractButton.class, "meter.open").isEnabled()))
                .as("the register, read")
                .isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> focused().equals("calibrations")))
                .as("the page of a meter")
                .isTrue();
        assertThat(EventThread.call(this::said)).isEmpty();
    }

    /** Saving switches the button off that was pressed; the keyboard must not end up on the button for a new mix. */
    @Test
    void aButtonThatIsSwitchedOffHandsTheKeyboardToThePage() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        EventThread.run(() -> named(JTextField.class, "ledge").setText("another ledge"));
        AbstractButton drop = named(AbstractButton.class, "source.drop");
        focus(drop);
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> !drop.isEnabled() && !focused().equals("source.drop")))
                .isTrue();
        assertThat(EventThread.call(this::focused)).isEqualTo("source.table");
    }
}
