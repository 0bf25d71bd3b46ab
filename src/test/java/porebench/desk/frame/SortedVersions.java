package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import porebench.desk.EventThread;
import porebench.desk.Keys;

/** The versions of a mix that two people edited, in their table. */
final class SortedVersions {
    private SortedVersions() {}

    /** Returns what stands in the cells, a text a line. */
    static List<String> cells(JTable table) throws Exception {
        return EventThread.call(() -> {
            List<String> rows = new ArrayList<>();
            for (int row = 0; row < table.getRowCount(); row++) {
                rows.add(table.getValueAt(row, 0) + " | " + table.getValueAt(row, 1) + " | " + table.getValueAt(row, 2)
                        + " | " + table.getValueAt(row, 3));
            }
            return rows;
        });
    }

    /** Sorted from the last line to the first, with yours moved before theirs, a click takes the line and the side under it. */
    static void takeWhatIsClicked(JTable table, Keys keys) throws Exception {
        EventThread.run(() -> {
            table.getRowSorter().toggleSortOrder(0);
            table.getRowSorter().toggleSortOrder(0);
            table.moveColumn(3, 1);
        });
        // Name, yours, before, theirs; the last name of the alphabet first.
        assertThat(cells(table))
                .containsExactly(
                        "Velmar sand, mass | \u25CF 682 kg | 670 kg | \u25CB 670 kg",
                        "Target air | \u25CB 5.5 % air | 5.5 % air | \u25CF 6.0 % air",
                        "Soak time | \u25CF 20 min | 15 min | \u25CB 25 min",
                        "Drennick granite 20 mm, mass | \u25CB 1050 kg | 1050 kg | \u25CF 1040 kg");
        click(table, 1, 1);
        click(table, 2, 3);
        assertThat(cells(table))
                .containsExactly(
                        "Velmar sand, mass | \u25CF 682 kg | 670 kg | \u25CB 670 kg",
                        "Target air | \u25CF 5.5 % air | 5.5 % air | \u25CB 6.0 % air",
                        "Soak time | \u25CB 20 min | 15 min | \u25CF 25 min",
                        "Drennick granite 20 mm, mass | \u25CB 1050 kg | 1050 kg | \u25CF 1040 kg");
        // What was before is no side to take.
        click(table, 0, 2);
        assertThat(cells(table).get(0)).contains("\u25CF 682 kg");
        EventThread.run(() -> table.changeSelection(3, 1, false, false));
        keys.strikeUntil(() -> String.valueOf(table.getValueAt(3, 1)).startsWith("\u25CF"), "yours", KeyEvent.VK_SPACE);
        assertThat(cells(table).get(3))
                .isEqualTo("Drennick granite 20 mm, mass | \u25CF 1050 kg | 1050 kg | \u25CB 1040 kg");
        // As it was, which the next dialog remembers.
        EventThread.run(() -> {
            table.moveColumn(1, 3);
            table.getRowSorter().setSortKeys(List.of());
        });
    }

    private static void click(JTable table, int row, int column) throws Exception {
        EventThread.run(() -> {
            Rectangle cell = table.getCellRect(row, column, false);
            for (int what : List.of(MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED)) {
                table.dispatchEvent(new MouseEvent(
                        table,
                        what,
                        System.currentTimeMillis(),
                        what == MouseEvent.MOUSE_PRESSED ? InputEvent.BUTTON1_DOWN_MASK : 0,
                        (int) cell.getCenterX(),
                        (int) cell.getCenterY(),
                        1,
                        false,
                        MouseEvent.BUTTON1));
            }
        });
    }
}
