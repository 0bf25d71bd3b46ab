package porebench.desk.bench;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GraphicsConfiguration;
import java.awt.Toolkit;
import java.awt.font.FontRenderContext;

/**
 * Lengths on the screen: how many of the window's own dots a millimetre is, made smaller only where the screen has no room for it.
 *
 * @param dots the dots of a millimetre
 */
record Millimetres(double dots) {
    private static final double INCH = 25.4;
    private static final double LEAST_RESOLUTION = 72;

    /** The screen on which everything has its full size at 96 dots an inch. */
    private static final Dimension FULL = new Dimension(1024, 700);

    private static final double FULL_RESOLUTION = 96;

    /** Returns the millimetre of the screen that a component is on, for a window of a size. */
    static Millimetres on(Component component, Dimension window) {
        GraphicsConfiguration screen = component.getGraphicsConfiguration();
        double scale = screen == null ? 1 : screen.getDefaultTransform().getScaleX();
        return of(Toolkit.getDefaultToolkit().getScreenResolution(), scale, window);
    }

    /**
     * Returns the millimetre of a screen. Where a display states its resolution after scaling, that is what is left.
     *
     * @param resolution dots an inch, as the display states them
     * @param scale how many of its dots one of the window's is
     */
    static Millimetres of(double resolution, double scale, Dimension window) {
        double own = resolution / scale >= LEAST_RESOLUTION ? resolution / scale : resolution;
        double room =
                Math.min(window.width / (double) FULL.width, window.height / (double) FULL.height) * FULL_RESOLUTION;
        return new Millimetres(Math.min(own, room) / INCH);
    }

    /** Returns a length in whole dots. */
    int of(double millimetres) {
        return (int) Math.round(millimetres * dots);
    }

    /** Returns a font whose digits are some millimetres high. */
    Font digits(Font font, double millimetres) {
        Font large = font.deriveFont(100f);
        double height = large.createGlyphVector(new FontRenderContext(null, true, true), "0")
                .getVisualBounds()
                .getHeight();
        return font.deriveFont((float) (100 * millimetres * dots / height));
    }
}
