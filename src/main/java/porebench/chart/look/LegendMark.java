package porebench.chart.look;

import java.awt.Color;
import java.awt.Shape;

/** A mark that the legend explains: told apart by shape, colour only helps. */
public interface LegendMark {
    boolean isFilled();

    Color colour(ChartLook look);

    /** Returns the shape around the origin, which fits a square of the given side. */
    Shape shape(double side);
}
