package porebench.chart.look;

/**
 * How a point in a plot looks; each differs from every other by its shape, so that no colour is needed to tell them apart.
 *
 * <p>Simulated trials never stand beside real ones. One that was struck or is void looks as a real one does; that nothing in
 * the plot was measured is said above it.
 */
public enum PointLook {
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

    /** Returns whether the shape is filled, or drawn as an outline. */
    public boolean isFilled() {
        return this == COUNTED || this == VOID || this == SIGNAL;
    }
}
