package porebench.chart.look;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** A mark that the legend explains: told apart by shape, colour only helps. */
public interface LegendMark {
    boolean isFilled();

    Color colour(ChartLook look);

    /** Returns the shape around the origin, which fits a square of the given side. */
    Shape shape(double side);

    /** Returns a shape with corners, given as x and y in turn. */
    static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** Returns an upright cross of two filled bars, their width a share of the side. */
    static Shape cross(double side, double barShare) {
        double half = side / 2;
        double bar = side * barShare / 2;
        Path2D cross = new Path2D.Double(Path2D.WIND_NON_ZERO);
        cross.append(new Rectangle2D.Double(-half, -bar, side, 2 * bar), false);
        cross.append(new Rectangle2D.Double(-bar, -half, 2 * bar, side), false);
        return cross;
    }
}
