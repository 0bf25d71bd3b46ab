package porebench.desk.budget;

import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import porebench.desk.form.WideTable;
import porebench.method.Texts;
import porebench.method.budget.Budget;

/** The lines of a budget, one a part. */
final class BudgetTable {
    private static final int[] WIDTHS = {165, 105, 125, 92, 78, 68, 62, 190};
    private static final int LAST = WIDTHS.length - 1;

    private final DefaultTableModel rows = new DefaultTableModel(0, WIDTHS.length) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final WideTable table = new WideTable("budgetLines", rows);
    private final JScrollPane scrolled = table.scrolled();

    BudgetTable(Texts texts) {
        List<String> headings = List.of(
                texts.get("heading.part"),
                texts.get("heading.value"),
                texts.get("heading.uncertainty"),
                texts.get("heading.sensitivity"),
                texts.get("heading.contribution"),
                texts.get("heading.share"),
                texts.get("heading.degrees"),
                texts.get("heading.origin"));
        rows.setColumnIdentifiers(headings.toArray());
        table.getAccessibleContext().setAccessibleName(texts.get("section.budget"));
        DefaultTableCellRenderer number = new DefaultTableCellRenderer();
        number.setHorizontalAlignment(SwingConstants.TRAILING);
        for (int column = 0; column < WIDTHS.length; column++) {
            boolean isNumber = column > 0 && column < LAST;
            table.setColumn(column, WIDTHS[column], isNumber);
            if (isNumber) {
                table.getColumnModel().getColumn(column).setCellRenderer(number);
            }
        }
    }

    JScrollPane component() {
        return scrolled;
    }

    void show(Budget budget, BudgetWords words) {
        rows.setRowCount(0);
        budget.lines().forEach(line -> rows.addRow(words.row(budget, line).toArray()));
        scrolled.revalidate();
    }
}
