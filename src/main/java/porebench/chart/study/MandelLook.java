package porebench.chart.study;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import porebench.chart.look.ChartLook;
import porebench.chart.look.LegendMark;
import porebench.chart.look.OperatorShape;
import porebench.chart.look.PointLook;
import porebench.statistics.outlier.Suspicion;

/** How a laboratory's h or k looks: told apart by shape, colour only helps. */
enum MandelLook implements LegendMark {
    /** A disc. */
    CONSISTENT("legend.consistent"),
    /** An open square: above the 5 % value. */
    STRAGGLER("legend.straggler"),
    /** A triangle: above the 1 % value. */
    OUTLIER("legend.outlier"),
    /** A short bar at 0: nothing can be said. */
    NOT_SHOWN("legend.not-shown");

    private static final double BAR_SHARE = 0.25;

    private final String key;

    MandelLook(String key) {
        this.key = key;
    }

    static MandelLook of(MandelPlot.Value value) {
        return value.found().map(found -> of(found.suspicion())).orElse(NOT_SHOWN);
    }

    private static MandelLook of(Suspicion suspicion) {
        return switch (suspicion) {
            case NONE -> CONSISTENT;
            case STRAGGLER -> STRAGGLER;
            case OUTLIER -> OUTLIER;
        };
    }

    /** Returns the key of what it is called in the legend. */
    String key() {
        return key;
    }

    @Override
    public boolean isFilled() {
        return this != STRAGGLER;
    }

    @Override
    public Color colour(ChartLook look) {
        return switch (this) {
            case CONSISTENT -> look.counted();
            case STRAGGLER -> look.factor();
            case OUTLIER -> look.voided();
            case NOT_SHOWN -> look.struck();
        };
    }

    @Override
    public Shape shape(double side) {
        return switch (this) {
            case CONSISTENT -> PointLook.COUNTED.shape(side);
            case STRAGGLER -> OperatorShape.OPEN_SQUARE.shape(side);
            case OUTLIER -> PointLook.SIGNAL.shape(side);
            case NOT_SHOWN -> new Rectangle2D.Double(-side / 2, -side * BAR_SHARE / 2, side, side * BAR_SHARE);
        };
    }
}
