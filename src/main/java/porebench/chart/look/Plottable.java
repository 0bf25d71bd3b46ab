package porebench.chart.look;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.port.DataTable;

/** What a plot shows, which knows how it is drawn. Equal data in an equal look make the same plot. */
public interface Plottable {
    /** Draws the plot. */
    JFreeChart chart(ChartLook look, Locale locale);

    /** Returns what the plot shows in words, a sentence each, for who does not see it. */
    List<String> said(Locale locale);

    /** Returns the figures of the plot: one row a point, everything with its unit in the heading, nothing rounded. */
    DataTable table();
}
