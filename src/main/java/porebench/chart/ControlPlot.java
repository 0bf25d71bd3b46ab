package porebench.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a control chart shows: points in the order made, their limits, and what changed between them.
 *
 * @param points the points, the earliest first
 * @param changes what changed, in the order of the points
 * @param levelAxis what is plotted, with its unit
 * @param spreadAxis what is plotted below it, with its unit; blank where there is no chart of the spread
 * @param baseFirst the first of the points that the limits of all phases come from, from 0
 * @param baseCount how many those are; 0 where there are none, or each phase has its own
 * @param isSimulated whether the trials were made by the simulated bench, for training
 */
public record ControlPlot(
        List<Point> points,
        List<Change> changes,
        String levelAxis,
        String spreadAxis,
        int baseFirst,
        int baseCount,
        boolean isSimulated) {
    public ControlPlot {
        points = List.copyOf(points);
        changes = List.copyOf(changes);
    }

    /** Returns whether there is a chart of the spread below. */
    public boolean hasSpread() {
        return !spreadAxis.isBlank();
    }

    /**
     * A point.
     *
     * @param id the trial that opens when it is clicked
     * @param label what stands under it on the axis
     * @param said what is said about it, one sentence a line
     * @param phase which phase it belongs to, from 1
     * @param level what is plotted
     * @param spread what is plotted below it; empty where there is none, as for the first moving range of a phase
     */
    public record Point(
            String id, String label, List<String> said, int phase, Plotted level, Optional<Plotted> spread) {
        public Point {
            said = List.copyOf(said);
        }
    }

    /**
     * A value with its limits.
     *
     * @param value the value
     * @param centre the centre there; empty while there are no limits
     * @param low the lower limit there
     * @param high the upper limit there
     * @param signals the names of the rules that fire; empty for no signal
     */
    public record Plotted(
            double value, OptionalDouble centre, OptionalDouble low, OptionalDouble high, List<String> signals) {
        public Plotted {
            signals = List.copyOf(signals);
        }

        /** Returns whether the point is a signal. */
        public boolean isSignal() {
            return !signals.isEmpty();
        }
    }

    /**
     * Something that changed between two points.
     *
     * @param before the point that comes after it, from 0
     * @param words what changed, in a few words
     * @param isBreak whether a new phase begins there
     */
    public record Change(int before, String words, boolean isBreak) {}
}
