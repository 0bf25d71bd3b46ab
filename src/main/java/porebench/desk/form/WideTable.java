package porebench.desk.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.MouseWheelEvent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellEditor;
import javax.swing.table.TableModel;
import javax.swing.text.JTextComponent;

/**
 * A table as high as its rows, within a page that scrolls up and down: it fills the width when there is room and scrolls
 * sideways when there is not.
 *
 * <p>Typing into a cell replaces what stands there; a cell being edited when something else is clicked keeps what was typed.
 */
public class WideTable extends JTable {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_WIDTH = 200;

    public WideTable(String name, TableModel model) {
        super(model);
        setName(name);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        putClientProperty("terminateEditOnFocusLost", true);
    }

    /** Returns the table in its sideways scroll bar; turning the wheel goes on to the page. */
    public JScrollPane scrolled() {
        return new JScrollPane(this) {
            private static final long serialVersionUID = 1L;

            @Override
            protected void processMouseWheelEvent(MouseWheelEvent event) {
                Container page = getParent();
                if (event.isShiftDown() || page == null) {
                    super.processMouseWheelEvent(event);
                } else {
                    page.dispatchEvent(SwingUtilities.convertMouseEvent(this, event, page));
                }
            }
        };
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        Container viewport = getParent();
        return viewport == null || getPreferredSize().width < viewport.getWidth();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(LEAST_WIDTH, Math.max(1, getRowCount()) * getRowHeight());
    }

    @Override
    public Component prepareEditor(TableCellEditor editor, int row, int column) {
        Component component = super.prepareEditor(editor, row, column);
        if (component instanceof JTextComponent text) {
            text.selectAll();
        }
        return component;
    }
}
