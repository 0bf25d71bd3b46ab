package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.record.Production;
import porebench.record.id.MixId;

/** Production typed in by the keyboard alone, in the real window on the demo laboratory. */
@NeedsDisplay
class ProductionWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDemo() throws Exception {
        keys = new Keys();
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(demo::open);
        EventThread.run(() -> window.desk().setPerson("M. Sorrel"));
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        EventThread.run(() -> window.turnTo(window.pages().named("production").orElseThrow()));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> window.current().dropDraft());
        EventThread.run(window::close);
        assertThat(demo.asker.failures).isEmpty();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private static String focused() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Component::getName)
                .orElse("");
    }

    /** Strikes a text into the field that has the keyboard, and Enter, which goes on to another. */
    private void type(String field, String text, String next) throws Exception {
        assertThat(EventThread.comes(() -> focused().equals(field))).as(field).isTrue();
        JTextField typed = named(JTextField.class, field);
        EventThread.run(typed::selectAll);
        for (char c : text.toCharArray()) {
            keys.strike(c == '-' ? KeyEvent.VK_MINUS : KeyEvent.getExtendedKeyCodeForChar(c));
        }
        assertThat(EventThread.comes(() -> typed.getText().equalsIgnoreCase(text)))
                .as(field + " " + typed.getText())
                .isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> focused().equals(next)))
                .as("from " + field + " to " + next)
                .isTrue();
    }

    private void begin() throws Exception {
        EventThread.run(() -> named(AbstractButton.class, "production.new").doClick());
        Keys.bringTo(() -> named(JComponent.class, "firstDay"));
    }

    @Test
    void aSpellIsTypedSavedAndAnotherOnItsDaysIsRefused() throws Exception {
        begin();
        assertThat(EventThread.call(() -> named(JTextField.class, "mixId").getText()))
                .isEqualTo("HG-101");
        type("firstDay", "2026-11-16", "lastDay");
        type("lastDay", "2026-11-22", "productionDays");
        type("productionDays", "5", "loads");
        type("loads", "24", "volume");
        type("volume", "180", "mass");
        type("mass", "", "reportedBy");
        type("reportedBy", "plant", "remarks");
        type("remarks", "", "production.save");
        keys.strike(KeyEvent.VK_ENTER);
        JTable table = named(JTable.class, "production.table");
        assertThat(EventThread.comes(() -> table.getRowCount() == 1)).isTrue();
        Production kept = demo.desk
                .book()
                .latest(Production.class, "HG-101/2026-11-22")
                .orElseThrow()
                .value();
        assertThat(kept.volume().orElseThrow()).hasToString("180 m3");
        assertThat(kept.loads()).contains(24);
        assertThat(EventThread.call(() -> table.getValueAt(0, 4))).isEqualTo("180 m3");
        begin();
        type("firstDay", "2026-11-22", "lastDay");
        type("lastDay", "2026-11-24", "productionDays");
        type("productionDays", "1", "loads");
        EventThread.run(() -> named(JTextField.class, "reportedBy").setText("plant"));
        EventThread.run(() -> named(AbstractButton.class, "production.save").doClick());
        assertThat(EventThread.comes(
                        () -> named(JComponent.class, "firstDay.message").isShowing()))
                .as("the overlap is said under the first day")
                .isTrue();
        assertThat(demo.desk.book().latest(Production.class)).hasSize(1);
    }
}
