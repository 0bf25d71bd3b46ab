package porebench.chart.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/**
 * The shape by which a point is known without its colour: a disc counts, an open diamond is struck, a cross is void, a
 * triangle is a signal, and what was simulated is hollow.
 *
 * <p>The same shapes stand in plots, in their legends and, as an icon, in tables.
 */
public final class StateShape implements Icon {
    private static final float LINE_SHARE = 0.16f;

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

    /** Returns the shape around the origin, which fits a square of the given side. */
    public static Shape of(PointLook look, double side) {
        double half = side / 2;
        return switch (look) {
            case COUNTED, SIMULATED -> new Ellipse2D.Double(-half * 0.85, -half * 0.85, side * 0.85, side * 0.85);
            case STRUCK -> {
                Path2D diamond = new Path2D.Double();
                diamond.moveTo(0, -half);
                diamond.lineTo(half, 0);
                diamond.lineTo(0, half);
                diamond.lineTo(-half, 0);
                diamond.closePath();
                yield diamond;
            }
            case SIGNAL, SIMULATED_SIGNAL -> {
                Path2D triangle = new Path2D.Double();
                triangle.moveTo(0, -half);
                triangle.lineTo(half, half * 0.75);
                triangle.lineTo(-half, half * 0.75);
                triangle.closePath();
                yield triangle;
            }
            case VOID -> {
                // Two bars, filled: an open cross would be drawn hollow where shapes are filled.
                Path2D cross = new Path2D.Double();
                double bar = side * LINE_SHARE / 2;
                cross.append(new Rectangle2D.Double(-half, -bar, side, 2 * bar), false);
                cross.append(new Rectangle2D.Double(-bar, -half, 2 * bar, side), false);
                cross.setWindingRule(Path2D.WIND_NON_ZERO);
                yield AffineTransform.getRotateInstance(Math.PI / 4).createTransformedShape(cross);
            }
        };
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x + side / 2.0, y + side / 2.0);
        g.setColor(color);
        Shape shape = of(look, side * 0.85);
        if (look.isFilled()) {
            g.fill(shape);
        } else {
            g.setStroke(new BasicStroke(side * LINE_SHARE * 0.8f));
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
