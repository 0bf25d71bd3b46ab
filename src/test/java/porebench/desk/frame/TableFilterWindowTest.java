package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
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
import porebench.record.id.MeterId;

/** Every table that is read is filtered by words: the line for them is called by a key or the menu of the table. */
@NeedsDisplay
class TableFilterWindowTest {
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

    /** Ctrl and F calls the line over a table, the letters leave the rows that hold them, Escape shows all again. */
    private void filters(RowTable<?> table, String where) throws Exception {
        int all = EventThread.call(table::getRowCount);
        int high = EventThread.call(() -> height(table));
        JTextField field = Named.in(window.content(), JTextField.class, table.getName() + ".filter");
        boolean stood = EventThread.call(field::isShowing);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
        assertThat(EventThread.comes(field::isFocusOwner))
                .as("the filter of " + where)
                .isTrue();
        assertThat(EventThread.call(() -> table.getVisibleRect().height))
                .as("a row is seen under the filter of " + where)
                .isPositive();
        keys.strike(KeyEvent.VK_Q);
        keys.strike(KeyEvent.VK_Q);
        assertThat(EventThread.comes(() -> table.getRowCount() == 0))
                .as("no row of " + where + " has such words")
                .isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> table.getRowCount() == all && field.isShowing() == stood))
                .as("all rows of " + where + " again")
                .isTrue();
        if (!stood) {
            assertThat(EventThread.comes(table::isFocusOwner))
                    .as("the keyboard is back in " + where)
                    .isTrue();
            assertThat(EventThread.comes(() -> height(table) == high))
                    .as("the line over " + where + " takes no height")
                    .isTrue();
        }
    }

    private static int height(RowTable<?> table) {
        return SwingUtilities.getAncestorOfClass(JScrollPane.class, table).getHeight();
    }

    @Test
    void everyTableToReadIsFilteredByWordsThatCtrlFCalls() throws Exception {
        List<String> seen = new ArrayList<>();
        for (LatePage<?> page : window.pages().all()) {
            if (page == window.pages().meter()) {
                EventThread.run(() -> window.openMeter(new MeterId("B-1")));
            } else {
                EventThread.run(() -> window.turnTo(page));
            }
            assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                    .isTrue();
            if (page.name().equals("variability")) {
                assertThat(EventThread.comes(() -> all(window.content())
                                .anyMatch(each -> each instanceof RowTable<?> table
                                        && "budgetLines".equals(table.getName())
                                        && isRead(table))))
                        .as("the budget is worked out")
                        .isTrue();
            }
            List<RowTable<?>> tables = EventThread.call(() -> all(window.content())
                    .filter(each -> each instanceof RowTable<?> table && isRead(table))
                    .<RowTable<?>>map(each -> (RowTable<?>) each)
                    .toList());
            for (RowTable<?> table : tables) {
                focus(table);
                filters(table, table.getName() + " of " + page.name());
                seen.add(table.getName());
            }
        }
        assertThat(seen).contains("factor.history", "register.table", "budgetLines", "trials", "beside");
    }

    @Test
    void theVersionsOfARecordAreFilteredToo() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        RowTable<?> register = Named.in(window.content(), RowTable.class, "source.table");
        EventThread.run(() -> register.changeSelection(0, 0, false, false));
        RowTable<?> versions = Named.in(window.content(), RowTable.class, "source.versions");
        assertThat(EventThread.comes(() -> versions.getRowCount() > 0 && versions.isShowing()))
                .isTrue();
        focus(versions);
        filters(versions, "the versions");
    }

    @Test
    void theMenuOfATableCallsItsFilter() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, "factor.history");
        assertThat(EventThread.comes(() -> table.getRowCount() > 0)).isTrue();
        focus(table);
        JPopupMenu menu = table.getComponentPopupMenu();
        keys.strike(KeyEvent.VK_SHIFT, KeyEvent.VK_F10);
        assertThat(EventThread.comes(menu::isShowing)).isTrue();
        keys.strike(KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_ENTER);
        JTextField field = Named.in(window.content(), JTextField.class, "factor.history.filter");
        assertThat(EventThread.comes(field::isFocusOwner)).isTrue();
        keys.strikeUntil(() -> !field.isShowing(), "the line gone", KeyEvent.VK_ESCAPE);
    }
}
