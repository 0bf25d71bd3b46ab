package porebench.desk.photo;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** A photo fitted into the room there is, or dot for dot to be scrolled. */
final class PhotoView extends JComponent implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 40;

    private transient Optional<BufferedImage> picture = Optional.empty();
    private boolean fitted = true;
    private int quarters;

    PhotoView() {
        setName("photo");
        setFocusable(true);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ICON;
                }
            };
        }
        return accessibleContext;
    }

    void show(BufferedImage other) {
        picture = Optional.of(other);
        shownAnew();
    }

    /** Fits the photo into the room there is, or shows it dot for dot. */
    void fit(boolean whole) {
        fitted = whole;
        shownAnew();
    }

    /** Turns the photo a quarter to the right. */
    void turn() {
        quarters = (quarters + 1) % 4;
        shownAnew();
    }

    private void shownAnew() {
        revalidate();
        repaint();
    }

    /** Returns how large the photo is, dot for dot, as it is turned. */
    private Dimension dots() {
        return picture.map(one -> quarters % 2 == 0
                        ? new Dimension(one.getWidth(), one.getHeight())
                        : new Dimension(one.getHeight(), one.getWidth()))
                .orElse(new Dimension(1, 1));
    }

    @Override
    public Dimension getPreferredSize() {
        return fitted ? new Dimension(STEP, STEP) : dots();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            Dimension dots = dots();
            double scale = fitted ? Math.min(1.0 * getWidth() / dots.width, 1.0 * getHeight() / dots.height) : 1.0;
            g.translate(getWidth() / 2.0, getHeight() / 2.0);
            g.scale(scale, scale);
            g.rotate(quarters * Math.PI / 2);
            picture.ifPresent(one -> g.drawImage(one, -one.getWidth() / 2, -one.getHeight() / 2, null));
        } finally {
            g.dispose();
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
        return STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
        int room = orientation == SwingConstants.VERTICAL ? seen.height : seen.width;
        return Math.max(STEP, room - STEP);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return fitted || getParent().getWidth() > getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return fitted || getParent().getHeight() > getPreferredSize().height;
    }
}
