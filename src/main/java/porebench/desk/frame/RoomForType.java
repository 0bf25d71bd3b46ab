package porebench.desk.frame;

import java.awt.AWTEvent;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.AWTEventListener;
import java.awt.event.FocusEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/**
 * A part of the window that has with larger type as much more room as its type is larger, and is moved where the window has less: nothing
 * is cut off. With usual or smaller type it is as large as the window lets it be.
 */
final class RoomForType extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 16;

    private final int leastWidth;
    private final int leastHeight;
    private final transient AWTEventListener follower = this::follow;

    private RoomForType(JComponent part, int leastWidth, int leastHeight) {
        super(new BorderLayout());
        this.leastWidth = leastWidth;
        this.leastHeight = leastHeight;
        add(part);
    }

    /**
     * Returns a part in its scroll bars.
     *
     * @param leastWidth how wide it must be with usual type, in pixels
     * @param leastHeight how high it must be with usual type, in pixels
     * @param least how small it may be made
     */
    static JScrollPane around(JComponent part, int leastWidth, int leastHeight, Dimension least) {
        JScrollPane scroll = new JScrollPane(new RoomForType(part, leastWidth, leastHeight));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setMinimumSize(least);
        scroll.getVerticalScrollBar().setUnitIncrement(STEP);
        scroll.getHorizontalScrollBar().setUnitIncrement(STEP);
        return scroll;
    }

    private Dimension least() {
        TypeSize size = TypeSize.inUse();
        return size.percent() <= TypeSize.USUAL.percent()
                ? new Dimension()
                : new Dimension(leastWidth * size.percent() / 100, leastHeight * size.percent() / 100);
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

    /** Brings what got the keyboard into sight, where not all of this is; the page within has moved by then. */
    private void follow(AWTEvent event) {
        if (event instanceof FocusEvent focus
                && focus.getID() == FocusEvent.FOCUS_GAINED
                && focus.getCause() != FocusEvent.Cause.MOUSE_EVENT
                && focus.getSource() instanceof JComponent part
                && SwingUtilities.isDescendingFrom(part, this)
                && !getVisibleRect().getSize().equals(getSize())) {
            SwingUtilities.invokeLater(() -> reveal(part));
        }
    }

    private void reveal(JComponent part) {
        if (SwingUtilities.isDescendingFrom(part, this) && part.getParent() != null) {
            Rectangle place = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), this);
            Rectangle room = getVisibleRect();
            // Of what is larger than the room the beginning is shown.
            place.width = Math.min(place.width, room.width);
            place.height = Math.min(place.height, room.height);
            scrollRectToVisible(place);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension least = least();
        Dimension own = super.getPreferredSize();
        return least.width == 0 ? own : least;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return super.getPreferredSize();
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
        return getParent() == null || getParent().getWidth() >= least().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() == null || getParent().getHeight() >= least().height;
    }
}
