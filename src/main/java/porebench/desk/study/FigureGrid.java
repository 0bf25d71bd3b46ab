package porebench.desk.study;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import porebench.desk.form.WideTable;

/** A table of figures to read. */
final class FigureGrid {
    private static final int TEXT_WIDTH = 130;
    private static final int LEAST_NUMBER_WIDTH = 76;
    private static final int LETTER_WIDTH = 8;

    private FigureGrid() {}

    static JComponent of(StudyShown.Table data) {
        DefaultTableModel rows = new DefaultTableModel() {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        List<StudyShown.Column> columns = data.columns();
        columns.forEach(column -> rows.addColumn(column.heading()));
        data.rows().forEach(row -> rows.addRow(row.toArray()));
        WideTable table = new WideTable("study." + data.name(), rows);
        table.getAccessibleContext().setAccessibleName(data.title());
        for (int i = 0; i < columns.size(); i++) {
            boolean isNumber = columns.get(i).isNumber();
            table.setColumn(i, width(columns.get(i)), isNumber);
            DefaultTableCellRenderer cell = new DefaultTableCellRenderer();
            cell.setHorizontalAlignment(isNumber ? SwingConstants.TRAILING : SwingConstants.LEADING);
            table.getColumnModel().getColumn(i).setCellRenderer(cell);
        }
        return table.scrolled();
    }

    /** Returns how wide a column is at 100 %: its heading is not cut, and neither are most figures. */
    private static int width(StudyShown.Column column) {
        return column.isNumber()
                ? Math.max(LEAST_NUMBER_WIDTH, LETTER_WIDTH * (column.heading().length() + 2))
                : TEXT_WIDTH;
    }
}
