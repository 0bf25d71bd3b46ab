package porebench.desk.trial;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.chart.look.StateShape;
import porebench.desk.form.HeadingWidth;
import porebench.record.id.TrialId;

/** The table of trials; it scrolls within itself where the page is narrower than all its columns. */
final class TrialTable {
    private static final int MARK = 12;
    private static final int SHOWN_ROWS = 5;

    private final TrialsModel model;
    private final Rows rows = new Rows();
    private final JTable table = new JTable(rows);
    private final JScrollPane scroll = new JScrollPane(table);
    private boolean showing;

    TrialTable(TrialsModel model) {
        this.model = model;
        table.setName("trials");
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.getTableHeader().setReorderingAllowed(false);
        table.setDefaultRenderer(Object.class, new Cells());
        table.setFillsViewportHeight(true);
        table.getAccessibleContext().setAccessibleName(model.texts().get("page.title"));
        // Tab leaves the table; the arrow keys move within it.
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        for (TrialRow.Column column : TrialRow.Column.values()) {
            HeadingWidth.set(table, column.ordinal(), column.width());
        }
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && !showing) {
                model.select(selected());
            }
        });
        sizeToRows();
    }

    JScrollPane component() {
        return scroll;
    }

    /** Brings the selected trial into sight, the keyboard on it. */
    void reveal() {
        int row = table.getSelectedRow();
        if (row >= 0) {
            table.requestFocusInWindow();
            scroll.scrollRectToVisible(new Rectangle(scroll.getSize()));
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    private Optional<TrialId> selected() {
        int row = table.getSelectedRow();
        return row < 0
                ? Optional.empty()
                : Optional.of(rows.all.get(row).judged().trial().value().id());
    }

    private void sizeToRows() {
        table.setRowHeight(Math.max(table.getRowHeight(), UIScale.scale(26)));
        table.setPreferredScrollableViewportSize(new Dimension(UIScale.scale(200), table.getRowHeight() * SHOWN_ROWS));
    }

    /** Shows the trials as they are, the selection staying on its trial. */
    void show() {
        showing = true;
        rows.all = model.rows();
        rows.fireTableDataChanged();
        for (TrialRow.Column column : TrialRow.Column.values()) {
            table.getColumnModel()
                    .getColumn(column.ordinal())
                    .setHeaderValue(column.title(model.texts(), model.desk().units()));
        }
        table.getTableHeader().repaint();
        Optional<TrialId> chosen =
                model.selected().map(row -> row.judged().trial().value().id());
        for (int i = 0; i < rows.all.size(); i++) {
            if (chosen.filter(rows.all.get(i).judged().trial().value().id()::equals)
                    .isPresent()) {
                table.setRowSelectionInterval(i, i);
            }
        }
        showing = false;
    }

    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private transient List<TrialRow> all = List.of();

        @Override
        public int getRowCount() {
            return all.size();
        }

        @Override
        public int getColumnCount() {
            return TrialRow.Column.values().length;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return all.get(row).cell(TrialRow.Column.values()[column]);
        }
    }

    private final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable owner, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            super.getTableCellRendererComponent(owner, value, isSelected, hasFocus, row, column);
            TrialRow.Column of = TrialRow.Column.values()[column];
            setHorizontalAlignment(of.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING);
            setIcon(of == TrialRow.Column.STATE ? mark(rows.all.get(row), isSelected) : null);
            setToolTipText(String.valueOf(value));
            return this;
        }

        private Icon mark(TrialRow row, boolean isSelected) {
            return new StateShape(
                    row.state(),
                    isSelected ? table.getSelectionForeground() : StateColours.of(row.state()),
                    UIScale.scale(MARK));
        }
    }
}
