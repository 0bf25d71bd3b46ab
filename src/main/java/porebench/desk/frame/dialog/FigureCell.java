package porebench.desk.frame.dialog;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;

/** One cell of the figures; a value that does not fit is outlined, and said in words under the table. */
final class FigureCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    private final FigureTable figures;

    FigureCell(FigureTable figures) {
        this.figures = figures;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        setToolTipText(String.valueOf(value));
        if (column == FigureTable.VALUE && figures.isWrong(row)) {
            setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.error.focusedBorderColor"), 2));
        }
        return this;
    }
}
