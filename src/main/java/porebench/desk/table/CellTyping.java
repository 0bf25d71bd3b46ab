package porebench.desk.table;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/**
 * How cells are typed in: what stands there gives way to the first key, Enter takes it over and goes on down, and the tabulator goes
 * from cell to cell and out of the table behind the last one, or back before the first.
 */
final class CellTyping {
    private static final String DOWN = "selectNextRowCell";

    private CellTyping() {}

    /** Lets the tabulator leave a table at either end, where it would begin anew at the other. */
    static void leaveByTab(JTable table) {
        leave(table, "selectNextColumnCell", 1, table::transferFocus);
        leave(table, "selectPreviousColumnCell", -1, table::transferFocusBackward);
    }

    private static void leave(JTable table, String name, int by, Runnable leaving) {
        Action within = table.getActionMap().get(name);
        table.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                int width = table.getColumnCount();
                int at = table.getSelectedRow() * width + table.getSelectedColumn() + by;
                boolean isEnd = table.getSelectedRow() < 0 || at < 0 || at >= table.getRowCount() * width;
                if (isEnd && (!table.isEditing() || table.getCellEditor().stopCellEditing())) {
                    leaving.run();
                } else if (!isEnd) {
                    within.actionPerformed(event);
                }
            }
        });
    }

    /** Makes the field of a cell ready. Of itself it would keep Enter, and the next number would be typed over this one. */
    static void begin(JTable table, JTextComponent field) {
        field.selectAll();
        field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), DOWN);
        field.getActionMap().put(DOWN, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                table.getActionMap()
                        .get(DOWN)
                        .actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, DOWN));
            }
        });
    }
}
