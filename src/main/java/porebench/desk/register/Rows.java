package porebench.desk.register;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;

/** The rows of a register as a table. */
final class Rows<T> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<ShownColumn<T>> columns;
    private transient List<T> shown = List.of();

    Rows(List<ShownColumn<T>> columns) {
        this.columns = List.copyOf(columns);
    }

    /** Shows some records; a table keeps its selection as long as their number stays. */
    void show(List<T> records) {
        int before = shown.size();
        shown = List.copyOf(records);
        if (before == shown.size() && before > 0) {
            fireTableRowsUpdated(0, before - 1);
        } else {
            fireTableDataChanged();
        }
    }

    /** Lets the headings begin where the cells begin. */
    static void alignHeadings(JTable table) {
        if (table.getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(SwingConstants.LEADING);
        }
    }

    T at(int row) {
        return shown.get(row);
    }

    List<T> shown() {
        return shown;
    }

    @Override
    public int getRowCount() {
        return shown.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return columns.get(column).heading();
    }

    @Override
    public Object getValueAt(int row, int column) {
        return columns.get(column).words().apply(shown.get(row));
    }
}
