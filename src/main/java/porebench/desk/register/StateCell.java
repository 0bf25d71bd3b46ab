package porebench.desk.register;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.desk.StateMark;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;

/** A factor's state in a table: shape, colour and words. */
final class StateCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int MARK_SIDE = 12;

    private final Rows<RegisterRow> rows;

    StateCell(Rows<RegisterRow> rows) {
        this.rows = rows;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        FactorState state = rows.at(row).state();
        setIcon(new StateMark(state, MARK_SIDE));
        setIconTextGap(8);
        return this;
    }
}
