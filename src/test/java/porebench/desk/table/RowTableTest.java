package porebench.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.Settings;
import porebench.desk.form.Choices;

/** A table of two columns over whole numbers: what they are called, and how large they are. */
class RowTableTest {
    private final List<String> taken = new ArrayList<>();
    private String unit = "kg";

    private RowTable<Integer> table() {
        return new RowTable<>(
                "stones",
                "Stones",
                List.of(
                        new ShownColumn<>("Stone", 80, number -> "No.\t" + number),
                        new ShownColumn<Integer>(() -> "Mass, " + unit, 80, number -> Integer.toString(number))
                                .number()
                                .sortedBy(number -> number)));
    }

    private RowTable<Integer> typed() {
        return new RowTable<>(
                "typed",
                "Typed",
                List.of(new ShownColumn<Integer>("Mass", 80, number -> number + " kg")
                        .edited(
                                number -> number != 9,
                                String::valueOf,
                                (number, text) -> taken.add(number + ":" + text))));
    }

    private static String copied(RowTable<?> table) throws Exception {
        CellTransfer transfer = (CellTransfer) table.getTransferHandler();
        return (String) transfer.createTransferable(table).getTransferData(DataFlavor.stringFlavor);
    }

    @Test
    void copiesTheSelectedRowsWithTheHeadingsForASpreadsheet() throws Exception {
        RowTable<Integer> table = table();
        table.show(List.of(9, 10));
        assertThat(((CellTransfer) table.getTransferHandler()).createTransferable(table))
                .isNull();
        table.selectAll();
        assertThat(copied(table)).isEqualTo("Stone\tMass, kg\nNo. 9\t9\nNo. 10\t10");
    }

    @Test
    void copiesTheWordsOfOneCellWhereACellIsSelected() throws Exception {
        RowTable<Integer> table = typed();
        table.show(List.of(9, 10));
        table.changeSelection(1, 0, false, false);
        assertThat(copied(table)).isEqualTo("Mass\n10 kg");
    }

    @Test
    void showsTheRowsInWhichEveryWordOccursAndKeepsTheOrderOfSorting() {
        RowTable<Integer> table = table();
        table.show(List.of(100, 9, 10));
        table.getRowSorter().toggleSortOrder(1);
        table.filter("NO. 10");
        assertThat(table.getRowCount()).isEqualTo(2);
        assertThat(table.getValueAt(0, 1)).isEqualTo("10");
        table.select(number -> number == 9);
        assertThat(table.selected()).isEmpty();
        table.show(List.of(100, 9, 10, 107));
        assertThat(table.getRowCount()).isEqualTo(3);
        table.filter(" ");
        assertThat(table.getRowCount()).isEqualTo(4);
        table.filter("granite");
        assertThat(table.getRowCount()).isZero();
    }

    @Test
    void aTableIsFilteredThatCannotBeSorted() {
        RowTable<Integer> table = typed();
        table.show(List.of(9, 10));
        table.filter("10");
        assertThat(table.getRowCount()).isEqualTo(1);
        assertThat(table.words(0, 0)).isEqualTo("10 kg");
    }

    @Test
    void columnsAreAsWideAndInTheOrderInWhichAPersonLeftThem() {
        Settings settings = Settings.inMemory();
        settings.put("table.page.stones", "1:140,0:222");
        RowTable<Integer> table = table();
        table.show(List.of(9));
        JPanel page = new JPanel();
        page.add(table.scrolled());
        TableMemory.keep(page, "page", settings);
        TableMemory.attach(table);
        assertThat(table.getColumnName(0)).isEqualTo("Mass, kg");
        assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(140);
        assertThat(table.getColumnModel().getColumn(1).getPreferredWidth()).isEqualTo(222);
        unit = "lb";
        table.show(List.of(9, 10));
        assertThat(table.getColumnModel().getColumn(0).getHeaderValue()).isEqualTo("Mass, lb");
        assertThat(table.words(1, 0)).isEqualTo("10");
        table.moveColumn(0, 1);
        assertThat(settings.get("table.page.stones", "")).startsWith("0:").contains(",1:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0:80", "0:80,2:80", "0:80,0:80", "0:80,1:80,2:80", "0:-3,1:80", "nonsense"})
    void nonsenseLeavesTheColumnsAsTheyWere(String remembered) {
        Settings settings = Settings.inMemory();
        settings.put("table.page.stones", remembered);
        RowTable<Integer> table = table();
        JPanel page = new JPanel();
        page.add(table.scrolled());
        TableMemory.keep(page, "page", settings);
        TableMemory.attach(table);
        assertThat(table.getColumnName(0)).isEqualTo("Stone");
        assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(80);
    }

    @Test
    void aChoiceIsTakenByTheFirstLetterOfItsWordsAndTheNextByTheSameLetter() {
        List<String> chosen = new ArrayList<>();
        JComboBox<String> box = Choices.of(
                "role",
                List.of("a", "b", "c"),
                symbol -> symbol.equals("a") ? "Zement" : "Grob " + symbol,
                chosen::add);
        box.selectWithKeyChar('g');
        box.selectWithKeyChar('G');
        box.selectWithKeyChar('g');
        box.selectWithKeyChar('x');
        assertThat(chosen).containsExactly("b", "c", "b");
    }

    @Test
    void sortsByTheValueThatIsStatedElseByTheWords() {
        RowTable<Integer> table = table();
        table.show(List.of(100, 9, 10));
        table.getRowSorter().toggleSortOrder(0);
        assertThat(List.of(table.getValueAt(0, 0), table.getValueAt(1, 0), table.getValueAt(2, 0)))
                .isEqualTo(List.of("No.\t9", "No.\t10", "No.\t100"));
        table.getRowSorter().toggleSortOrder(0);
        table.getRowSorter().toggleSortOrder(1);
        assertThat(List.of(table.getValueAt(0, 1), table.getValueAt(1, 1), table.getValueAt(2, 1)))
                .isEqualTo(List.of("9", "10", "100"));
        table.select(number -> number == 100);
        assertThat(table.getSelectedRow()).isEqualTo(2);
        table.show(List.of(100, 9, 11));
        assertThat(table.selected()).contains(100);
        table.show(List.of(5, 9, 11));
        assertThat(table.getValueAt(0, 1)).isEqualTo("5");
    }

    @Test
    void rowsThatAreTypedOrStandInAnOrderOfTheirOwnAreNotSorted() {
        RowTable<Integer> inOrder = new RowTable<>(
                "steps", "Steps", List.of(new ShownColumn<Integer>("Step", 80, Object::toString).unsorted()));
        assertThat(inOrder.getRowSorter()).isNull();
        assertThat(typed().getRowSorter()).isNull();
    }

    @Test
    void tellsWhatAPersonSelectsAndNotWhatIsShown() {
        RowTable<Integer> table = table();
        List<Optional<Integer>> told = new ArrayList<>();
        table.onSelect(told::add);
        table.show(List.of(1, 2));
        table.select(number -> number == 2);
        assertThat(told).isEmpty();
        table.setRowSelectionInterval(0, 0);
        table.clearSelection();
        assertThat(told).containsExactly(Optional.of(1), Optional.empty());
        table.select(number -> number == 2);
        table.select(number -> number == 7);
        assertThat(table.selected()).isEmpty();
    }

    @Test
    void headingsAreAskedAnewWhenRowsAreShown() {
        RowTable<Integer> table = table();
        unit = "lb";
        table.show(List.of(1));
        assertThat(table.getColumnModel().getColumn(1).getHeaderValue()).isEqualTo("Mass, lb");
    }

    @Test
    void tabLeavesATableToReadAndGoesOnInOneToTypeIn() {
        Set<?> everywhere = KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .getDefaultFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS);
        assertThat(table().getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .isEqualTo(everywhere);
        assertThat(typed().getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .isNotEqualTo(everywhere);
    }

    @Test
    void onlyWhatIsOpenIsTypedIn() {
        RowTable<Integer> table = typed();
        table.show(List.of(8, 9));
        assertThat(table.isCellEditable(0, 0)).isTrue();
        assertThat(table.isCellEditable(1, 0)).isFalse();
        assertThat(table().isEditing()).isFalse();
        table.setValueAt("12", 0, 0);
        table.getModel().setValueAt("13", 2, 0);
        assertThat(taken).containsExactly("8:12");
        assertThat(table.getValueAt(0, 0)).isEqualTo("8");
    }

    @Test
    void pastesFromTheSelectedCellOnPastHeadingsAndWhatIsNotOpen() {
        RowTable<Integer> table = typed();
        table.show(List.of(8, 9, 10));
        table.changeSelection(0, 0, false, false);
        CellTransfer transfer = (CellTransfer) table.getTransferHandler();
        List<List<String>> left = new ArrayList<>();
        table.pasteBy(Runnable::run, () -> false, left::add);
        StringSelection cells = new StringSelection("Mass\n1.5\tbeside\n2.5\n 3.5 \n4.5\n\n");
        assertThat(transfer.importData(new TransferHandler.TransferSupport(table, cells)))
                .isTrue();
        assertThat(taken).containsExactly("8:1.5", "10:3.5");
        assertThat(left).as("told once, without what is blank").containsExactly(List.of("beside", "2.5", "4.5"));
        assertThat(transfer.importData(new TransferHandler.TransferSupport(table(), cells)))
                .as("into a table to read")
                .isFalse();
    }

    /** A copy of one column has the heading of that one over its cells, also where it is pasted into another. */
    @Test
    void theHeadingOfAnotherColumnIsNotPastedAsData() {
        RowTable<Integer> table = new RowTable<>(
                "fills",
                "Fills",
                List.of(
                        column("Plate").edited(row -> true, String::valueOf, (row, text) -> taken.add("plate:" + text)),
                        column("Water")
                                .edited(row -> true, String::valueOf, (row, text) -> taken.add("water:" + text))));
        table.show(List.of(8, 9));
        table.changeSelection(0, 0, false, false);
        table.paste(List.of(List.of("Water"), List.of("7.5")));
        assertThat(taken).containsExactly("plate:7.5");
        taken.clear();
        table.paste(List.of(List.of("Water")));
        assertThat(taken)
                .as("one cell alone is what was copied in a spreadsheet")
                .containsExactly("plate:Water");
    }

    private static ShownColumn<Integer> column(String heading) {
        return new ShownColumn<>(heading, 80, String::valueOf);
    }

    @Test
    void whatSaysTheSameAsAClosedCellIsNotLeftOverAndRowsAreAddedWhereTheyCan() {
        RowTable<Integer> table = typed();
        table.show(List.of(8, 9));
        table.changeSelection(0, 0, false, false);
        List<List<String>> left = new ArrayList<>();
        table.pasteBy(
                Runnable::run,
                () -> {
                    table.show(List.of(8, 9, 10));
                    return true;
                },
                left::add);
        table.paste(List.of(List.of("1"), List.of("9 kg"), List.of("3")));
        assertThat(taken).containsExactly("8:1", "10:3");
        assertThat(left).isEmpty();
    }

    /** What is pasted goes where the person sees it, not where the row would stand among all. */
    @Test
    void aBlockGoesIntoTheRowsThatAreShown() {
        RowTable<Integer> table = typed();
        table.show(List.of(9, 10, 107));
        table.filter("107");
        table.changeSelection(0, 0, false, false);
        table.paste(List.of(List.of("5")));
        assertThat(taken).containsExactly("107:5");
    }

    /** The last cell of a copied row may be empty, and then empties the one it is pasted into. */
    @Test
    void anEmptyCellAtTheEndOfARowIsPastedToo() {
        RowTable<Integer> table = new RowTable<>(
                "two",
                "Two",
                List.of(
                        edited("Mass", (number, text) -> taken.add("mass " + text)),
                        edited("Note", (number, text) -> taken.add("note " + text))));
        table.show(List.of(1));
        table.changeSelection(0, 0, false, false);
        assertThat(table.getTransferHandler()
                        .importData(new TransferHandler.TransferSupport(table, new StringSelection("5\t"))))
                .isTrue();
        assertThat(taken).containsExactly("mass 5", "note ");
    }

    private static ShownColumn<Integer> edited(String heading, BiPredicate<Integer, String> takes) {
        return new ShownColumn<Integer>(heading, 80, String::valueOf).edited(number -> true, String::valueOf, takes);
    }

    @Test
    void longWordsMakeTheirRowHigher() {
        RowTable<String> table =
                new RowTable<>("long", "Long", List.of(new ShownColumn<String>("Why", 120, words -> words).wrapped()));
        table.show(List.of("short", "a sentence that does not stand in one line of so narrow a column"));
        table.setSize(120, 400);
        table.doLayout();
        assertThat(table.getRowHeight(1)).isGreaterThan(2 * table.getRowHeight(0));
    }

    @Test
    void columnsGiveUpWhatTheyHaveMoreThanTheirWordsBeforeTheTableScrollsSideways() {
        RowTable<String> table = new RowTable<>(
                "stones",
                "Stones",
                List.of(new ShownColumn<>("Stone", 400, word -> word), new ShownColumn<>("Mass", 400, word -> word)));
        table.show(List.of("granite"));
        JScrollPane scroll = table.scrolled();
        scroll.setSize(500, 200);
        layOut(scroll);
        assertThat(table.getWidth()).isEqualTo(scroll.getViewport().getWidth());
        assertThat(table.getColumnModel().getTotalColumnWidth()).isEqualTo(table.getWidth());
        scroll.setSize(60, 200);
        layOut(scroll);
        assertThat(table.getWidth()).isEqualTo(800);
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component inner : container.getComponents()) {
            if (inner instanceof Container each) {
                layOut(each);
            }
        }
    }
}
