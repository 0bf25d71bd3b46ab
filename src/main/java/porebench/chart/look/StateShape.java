package porebench.chart.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import javax.swing.Icon;

/**
 * The shape by which a point is known without its colour: a disc counts, an open diamond is struck, a cross is void, a
 * triangle is a signal, and what was simulated is hollow.
 *
 * <p>The same shapes stand in plots, in their legends and, as an icon, in tables.
 */
public final class StateShape implements Icon {
    /** The width of an outline, as a share of the side. */
    private static final float LINE_SHARE = 0.128f;

    private final PointLook look;
    private final Color color;
    private final int side;

    /**
     * An icon of a trial's state.
     *
     * @param side width and height, in device pixels
     */
    public StateShape(TrialPoint.State state, Color color, int side) {
        this(PointLook.of(state, false), color, side);
    }

    /**
     * An icon of what a point looks like.
     *
     * @param side width and height, in device pixels
     */
    public StateShape(PointLook look, Color color, int side) {
        this.look = look;
        this.color = color;
        this.side = side;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x + side / 2.0, y + side / 2.0);
        g.setColor(color);
        Shape shape = look.shape(side * 0.85);
        if (look.isFilled()) {
            g.fill(shape);
        } else {
            g.setStroke(new BasicStroke(side * LINE_SHARE));
            g.draw(shape);
        }
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return side;
    }

    @Override
    public int getIconHeight() {
        return side;
    }
}
