package porebench.desk.table;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/** How wide the columns of a table have to be. */
final class ColumnWidths {
    private ColumnWidths() {}

    /** Returns how wide the heading of a column is. */
    static int heading(JTable table, TableColumn place) {
        return place.getHeaderRenderer()
                .getTableCellRendererComponent(table, place.getHeaderValue(), false, false, -1, place.getModelIndex())
                .getPreferredSize()
                .width;
    }

    /** Makes a column just as wide as what stands in it. */
    static void fit(JTable table, int at) {
        TableColumn place = table.getColumnModel().getColumn(at);
        int widest = heading(table, place);
        for (int row = 0; row < table.getRowCount(); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, at), row, at);
            widest = Math.max(widest, cell.getPreferredSize().width);
        }
        place.setPreferredWidth(widest + table.getRowHeight());
        place.setWidth(widest + table.getRowHeight());
    }
}
