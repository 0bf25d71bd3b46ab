package porebench.desk.table;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.MouseWheelEvent;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/** A table in its sideways scroll bar; turning the wheel goes on to the page, unless there are more rows. */
final class SidewaysScroll extends JScrollPane {
    private static final long serialVersionUID = 1L;

    SidewaysScroll(Component table) {
        super(table);
    }

    @Override
    protected void processMouseWheelEvent(MouseWheelEvent event) {
        Container page = getParent();
        if (event.isShiftDown() || page == null || getVerticalScrollBar().isVisible()) {
            super.processMouseWheelEvent(event);
        } else {
            page.dispatchEvent(SwingUtilities.convertMouseEvent(this, event, page));
        }
    }
}
