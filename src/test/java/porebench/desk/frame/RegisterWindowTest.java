package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;

/** The factor register by the keyboard: what is on view, kept under a name, found again, and written as it is on view. */
@NeedsDisplay
class RegisterWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheRegister() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.turnTo(window.pages().named("register").orElseThrow()));
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private JTable table() {
        return (JTable) named("register.table");
    }

    private String told() throws Exception {
        return EventThread.call(() -> ((JLabel) named("register.told")).getText());
    }

    private List<String> mixes() throws Exception {
        return EventThread.call(() -> IntStream.range(0, table().getRowCount())
                .mapToObj(row -> String.valueOf(table().getValueAt(row, 1)))
                .toList());
    }

    @Test
    void aViewKeptUnderANameComesBackWithItsWordsAndOrder() throws Exception {
        assertThat(EventThread.call(() -> ((JLabel) named("register.coverage")).getText()))
                .isEqualTo("4 of 8 mixes have a factor that may be used (50 %)");
        Keys.bringTo(() -> named("register.views"));
        keys.strike(KeyEvent.VK_W);
        assertThat(EventThread.comes(() -> table().getRowCount() == 4)).isTrue();
        Keys.bringTo(() -> named("register.table.filter"));
        for (char letter : "hollin".toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comes(() -> table().getRowCount() == 1)).isTrue();
        asker.reasons.add("Hollin yard");
        Keys.bringTo(() -> named("register.keep-view"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> ((JLabel) named("register.told")).getText().contains("Hollin yard")))
                .isTrue();
        // All mixes again, by Home in the box and Escape in the filter; then the view by its letter.
        Keys.bringTo(() -> named("register.views"));
        keys.strike(KeyEvent.VK_A);
        assertThat(EventThread.comes(() -> ((JComboBox<?>) named("register.views")).getSelectedIndex() == 0))
                .isTrue();
        Keys.bringTo(() -> named("register.table.filter"));
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> table().getRowCount() == 8)).isTrue();
        Keys.bringTo(() -> named("register.views"));
        keys.strike(KeyEvent.VK_H);
        assertThat(EventThread.comes(() -> table().getRowCount() == 1)).isTrue();
        assertThat(mixes()).containsExactly("HG-105");
        Keys.bringTo(() -> named("register.forget-view"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> ((JComboBox<?>) named("register.views")).getItemCount() == 6))
                .isTrue();
    }

    @Test
    void whatIsOnViewIsWrittenAsItStandsThere() throws Exception {
        Path csv = folder.resolve("register.csv");
        Path pdf = folder.resolve("register.pdf");
        Keys.bringTo(() -> named("register.views"));
        keys.strike(KeyEvent.VK_R);
        assertThat(EventThread.comes(() -> table().getRowCount() == 2)).isTrue();
        for (Path file : List.of(csv, pdf)) {
            asker.filesToWrite.add(file);
            Keys.bringTo(() -> named("register.save"));
            keys.strike(KeyEvent.VK_SPACE);
            assertThat(EventThread.comes(() ->
                            ((JLabel) named("register.told")).getText().contains(String.valueOf(file.getFileName()))))
                    .isTrue();
        }
        assertThat(told()).startsWith("The factor register was saved as ");
        assertThat(Files.readAllLines(csv)).hasSize(3).satisfies(lines -> {
            assertThat(lines.get(1)).startsWith("HG-102,");
            assertThat(lines.get(2)).startsWith("HG-103,").contains(",lapsed,");
        });
        assertThat(Files.size(pdf)).isGreaterThan(1000);
    }

    @Test
    void thePlotOverTimeGivesItsRoomToTheTable() throws Exception {
        JComponent plot = (JComponent) named("plot.coverage");
        assertThat(EventThread.call(plot::isShowing)).isTrue();
        Keys.bringTo(() -> named("register.over-time"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> !plot.isShowing())).isTrue();
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(plot::isShowing)).isTrue();
    }
}
