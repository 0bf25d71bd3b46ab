package porebench.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import javax.swing.UIManager;
import porebench.evidence.EquipmentState;
import porebench.evidence.FactorState;
import porebench.method.meter.MeterState;

/**
 * The state of a mix's factor, of a meter or of a piece of equipment, as a shape in the colour of the theme; the words stand
 * beside it.
 */
public final class StateMark implements Icon {
    private final FactorState state;
    private final String colour;
    private final int side;

    /**
     * Makes the mark of a state.
     *
     * @param side width and height at 100 %, in pixels
     */
    public StateMark(FactorState state, int side) {
        this(state, key(state), side);
    }

    /** Makes the mark of a meter's state; a state as good or bad as a factor's has its shape and colour. */
    public StateMark(MeterState state, int side) {
        this(shape(state), colourKey(state), side);
    }

    /** Makes the mark of a piece of equipment; a state as good or bad as a factor's has its shape and colour. */
    public StateMark(EquipmentState state, int side) {
        this(shape(state), side);
    }

    private StateMark(FactorState shape, String colour, int side) {
        this.state = shape;
        this.colour = colour;
        this.side = UIScale.scale(side);
    }

    private static FactorState shape(MeterState state) {
        return switch (state) {
            case OK -> FactorState.IN_FORCE;
            case DUE -> FactorState.RECHECK_DUE;
            case OVERDUE -> FactorState.LAPSED;
            case FAILED -> FactorState.WITHDRAWN;
            case NEVER -> FactorState.NO_FACTOR;
        };
    }

    private static FactorState shape(EquipmentState state) {
        return switch (state) {
            case CALIBRATED -> FactorState.IN_FORCE;
            case DUE -> FactorState.RECHECK_DUE;
            case OVERDUE -> FactorState.LAPSED;
            case NOT_CALIBRATED -> FactorState.NO_FACTOR;
            case OUT_OF_USE -> FactorState.WITHDRAWN;
        };
    }

    private static String colourKey(MeterState state) {
        return state == MeterState.FAILED ? key(FactorState.LAPSED) : key(shape(state));
    }

    @Override
    public int getIconWidth() {
        return side;
    }

    @Override
    public int getIconHeight() {
        return side;
    }

    /** Returns the colour of a state in the theme that is shown. */
    public static Color colour(FactorState state) {
        return UIManager.getColor(key(state));
    }

    private static String key(FactorState state) {
        return "Porebench.state."
                + switch (state) {
                    case IN_FORCE -> "inForce";
                    case RECHECK_DUE -> "recheckDue";
                    case LAPSED -> "lapsed";
                    case SOURCE_CHANGED -> "sourceChanged";
                    case EVIDENCE_CHANGED -> "evidenceChanged";
                    case NOT_VERIFIED -> "notVerified";
                    case NO_FACTOR -> "noFactor";
                    case WITHDRAWN -> "withdrawn";
                };
    }

    @Override
    public void paintIcon(Component over, Graphics graphics, int x, int y) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.translate(x, y);
        pen.scale(side / 12.0, side / 12.0);
        pen.setColor(UIManager.getColor(colour));
        pen.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (state) {
            case IN_FORCE -> pen.fill(new Ellipse2D.Double(0.5, 0.5, 11, 11));
            case RECHECK_DUE -> pen.fill(corners(6, 0.5, 11.7, 11, 0.3, 11));
            case LAPSED -> pen.fill(new Rectangle2D.Double(1, 1, 10, 10));
            case SOURCE_CHANGED -> pen.fill(corners(6, 0, 12, 6, 6, 12, 0, 6));
            case EVIDENCE_CHANGED -> pen.draw(corners(6, 1, 11, 6, 6, 11, 1, 6));
            case NOT_VERIFIED -> pen.draw(new Rectangle2D.Double(1.5, 1.5, 9, 9));
            case NO_FACTOR -> pen.draw(new Ellipse2D.Double(1.4, 1.4, 9.2, 9.2));
            case WITHDRAWN -> {
                pen.draw(line(2, 2, 10, 10));
                pen.draw(line(10, 2, 2, 10));
            }
        }
        pen.dispose();
    }

    private static Shape corners(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int corner = 2; corner < xy.length; corner += 2) {
            path.lineTo(xy[corner], xy[corner + 1]);
        }
        path.closePath();
        return path;
    }

    private static Shape line(double fromX, double fromY, double toX, double toY) {
        return new Line2D.Double(fromX, fromY, toX, toY);
    }
}
