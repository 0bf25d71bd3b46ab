package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
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
import porebench.exchange.DemoCards;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** Cards out by the keyboard: one returned, many at once, handed out, the list written, to the mix and back. */
@NeedsDisplay
class CardsOutWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheCards() throws Exception {
        keys = new Keys();
        Path file = folder.resolve("cards.porebench");
        try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
            new DemoCards().fill(book);
        }
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(file);
        turnToCards();
        come(8);
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void turnToCards() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("cards").orElseThrow()));
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private JTable table() {
        return (JTable) named("cards.table");
    }

    private void come(int rows) throws Exception {
        assertThat(EventThread.comes(() -> table().getRowCount() == rows))
                .as(EventThread.call(() -> table().getRowCount() + " rows"))
                .isTrue();
    }

    private void told(String words) throws Exception {
        boolean isTold = EventThread.comes(
                () -> ((JTextComponent) named("cards.told")).getText().contains(words));
        assertThat(isTold).as("%s; there is %s", words, state()).isTrue();
    }

    /** Says what a person would see, where something did not come. */
    private String state() throws Exception {
        return EventThread.call(() -> "told '" + ((JTextComponent) named("cards.told")).getText() + "', name '"
                + ((JTextField) named("cards.name")).getText() + "', rows " + table().getRowCount() + ", chosen "
                + Arrays.toString(table().getSelectedRows()) + ", handing out enabled "
                + named("cards.handed-out").isEnabled() + ", caret in "
                + KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    }

    private void press(String button) throws Exception {
        Keys.bringTo(() -> named(button));
        keys.strike(KeyEvent.VK_SPACE);
    }

    @Test
    void whatHappenedToOneAndToManyIsSaidByKeys() throws Exception {
        Keys.bringTo(() -> named("cards.view"));
        keys.strike(KeyEvent.VK_UP);
        come(1);
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_R);
        come(0);
        told("Returned: 1.");
        assertThat(EventThread.call(() -> named("cards.alarm").isVisible())).isFalse();
        Keys.bringTo(() -> named("cards.view"));
        keys.strike(KeyEvent.VK_DOWN);
        come(7);
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_R);
        come(0);
        told("Returned: 7.");
        Keys.bringTo(() -> named("cards.view"));
        keys.strike(KeyEvent.VK_DOWN);
        come(10);
        EventThread.run(() -> table().changeSelection(2, 0, false, false));
        Keys.bringTo(() -> named("cards.name"));
        // The keyboard goes to the button only once the figure is there: a busy display brings it later than the
        // request.
        keys.strikeUntil(() -> "3".equals(((JTextField) named("cards.name")).getText()), "the figure 3", KeyEvent.VK_3);
        press("cards.handed-out");
        told("Handed out: 1.");
        assertThat(EventThread.comes(() -> "truck 3".equals(table().getValueAt(2, 4))))
                .isTrue();
        assertThat(EventThread.call(() -> ((JTextField) named("cards.name")).getText()))
                .isEqualTo("3");
    }

    @Test
    void theListIsWrittenAndARowLeadsToItsMixAndBack() throws Exception {
        Path pdf = folder.resolve("list.pdf");
        asker.filesToWrite.add(pdf);
        press("cards.save");
        told("list.pdf");
        assertThat(Files.size(pdf)).isGreaterThan(1000);
        EventThread.run(() -> table().changeSelection(4, 0, false, false));
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_ENTER);
        String mix = EventThread.call(() -> String.valueOf(table().getValueAt(4, 0)));
        assertThat(EventThread.comes(() -> window.pages().isStep(window.current())
                        && window.desk()
                                .selected()
                                .filter(one -> one.text().equals(mix))
                                .isPresent()))
                .isTrue();
        turnToCards();
        assertThat(EventThread.comes(() -> table().getSelectedRow() == 4)).isTrue();
        EventThread.run(() -> table().changeSelection(0, 0, false, false));
        Path carried = folder.resolve("truck.pdf");
        asker.filesToWrite.add(carried);
        press("cards.carried");
        told("truck.pdf");
        assertThat(Files.size(carried)).isGreaterThan(1000);
    }
}
