package porebench.desk.frame;

import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;

/** Where the window has room: on a screen that is scaled to twice its size there are half as many pixels to the eye. */
final class WindowPlace {
    /** Of the window's width; more for the mixes would leave the pages too little of a small one. */
    private static final double MOST_FOR_RAIL = 0.25;

    private WindowPlace() {}

    /** Returns the screen without what the system keeps for itself. */
    static Rectangle free(GraphicsConfiguration screen) {
        Rectangle whole = screen.getBounds();
        Insets kept = Toolkit.getDefaultToolkit().getScreenInsets(screen);
        return new Rectangle(
                whole.x + kept.left,
                whole.y + kept.top,
                whole.width - kept.left - kept.right,
                whole.height - kept.top - kept.bottom);
    }

    /** Returns a size, no larger than the screen has room for. */
    static Dimension within(Rectangle screen, Dimension wanted) {
        return new Dimension(Math.min(wanted.width, screen.width), Math.min(wanted.height, screen.height));
    }

    /** Returns how wide the list of mixes is at first. */
    static int rail(int windowWidth, int usual) {
        return Math.min(usual, (int) (windowWidth * MOST_FOR_RAIL));
    }
}
