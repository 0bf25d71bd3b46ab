package porebench.desk.register;

import java.awt.Component;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** A cell of words with a shape before them. */
final class MarkCell<T> extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    private final transient Rows<T> rows;
    private final transient Function<T, Icon> mark;

    MarkCell(Rows<T> rows, Function<T, Icon> mark) {
        this.rows = rows;
        this.mark = mark;
        setIconTextGap(8);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        setIcon(mark.apply(rows.at(row)));
        return this;
    }
}
