package porebench.desk.photo;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** A photo fitted into the room there is, or dot for dot to be scrolled. */
final class PhotoView extends JComponent implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int STEP = 40;

    private transient Optional<BufferedImage> picture = Optional.empty();
    private boolean fitted = true;

    PhotoView() {
        setName("photo");
        setFocusable(true);
    }

    void show(BufferedImage other) {
        picture = Optional.of(other);
        revalidate();
        repaint();
    }

    /** Fits the photo into the room there is, or shows it dot for dot. */
    void fit(boolean whole) {
        fitted = whole;
        revalidate();
        repaint();
    }

    /** Returns how large the photo is drawn. */
    Dimension drawn() {
        return picture.map(one -> {
                    double scale = fitted
                            ? Math.min(1.0 * getWidth() / one.getWidth(), 1.0 * getHeight() / one.getHeight())
                            : 1.0;
                    return new Dimension(
                            (int) Math.round(one.getWidth() * scale), (int) Math.round(one.getHeight() * scale));
                })
                .orElse(new Dimension());
    }

    @Override
    public Dimension getPreferredSize() {
        return fitted || picture.isEmpty()
                ? new Dimension(STEP, STEP)
                : new Dimension(picture.get().getWidth(), picture.get().getHeight());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            Dimension size = drawn();
            picture.ifPresent(one -> g.drawImage(
                    one,
                    Math.max(0, (getWidth() - size.width) / 2),
                    Math.max(0, (getHeight() - size.height) / 2),
                    size.width,
                    size.height,
                    null));
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
