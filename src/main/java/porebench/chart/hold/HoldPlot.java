package porebench.chart.hold;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.method.hold.HoldPoint;
import porebench.port.DataTable;

/**
 * Pairs of air by the meter and by density, in the order of time: their differences, the sums of their scores and the weighted average.
 *
 * @param points the pairs
 * @param shiftFrom the first pair after a shift, from 0; empty where there is none
 * @param runLength in how many pairs a false signal comes about once
 * @param isSimulated whether they are of a book for training
 */
public record HoldPlot(List<Point> points, OptionalInt shiftFrom, double runLength, boolean isSimulated)
        implements Plottable {
    public HoldPlot {
        points = List.copyOf(points);
    }

    /**
     * A pair.
     *
     * @param label what stands under it on the axis
     * @param said what is said about it, one sentence a line
     * @param on it on all charts
     */
    public record Point(String label, List<String> said, HoldPoint on) {
        public Point {
            said = List.copyOf(said);
        }

        boolean isDoubted() {
            return on.pair().isDoubted();
        }
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new HoldChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        return HoldSaid.of(this, locale);
    }

    @Override
    public DataTable table() {
        return new TableColumns<Point>()
                .text("reading_id", point -> point.on().pair().name())
                .text("on", Point::label)
                .number("by_meter_pct_air", point -> point.on().pair().pressurePercent())
                .number("by_density_pct_air", point -> point.on().pair().gravimetricPercent())
                .number("difference_pct_air", point -> point.on().pair().difference())
                .known("score", point -> point.on().score())
                .number("sum_up", point -> point.on().high())
                .number("sum_down", point -> point.on().low())
                .number("average", point -> point.on().average())
                .yes("signal", point -> point.on().isSignal())
                .yes("average_beyond", point -> point.on().isAverageBeyond())
                .yes("density_doubted", Point::isDoubted)
                .yes("simulated", any -> isSimulated)
                .table(points);
    }
}
