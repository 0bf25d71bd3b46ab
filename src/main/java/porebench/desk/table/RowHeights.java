package porebench.desk.table;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;

/** How high the rows of a table are in which words break their lines. */
final class RowHeights {
    private RowHeights() {}

    /** Returns whether the words of a column break their lines at its width. */
    static boolean isWrapped(JTable table, int at) {
        return table.getColumnModel().getColumn(at).getCellRenderer() instanceof WrappedCell;
    }

    /** Makes each row as high as the highest of its wrapped words, and returns whether any is of another height now. */
    static boolean wrap(JTable table) {
        List<Integer> wrapped = IntStream.range(0, table.getColumnCount())
                .filter(at -> isWrapped(table, at))
                .boxed()
                .toList();
        boolean isOther = false;
        for (int row = 0; !wrapped.isEmpty() && row < table.getRowCount(); row++) {
            int wanted = table.getRowHeight();
            for (int at : wrapped) {
                wanted = Math.max(
                        wanted,
                        table.prepareRenderer(table.getCellRenderer(row, at), row, at)
                                .getPreferredSize()
                                .height);
            }
            isOther |= wanted != table.getRowHeight(row);
            table.setRowHeight(row, wanted);
        }
        return isOther;
    }
}
