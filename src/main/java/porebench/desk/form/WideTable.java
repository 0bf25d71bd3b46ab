package porebench.desk.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellEditor;
import javax.swing.table.TableColumn;
import javax.swing.table.TableModel;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

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

    /**
     * Sets out a column.
     *
     * @param widthPixels its preferred width at 100 %
     * @param isNumber whether its heading stands above digits, at the right
     */
    public void setColumn(int index, int widthPixels, boolean isNumber) {
        TableColumn column = getColumnModel().getColumn(index);
        HeadingWidth.set(this, index, widthPixels);
        int alignment = isNumber ? SwingConstants.TRAILING : SwingConstants.LEADING;
        column.setHeaderRenderer((table, value, isSelected, hasFocus, row, shown) -> {
            Component heading = table.getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(table, value, isSelected, hasFocus, row, shown);
            if (heading instanceof JLabel label) {
                label.setHorizontalAlignment(alignment);
            }
            return heading;
        });
    }

    /** Returns the whole text of a cell too narrow for it, where the cell has no tip of its own. */
    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        @Nullable String tip = super.getToolTipText(event);
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (tip != null || row < 0 || column < 0) {
            return tip;
        }
        Component shown = prepareRenderer(getCellRenderer(row, column), row, column);
        boolean isCut = shown.getPreferredSize().width > getCellRect(row, column, false).width;
        return isCut && shown instanceof JLabel label ? label.getText() : null;
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
