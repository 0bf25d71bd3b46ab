package porebench.desk.table;

import java.awt.Container;
import java.awt.Insets;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * A table in its sideways scroll bar; turning the wheel goes on to the page, unless there are more rows. The line that filters it
 * stands above the headings and does not go sideways with them.
 */
final class SidewaysScroll extends JScrollPane {
    private static final long serialVersionUID = 1L;

    private final transient RowTable<?> table;
    private final boolean isFiltered;

    @Nullable
    private JComponent line;

    SidewaysScroll(RowTable<?> table, boolean isFiltered) {
        super(table);
        this.table = table;
        this.isFiltered = isFiltered;
    }

    /** Where a page has put the line elsewhere by now, none stands here. */
    @Override
    public void addNotify() {
        if (isFiltered && !FilterLine.isOver(table)) {
            JComponent made = FilterLine.within(table);
            line = made;
            add(made);
        }
        super.addNotify();
    }

    private Optional<JComponent> shownLine() {
        return Optional.ofNullable(line).filter(JComponent::isVisible);
    }

    @Override
    public Insets getInsets() {
        Insets insets = super.getInsets();
        insets.top += shownLine().map(shown -> shown.getPreferredSize().height).orElse(0);
        return insets;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        Insets around = super.getInsets();
        int width = getWidth() - around.left - around.right;
        shownLine()
                .ifPresent(shown -> shown.setBounds(around.left, around.top, width, shown.getPreferredSize().height));
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
