package porebench.desk.register;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** A cell whose whole text is told when the pointer rests on it. */
final class WholeTextCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        String text = getText();
        setToolTipText(text.isBlank() ? null : text);
        return this;
    }
}
