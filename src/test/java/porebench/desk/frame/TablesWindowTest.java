package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
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
                focus(table);
                keys.strike(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
                assertThat(EventThread.comes(() -> !table.isFocusOwner()
                                && KeyboardFocusManager.getCurrentKeyboardFocusManager()
                                                .getFocusOwner()
                                        != null))
                        .as("Tab goes back out of " + table.getName() + " of " + page.name())
                        .isTrue();
                assertThat(EventThread.call(table::getSelectedRow)).isEqualTo(selected);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(6);
    }

    private static boolean isOnEnter(JTable table) {
        return List.of(Objects.requireNonNullElse(
                        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                                .keys(),
                        new KeyStroke[0]))
                .contains(KeyStroke.getKeyStroke("ENTER"));
    }

    private static String copied() throws Exception {
        return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
    }

    private void goesDown(JTable table, String where) throws Exception {
        boolean isBelow = false;
        for (int round = 0; round < 10 && !isBelow; round++) {
            assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                    .isTrue();
            EventThread.run(() -> table.changeSelection(0, 0, false, false));
            keys.strike(KeyEvent.VK_ENTER);
            isBelow = EventThread.comesWithin(1, () -> table.getSelectedRow() == 1);
        }
        assertThat(isBelow).as("Enter goes down in " + where).isTrue();
    }

    private void copies(JTable table, String where) throws Exception {
        Clipboard clipboard = Toolkit.getDefaultToolkit().getSystemClipboard();
        clipboard.setContents(new StringSelection("nothing"), null);
        boolean isCopied = false;
        for (int round = 0; round < 10 && !isCopied; round++) {
            // What a page was asked for may come late and show other rows, of which none is selected.
            assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                    .isTrue();
            EventThread.run(() -> {
                if (table.getSelectedRow() < 0) {
                    table.changeSelection(0, Math.max(0, table.getSelectedColumn()), false, false);
                }
            });
            keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_C);
            isCopied = EventThread.comesWithin(1, () -> !copied().equals("nothing"));
        }
        assertThat(isCopied).as("something is copied out of " + where).isTrue();
        List<String> lines = copied().lines().toList();
        assertThat(lines).as(where).hasSizeGreaterThan(1);
        assertThat(lines.get(0).split("\t", -1))
                .as(where)
                .contains(table.getColumnName(Math.max(0, table.getSelectedColumn())));
        assertThat(lines.get(1).split("\t", -1).length)
                .as(where)
                .isEqualTo(lines.get(0).split("\t", -1).length);
    }

    /** By the keyboard: F8 goes to the headings, the space bar sorts by the one it stands on. */
    private void sorts(RowTable<?> table, String where) throws Exception {
        keys.strikeUntil(() -> table.getTableHeader().isFocusOwner(), "the headings of " + where, KeyEvent.VK_F8);
        keys.strikeUntil(
                () -> !table.getRowSorter().getSortKeys().isEmpty(), "the order of " + where, KeyEvent.VK_SPACE);
        EventThread.run(() -> table.getRowSorter().setSortKeys(List.of()));
    }

    @Test
    void everyTableToReadIsCopiedOutAndSortedAndEnterMovesDownInIt() throws Exception {
        int sorted = 0;
        for (LatePage<?> page : window.pages().all()) {
            if (page == window.pages().meter()) {
                EventThread.run(() -> window.openMeter(new MeterId("B-1")));
            } else {
                EventThread.run(() -> window.turnTo(page));
            }
            assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                    .isTrue();
            List<RowTable<?>> tables = EventThread.call(() -> all(window.content())
                    .filter(each -> each instanceof RowTable<?> table && isRead(table))
                    .<RowTable<?>>map(each -> (RowTable<?>) each)
                    .toList());
            for (RowTable<?> table : tables) {
                String where = table.getName() + " of " + page.name();
                focus(table);
                EventThread.run(() -> table.changeSelection(0, 0, false, false));
                if (table.getRowCount() > 1 && !isOnEnter(table)) {
                    goesDown(table, where);
                }
                copies(table, where);
                if (table.getRowSorter() != null) {
                    sorts(table, where);
                    sorted++;
                }
            }
        }
        assertThat(sorted).isGreaterThan(6);
    }

    @Test
    void aTableToTypeInTakesABlockAndEnterMovesDownInIt() throws Exception {
        RowTable<?> table = Named.in(window.content(), RowTable.class, "constituents");
        int mass = 3;
        EventThread.run(() -> table.changeSelection(0, mass, false, false));
        focus(table);
        keys.strike(KeyEvent.VK_7);
        keys.strikeUntil(
                () -> !table.isEditing() && table.getSelectedRow() == 1 && table.getSelectedColumn() == mass,
                "the cell below",
                KeyEvent.VK_ENTER);
        assertThat(EventThread.call(() -> table.getValueAt(0, mass))).isEqualTo("7");
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection("11\n12\n13"), null);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        assertThat(EventThread.comes(() -> table.getValueAt(3, mass).equals("13")))
                .isTrue();
        assertThat(EventThread.call(() -> table.getValueAt(1, mass))).isEqualTo("11");
        copies(table, "constituents");
        EventThread.run(() -> window.current().undo());
        EventThread.run(() -> window.current().undo());
        assertThat(EventThread.call(() -> table.getValueAt(0, mass))).isEqualTo("670");
    }

    @Test
    void tabLeavesATableInWhichIsTypedBehindItsLastCellAndBeforeItsFirst() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("mix").orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, "constituents");
        int row = EventThread.call(() -> table.getRowCount() - 1);
        int column = EventThread.call(() -> table.getColumnCount() - 1);
        EventThread.run(() -> table.changeSelection(row, column - 1, false, false));
        focus(table);
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(() -> table.getSelectedColumn() == column)).isTrue();
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(() -> !table.isFocusOwner())).as("behind").isTrue();
        assertThat(EventThread.call(() -> table.getSelectedRow() + "/" + table.getSelectedColumn()))
                .isEqualTo(row + "/" + column);
        EventThread.run(() -> table.changeSelection(0, 0, false, false));
        focus(table);
        keys.strike(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
        assertThat(EventThread.comes(() -> !table.isFocusOwner())).as("before").isTrue();
        assertThat(EventThread.call(() -> table.getSelectedRow() + "/" + table.getSelectedColumn()))
                .isEqualTo("0/0");
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
        keys.strikeUntil(() -> !table.isEditing() && table.getSelectedRow() == 1, "the cell below", KeyEvent.VK_ENTER);
        EventThread.run(() -> window.current().undo());
        assertThat(EventThread.call(() -> table.getValueAt(0, 1))).isEqualTo("fine");
    }

    @Test
    void theSourcesToChooseFromStandWithTheirNames() throws Exception {
        RowTable<?> table = Named.in(window.content(), RowTable.class, "constituents");
        EventThread.run(() -> table.changeSelection(0, 2, false, false));
        focus(table);
        keys.strikeUntil(() -> table.getEditorComponent() instanceof JComboBox<?>, "the box", KeyEvent.VK_F2);
        assertThat(EventThread.comes(
                        () -> box(table).getEditor().getEditorComponent().isFocusOwner()))
                .isTrue();
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() -> box(table).isPopupVisible())).isTrue();
        assertThat(EventThread.call(() -> itemsOf(box(table))))
                .contains("S-01 · Velmar washed sand", "S-06 · Hollin dune sand");
        keys.strikeUntil(() -> !box(table).isPopupVisible(), "the closed list", KeyEvent.VK_ESCAPE);
        keys.strikeUntil(() -> !table.isEditing(), "the cell as it was", KeyEvent.VK_ESCAPE);
        assertThat(EventThread.call(() -> table.getValueAt(0, 2))).isEqualTo("S-01");
    }

    @SuppressWarnings("unchecked")
    private static JComboBox<Object> box(RowTable<?> table) {
        return (JComboBox<Object>) table.getEditorComponent();
    }

    private static List<String> itemsOf(JComboBox<Object> box) {
        return IntStream.range(0, box.getItemCount())
                .mapToObj(box::getItemAt)
                .map(item -> box.getRenderer().getListCellRendererComponent(new JList<>(), item, -1, false, false))
                .map(shown -> ((JLabel) shown).getText())
                .toList();
    }

    /** Gives the keyboard to the first link, if there is one; returns whether a link has it. */
    private boolean isLinkFocused(String register) {
        Container links = Named.in(window.content(), Container.class, register + ".usedBy");
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean isThere =
                owner != null && links.isAncestorOf(owner) && owner.getName().startsWith("usedBy.");
        if (!isThere && links.getComponentCount() > 0) {
            links.getComponent(0).requestFocus();
        }
        return isThere;
    }

    @Test
    void aMixThatWasTestedOnAMeterIsOpenedFromTheMeter() throws Exception {
        openMixFrom("meters", "meter", "B-1");
    }

    private void openMixFrom(String page, String register, String record) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, register + ".table");
        focus(Named.in(window.content(), JTextField.class, register + ".table.filter"));
        for (char letter : record.toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comes(() -> table.getRowCount() == 1)).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        // The links may be made anew once more while the page comes to rest: the one that has the keyboard counts.
        Component link = null;
        for (int round = 0; round < 30 && link == null; round++) {
            link = EventThread.comesWithin(1, () -> isLinkFocused(register))
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
