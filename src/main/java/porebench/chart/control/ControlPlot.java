package porebench.chart.control;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.Plottable;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

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
 * @param notCounted trials that are shown but not counted
 * @param pointsPerFalseAlarm in how many points after the base chance alone gives one alarm; empty while that is not known
 */
public record ControlPlot(
        List<Point> points,
        List<ChangeMark> changes,
        String levelAxis,
        String spreadAxis,
        int baseFirst,
        int baseCount,
        boolean isSimulated,
        List<NotCounted> notCounted,
        OptionalDouble pointsPerFalseAlarm)
        implements Plottable {
    public ControlPlot {
        points = List.copyOf(points);
        changes = List.copyOf(changes);
        notCounted = List.copyOf(notCounted);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new ControlPlotChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        return ControlSaid.of(this, locale);
    }

    @Override
    public DataTable table() {
        return ControlTable.of(this);
    }

    /** Returns whether there is a chart of the spread below. */
    boolean hasSpread() {
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
     * @param sums of a chart of sums both of them, which are then plotted in place of the level
     */
    public record Point(
            String id,
            String label,
            List<String> said,
            int phase,
            Plotted level,
            Optional<Plotted> spread,
            Optional<BothSums> sums) {
        public Point {
            said = List.copyOf(said);
        }
    }

    /**
     * Both sums of a chart of cumulative sums.
     *
     * @param high the sum upwards, at least 0
     * @param low the sum downwards, at least 0; drawn with a minus
     * @param slack k, what a deviation may be without adding up
     * @param interval h, what a sum may reach
     */
    public record BothSums(double high, double low, double slack, double interval) {}

    /**
     * A trial that is shown and not counted.
     *
     * @param at where it stands along the points, the first of which stands at 1
     * @param value where it stands on the scale; empty for one without a factor, which stands at the foot
     * @param trial the trial
     */
    public record NotCounted(double at, OptionalDouble value, TrialPoint trial) {}

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
        boolean isSignal() {
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
    public record ChangeMark(int before, String words, boolean isBreak) {}
}
