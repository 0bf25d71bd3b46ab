package porebench.chart.look;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;

/**
 * How a point in a plot looks; each differs from every other by its shape, so that no colour is needed to tell them apart.
 *
 * <p>Simulated trials never stand beside real ones. One that was struck or is void looks as a real one does; that nothing in
 * the plot was measured is said above it.
 */
public enum PointLook implements LegendMark {
    /** A disc. */
    COUNTED,
    /** A circle: counts, in a book for training. */
    SIMULATED,
    /** An open diamond. */
    STRUCK,
    /** A cross. */
    VOID,
    /** A triangle: counts, and is a signal. */
    SIGNAL,
    /** An open triangle: a signal in a book for training. */
    SIMULATED_SIGNAL;

    private static final float BAR_SHARE = 0.16f;

    /** Returns the look of a trial's state. */
    public static PointLook of(TrialPoint.State state, boolean isSimulated) {
        return switch (state) {
            case COUNTED -> isSimulated ? SIMULATED : COUNTED;
            case STRUCK -> STRUCK;
            case VOID -> VOID;
        };
    }

    public static PointLook of(TrialPoint trial) {
        return of(trial.state(), trial.isSimulated());
    }

    @Override
    public boolean isFilled() {
        return this == COUNTED || this == VOID || this == SIGNAL;
    }

    @Override
    public Color colour(ChartLook look) {
        return switch (this) {
            case COUNTED, SIMULATED -> look.counted();
            case STRUCK -> look.struck();
            case VOID, SIGNAL, SIMULATED_SIGNAL -> look.voided();
        };
    }

    @Override
    public Shape shape(double side) {
        double half = side / 2;
        return switch (this) {
            case COUNTED, SIMULATED -> new Ellipse2D.Double(-half * 0.85, -half * 0.85, side * 0.85, side * 0.85);
            case STRUCK -> LegendMark.polygon(0, -half, half, 0, 0, half, -half, 0);
            case SIGNAL, SIMULATED_SIGNAL -> LegendMark.polygon(0, -half, half, half * 0.75, -half, half * 0.75);
            // Two bars, filled: an open cross would be drawn hollow where shapes are filled.
            case VOID ->
                AffineTransform.getRotateInstance(Math.PI / 4)
                        .createTransformedShape(LegendMark.cross(side, BAR_SHARE));
        };
    }
}
