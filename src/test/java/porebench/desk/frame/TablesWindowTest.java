package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
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
import porebench.desk.ScriptedAsker;
import porebench.desk.table.RowTable;

/** Every table of the window by the keyboard: Tab leaves it, words filter it, letters choose in it. */
@NeedsDisplay
class TablesWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDemo() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static Stream<Component> all(Container within) {
        return Stream.of(within.getComponents())
                .flatMap(child -> child instanceof Container inner
                        ? Stream.concat(Stream.of(child), all(inner))
                        : Stream.of(child));
    }

    private static boolean isRead(JTable table) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            if (table.getRowCount() == 0 || table.isCellEditable(0, column)) {
                return false;
            }
        }
        return table.isShowing();
    }

    private void focus(Component component) throws Exception {
        boolean there = false;
        for (int round = 0; round < 20 && !there; round++) {
            EventThread.run(() -> {
                window.frame().toFront();
                component.requestFocus();
            });
            there = EventThread.comesWithin(1, component::isFocusOwner);
        }
        assertThat(there).as("the keyboard is on " + component.getName()).isTrue();
    }

    @Test
    void tabLeavesEveryTableInWhichNothingIsTyped() throws Exception {
        int seen = 0;
        for (LatePage<?> page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                    .isTrue();
            List<RowTable<?>> tables = EventThread.call(() -> all(window.content())
                    .filter(each -> each instanceof RowTable<?> table && isRead(table))
                    .<RowTable<?>>map(each -> (RowTable<?>) each)
                    .toList());
            for (RowTable<?> table : tables) {
                int selected = EventThread.call(table::getSelectedRow);
                focus(table);
                keys.strike(KeyEvent.VK_TAB);
                assertThat(EventThread.comes(() -> !table.isFocusOwner()
                                && KeyboardFocusManager.getCurrentKeyboardFocusManager()
                                                .getFocusOwner()
                                        != null))
                        .as("Tab leaves " + table.getName() + " of " + page.name())
                        .isTrue();
                assertThat(EventThread.call(table::getSelectedRow)).isEqualTo(selected);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(6);
    }

    @Test
    void wordsOverTheFactorRegisterLeaveTheRowsThatHoldThemAndEnterOpensTheMix() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("register").orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, "register.table");
        focus(Named.in(window.content(), JTextField.class, "register.table.filter"));
        for (char letter : "lapsed kerb".toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comes(() -> table.getRowCount() == 1)).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(table::isFocusOwner)).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> window.desk()
                        .selected()
                        .filter(mix -> mix.text().equals("HG-103"))
                        .isPresent()))
                .isTrue();
    }

    @Test
    void aLetterChoosesInACellToChooseIn() throws Exception {
        RowTable<?> table = Named.in(window.content(), RowTable.class, "constituents");
        EventThread.run(() -> table.changeSelection(0, 1, false, false));
        focus(table);
        assertThat(EventThread.call(() -> table.getValueAt(0, 1))).isEqualTo("fine");
        keys.strike(KeyEvent.VK_C);
        assertThat(EventThread.comes(() -> !table.getValueAt(0, 1).equals("fine")))
                .isTrue();
        assertThat(EventThread.call(() -> String.valueOf(table.getValueAt(0, 1))))
                .startsWith("c");
        EventThread.run(() -> window.current().undo());
        assertThat(EventThread.call(() -> table.getValueAt(0, 1))).isEqualTo("fine");
    }

    /** Gives the keyboard to the first link, if there is one; returns whether a link has it. */
    private boolean isLinkFocused() {
        Container links = Named.in(window.content(), Container.class, "source.usedBy");
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean isThere =
                owner != null && links.isAncestorOf(owner) && owner.getName().startsWith("usedBy.");
        if (!isThere && links.getComponentCount() > 0) {
            links.getComponent(0).requestFocus();
        }
        return isThere;
    }

    @Test
    void aMixThatUsesASourceIsOpenedFromTheSource() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, "source.table");
        focus(Named.in(window.content(), JTextField.class, "source.table.filter"));
        for (int key : new int[] {KeyEvent.VK_S, KeyEvent.VK_MINUS, KeyEvent.VK_0, KeyEvent.VK_2}) {
            keys.strike(key);
        }
        assertThat(EventThread.comes(() -> table.getRowCount() == 1)).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        // The links may be made anew once more while the page comes to rest: the one that has the keyboard counts.
        Component link = null;
        for (int round = 0; round < 30 && link == null; round++) {
            link = EventThread.comesWithin(1, this::isLinkFocused)
                    ? EventThread.call(() -> KeyboardFocusManager.getCurrentKeyboardFocusManager()
                            .getFocusOwner())
                    : null;
        }
        assertThat(link).as("a link that has the keyboard").isNotNull();
        String opened = link.getName();
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> window.pages().isStep(window.current())
                        && window.desk()
                                .selected()
                                .filter(mix -> opened.equals("usedBy." + mix.text()))
                                .isPresent()))
                .isTrue();
    }
}
