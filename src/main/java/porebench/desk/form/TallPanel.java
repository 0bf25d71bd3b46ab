package porebench.desk.form;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.awt.event.AWTEventListener;
import java.awt.event.FocusEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/** A panel as wide as the window that is scrolled up and down only. */
public final class TallPanel extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 16;

    private final transient AWTEventListener follower = this::follow;

    public TallPanel(LayoutManager layout) {
        super(layout);
        setFocusable(true);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        getToolkit().addAWTEventListener(follower, AWTEvent.FOCUS_EVENT_MASK);
    }

    @Override
    public void removeNotify() {
        getToolkit().removeAWTEventListener(follower);
        super.removeNotify();
    }

    /** Brings what got the keyboard into sight; not what was clicked, which would move away under the pointer. */
    private void follow(AWTEvent event) {
        if (event instanceof FocusEvent focus
                && focus.getID() == FocusEvent.FOCUS_GAINED
                && focus.getCause() != FocusEvent.Cause.MOUSE_EVENT
                && focus.getSource() instanceof JComponent part
                && SwingUtilities.isDescendingFrom(part, this)) {
            Container inner = SwingUtilities.getAncestorOfClass(JScrollPane.class, part);
            boolean isInOwnScroll = inner != null && inner != getParent().getParent() && isAncestorOf(inner);
            Component seen = isInOwnScroll ? inner : part;
            Rectangle place = SwingUtilities.convertRectangle(seen.getParent(), seen.getBounds(), this);
            place.grow(0, STEP);
            if (place.height <= getVisibleRect().height) {
                scrollRectToVisible(place);
            }
        }
    }

    /** Gives every panel within something a name to be heard, where it has none. */
    public static void name(Container within, String title) {
        for (Component each : within.getComponents()) {
            if (each instanceof TallPanel panel && panel.getAccessibleContext().getAccessibleName() == null) {
                panel.getAccessibleContext().setAccessibleName(title);
            }
            if (each instanceof Container inner) {
                name(inner, title);
            }
        }
    }

    /** Returns this panel in its scroll bar. */
    public JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(
                this, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(STEP);
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
