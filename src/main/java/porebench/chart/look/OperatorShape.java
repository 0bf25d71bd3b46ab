package porebench.chart.look;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/** How one operator's readings look among those of others: told apart by shape, colour only helps. */
public enum OperatorShape implements LegendMark {
    SQUARE(true),
    OPEN_SQUARE(false),
    PLUS(true),
    POINTING_DOWN(true),
    OPEN_POINTING_DOWN(false),
    HOURGLASS(false);

    private static final double BAR_SHARE = 0.2;

    private final boolean filled;

    OperatorShape(boolean filled) {
        this.filled = filled;
    }

    /** Returns the shape of an operator by place; with more operators than shapes they begin again. */
    public static OperatorShape of(int operator) {
        return values()[operator % values().length];
    }

    @Override
    public boolean isFilled() {
        return filled;
    }

    @Override
    public Color colour(ChartLook look) {
        return switch (this) {
            case SQUARE, OPEN_POINTING_DOWN -> look.counted();
            case OPEN_SQUARE, HOURGLASS -> look.factor();
            case PLUS, POINTING_DOWN -> look.text();
        };
    }

    @Override
    public Shape shape(double side) {
        double half = side / 2;
        return switch (this) {
            case SQUARE, OPEN_SQUARE -> new Rectangle2D.Double(-half * 0.8, -half * 0.8, side * 0.8, side * 0.8);
            case PLUS -> LegendMark.cross(side, BAR_SHARE);
            case POINTING_DOWN, OPEN_POINTING_DOWN ->
                LegendMark.polygon(-half, -half * 0.8, half, -half * 0.8, 0, half);
            case HOURGLASS ->
                LegendMark.polygon(-half * 0.8, -half, half * 0.8, -half, -half * 0.8, half, half * 0.8, half);
        };
    }
}
