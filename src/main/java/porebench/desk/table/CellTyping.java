package porebench.desk.table;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/** How a cell is typed in: what stands there gives way to the first key, and Enter takes it over and goes on down. */
final class CellTyping {
    private static final String DOWN = "selectNextRowCell";

    private CellTyping() {}

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
