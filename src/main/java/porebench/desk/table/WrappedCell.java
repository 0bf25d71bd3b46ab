package porebench.desk.table;

import java.awt.Component;
import javax.accessibility.AccessibleContext;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.table.TableCellRenderer;

/** Draws words that break their lines at the width of their column. */
final class WrappedCell extends JTextArea implements TableCellRenderer {
    private static final long serialVersionUID = 1L;

    private String heading = "";

    WrappedCell() {
        setLineWrap(true);
        setWrapStyleWord(true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        setText(String.valueOf(value));
        heading = table.getColumnName(column);
        setFont(table.getFont());
        setForeground(isSelected ? table.getSelectionForeground() : table.getForeground());
        setBackground(isSelected ? table.getSelectionBackground() : table.getBackground());
        setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        setSize(table.getColumnModel().getColumn(column).getWidth(), Short.MAX_VALUE);
        return this;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJTextArea() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return SpokenCells.words(getText(), getLocale());
                }

                @Override
                public String getAccessibleDescription() {
                    return SpokenCells.about(heading, "");
                }
            };
        }
        return accessibleContext;
    }
}
